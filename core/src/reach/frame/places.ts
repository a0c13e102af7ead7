import { cos, hypot, PI, sin } from "../../engine/number/index.ts";
import { headOutline } from "../../shape/head-outline.ts";
import type { Half, Head, Tree } from "../../shape/model.ts";
import { type BySide, SIDES, type Side } from "../../terms/places.ts";
import type { TreeSections } from "./sections.ts";

/** Elements of each half of the head's arch, of each rail, of each half of the rear arch. */
export const PIECES = { head: 6, rail: 12, cantle: 4 } as const;
/** Nodes: crown, then pairs near and off along arch, rail and rear arch, then the rear arch's crown. The band stays 18 wide. */
export const NODES = 2 + 2 * (PIECES.head + PIECES.rail + PIECES.cantle - 1);
export const REAR_CROWN = NODES - 1;
/** Node of one side, counted along it from the crown (0); the rail runs from PIECES.head to PIECES.head + PIECES.rail. */
export const nodeOf = (side: Side, along: number): number =>
  along === 0 ? 0 : Math.min(REAR_CROWN, 2 * along - (side === "near" ? 1 : 0));
export const RAIL_FRONT = PIECES.head;
export const RAIL_REAR = PIECES.head + PIECES.rail;

/** A place of one side: outward from the centre plane, up. */
type Place = readonly [outMm: number, upMm: number];

/** Where the beams of a tree run, in the saddle's frame. */
export interface Places {
  /** x, y, z of each node, mm. */
  readonly nodes: Float64Array;
  /** Middle line of the head's wall from the crown down to the tip, each side, in the saddle's heights. */
  readonly arms: BySide<readonly Place[]>;
}

/** A rail meets its arm no nearer to the tip or to the crown than these, as part of the depth (assumption). */
const JOINS = { lowest: 0.05, highest: 0.55 } as const;

export function placesOf(tree: Tree, sections: TreeSections): Places {
  const arms = armsOf(tree);
  const nodes = new Float64Array(3 * NODES);
  put(nodes, 0, 0, 0, (arms.near[0]?.[1] ?? 0) / 2 + (arms.off[0]?.[1] ?? 0) / 2);
  let rearUp = 0;
  for (const side of SIDES) {
    const sign = side === "near" ? -1 : 1;
    const rail = railOf(tree, tree.halves[side], sections);
    const joint = jointOf(tree, arms[side], rail(0)[1]);
    const arch = evenly(joint.arch, PIECES.head);
    arch.forEach(([out, up], i) => {
      if (i > 0) put(nodes, nodeOf(side, i), 0, sign * out, up);
    });
    const end = railPlaces(nodes, side, rail, joint.at, tree.stationsMm.rear);
    rearUp += end[1] / 2;
    for (let i = 1; i < PIECES.cantle; i++) {
      const angle = (PI / 2) * (i / PIECES.cantle);
      const up = end[1] + sections.cantle.riseMm * sin(angle);
      put(nodes, nodeOf(side, RAIL_REAR + i), tree.stationsMm.rear, sign * end[0] * cos(angle), up);
    }
  }
  put(nodes, REAR_CROWN, tree.stationsMm.rear, 0, rearUp + sections.cantle.riseMm);
  return { nodes, arms };
}

function put(nodes: Float64Array, node: number, x: number, y: number, z: number): void {
  nodes[3 * node] = x;
  nodes[3 * node + 1] = y;
  nodes[3 * node + 2] = z;
}

/** Half a wall outside the inside of the head. */
export function armOf(head: Head, side: Side): readonly Place[] {
  const middle = headOutline({ ...head, thicknessMm: head.thicknessMm / 2 }, "outside")[side];
  return middle.map(([y, z]) => [Math.abs(y), z]);
}

function armsOf({ head, crownHeightMm }: Tree): BySide<readonly Place[]> {
  const arm = (side: Side) => armOf(head, side).map(([out, up]): Place => [out, up + crownHeightMm]);
  return { near: arm("near"), off: arm("off") };
}

