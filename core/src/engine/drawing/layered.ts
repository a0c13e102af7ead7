import type { At, Item } from "../drawing.ts";

/** What each layer is for: through it, on it, or only to be read. */
export const LAYERS = ["cut", "mark", "text"] as const;
export type Layer = (typeof LAYERS)[number];

/** A drawing for a machine that cuts: items by their purpose, mm, y downward as on paper; no pen and no fill counts. */
export interface Layered {
  readonly title: string;
  readonly layers: { readonly [L in Layer]: readonly Item[] };
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What all lines of a drawing span, and about what its words do. Throws RangeError where there is no line, or a length that is no number. */
export function boxOf({ layers }: Layered): Box {
  const points = LAYERS.flatMap((layer) => layers[layer]).flatMap(pointsOf);
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const box = {
    left: Math.min(...xs),
    right: Math.max(...xs),
    top: Math.min(...ys),
    bottom: Math.max(...ys),
  };
  if (Object.values(box).every(Number.isFinite)) return box;
  throw new RangeError("a drawing to be cut holds no line, or a length that is no number");
}

function pointsOf(item: Item): readonly At[] {
  if (item.kind === "line") return item.points;
  return item.kind === "text" ? aboutWords(item) : item.rings.flat();
}

/** About where level words begin and end: a cutter sets them in a type of its own. */
function aboutWords({ at: [x, y], words, size, anchor }: Extract<Item, { kind: "text" }>): readonly At[] {
  const wide = words.length * size * SIGN_WIDE;
  const from = anchor === "start" ? x : anchor === "end" ? x - wide : x - wide / 2;
  return [
    [from, y],
    [from + wide, y],
  ];
}

/** Width of a sign of even type as part of its body (about; from memory). */
const SIGN_WIDE = 0.62;
