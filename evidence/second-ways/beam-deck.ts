import type { Frame } from "../../core/src/engine/frame/index.ts";

/** Rectangle of one element, as CalculiX wants it: along axis 2, along axis 3, mm. */
export interface DeckBeam {
  readonly wideMm: number;
  readonly thinMm: number;
}

/**
 * The deck of a frame of one isotropic material in CalculiX's quadratic beams (B32R), each element with a node in its
 * middle and its own section card. They are swept into solids when it reads them.
 */
export function beamDeck(
  frame: Frame,
  beams: readonly DeckBeam[],
  { modulusMPa, poisson }: { readonly modulusMPa: number; readonly poisson: number },
  clampedNode: number,
  loads: readonly (readonly [node: number, direction: 1 | 2 | 3, newton: number])[],
): string {
  const count = frame.nodes.length / 3;
  const place = (node: number) => [...frame.nodes.slice(3 * node, 3 * node + 3)];
  const nodes = Array.from({ length: count }, (_, i) => `${i + 1}, ${row(place(i))}`);
  const cards: string[] = [];
  beams.forEach(({ wideMm, thinMm }, e) => {
    const [a = 0, b = 0] = frame.ends.slice(2 * e, 2 * e + 2);
    const middle = place(a).map((value, i) => (value + (place(b)[i] ?? 0)) / 2);
    nodes.push(`${count + e + 1}, ${row(middle)}`);
    cards.push(`*ELEMENT, TYPE=B32R, ELSET=E${e}`, `${e + 1}, ${a + 1}, ${count + e + 1}, ${b + 1}`);
    cards.push(`*BEAM SECTION, ELSET=E${e}, MATERIAL=STUFF, SECTION=RECT`, `${wideMm}, ${thinMm}`);
    cards.push(row(squareTo(frame, e, place(a), place(b))));
  });
  return [
    "*NODE, NSET=ALL",
    ...nodes,
    ...cards,
    "*MATERIAL, NAME=STUFF",
    "*ELASTIC",
    `${modulusMPa}, ${poisson}`,
    "*STEP",
    "*STATIC",
    "*BOUNDARY",
    `${clampedNode + 1}, 1, 6`,
    "*CLOAD",
    ...loads.map(([node, direction, newton]) => `${node + 1}, ${direction}, ${newton}`),
    "*NODE PRINT, NSET=ALL",
    "U",
    "*END STEP",
    "",
  ].join("\n");
}

/** CalculiX reads twenty signs of a number. */
const row = (values: readonly number[]): string => values.map((value) => value.toPrecision(11)).join(", ");

/** Direction of the first thickness: axis 2, square to the element. */
function squareTo(frame: Frame, e: number, a: readonly number[], b: readonly number[]): number[] {
  const across = [...frame.across.slice(3 * e, 3 * e + 3)];
  const along = b.map((value, i) => value - (a[i] ?? 0));
  const length = Math.hypot(...along);
  const by = across.reduce((sum, value, i) => sum + value * (along[i] ?? 0), 0) / length ** 2;
  const square = across.map((value, i) => value - by * (along[i] ?? 0));
  return square.map((value) => value / Math.hypot(...square));
}