/** Middle line of a rail: over the bearing face by the panel's thickness and half its own. */
function railOf({ lengthMm, stationsMm }: Tree, half: Half, { rail }: TreeSections): (x: number) => Place {
  return (x) => {
    const face = half.faceAngleRad(x);
    const outOfFace = panelAt(half, stationsMm, Math.min(x, lengthMm)) + rail.thinMm / 2;
    const middle = half.innerEdgeMm(x) + (half.widthMm(x) / 2) * cos(face);
    return [middle + outOfFace * sin(face), half.heightMm(x) + outOfFace * cos(face)];
  };
}

/** Thickness of the panel's middle, straight from station to station, mm. */
function panelAt({ thicknessMm }: Half, { front, mid, rear }: Tree["stationsMm"], x: number): number {
  const [from, to, a, b] =
    x < mid
      ? [thicknessMm.front, thicknessMm.mid, front, mid]
      : [thicknessMm.mid, thicknessMm.rear, mid, rear];
  const part = Math.min(1, Math.max(0, (x - a) / (b - a)));
  return from.middle + part * (to.middle - from.middle);
}

/** The arm down to where the rail meets it, at the rail's height. */
function jointOf({ tipHeightMm, head }: Tree, arm: readonly Place[], railUp: number) {
  const up = Math.min(
    tipHeightMm + JOINS.highest * head.depthMm,
    Math.max(tipHeightMm + JOINS.lowest * head.depthMm, railUp),
  );
  const below = arm.findIndex(([, z]) => z <= up);
  const after = Math.max(1, below < 0 ? arm.length - 1 : below);
  const [a, b] = [arm[after - 1] ?? [0, 0], arm[after] ?? [0, 0]];
  const part = a[1] === b[1] ? 1 : (a[1] - up) / (a[1] - b[1]);
  const at: Place = [a[0] + part * (b[0] - a[0]), up];
  return { at, arch: [...arm.slice(0, after), at] };
}

/** n + 1 places evenly along a line of straight pieces, its ends among them. */
export function evenly(line: readonly Place[], n: number): readonly Place[] {
  const gone = [0];
  for (let i = 1; i < line.length; i++) gone.push((gone[i - 1] ?? 0) + lengthOf(line[i - 1], line[i]));
  const whole = gone[gone.length - 1] ?? 0;
  return Array.from({ length: n + 1 }, (_, k) => placeAt(line, gone, (whole * k) / n));
}

function placeAt(line: readonly Place[], gone: readonly number[], at: number): Place {
  let i = 1;
  while (i < line.length - 1 && (gone[i] ?? 0) < at) i++;
  const [a, b] = [line[i - 1] ?? [0, 0], line[i] ?? [0, 0]];
  const piece = (gone[i] ?? 0) - (gone[i - 1] ?? 0);
  const part = piece > 0 ? Math.min(1, (at - (gone[i - 1] ?? 0)) / piece) : 0;
  return [a[0] + part * (b[0] - a[0]), a[1] + part * (b[1] - a[1])];
}

const lengthOf = (a: Place = [0, 0], b: Place = [0, 0]): number => hypot(b[0] - a[0], b[1] - a[1]);

/** The place so far down a line from its start, mm along it; its end where the line is shorter. */
export function downLine(line: readonly Place[], mm: number): Place {
  const gone = [0];
  for (let i = 1; i < line.length; i++) gone.push((gone[i - 1] ?? 0) + lengthOf(line[i - 1], line[i]));
  return placeAt(line, gone, mm);
}

/** Nodes of one rail; near the head it is drawn over to where its arm is (assumption). Its rear end comes back. */
function railPlaces(
  nodes: Float64Array,
  side: Side,
  rail: (x: number) => Place,
  joint: Place,
  rearX: number,
): Place {
  const sign = side === "near" ? -1 : 1;
  const front = rail(0);
  let end: Place = front;
  for (let i = 1; i <= PIECES.rail; i++) {
    const part = i / PIECES.rail;
    const over = (1 - part) * (1 - part);
    const [out, up] = rail(part * rearX);
    end = [out + over * (joint[0] - front[0]), up + over * (joint[1] - front[1])];
    put(nodes, nodeOf(side, RAIL_FRONT + i), part * rearX, sign * end[0], end[1]);
  }
  return end;
}
