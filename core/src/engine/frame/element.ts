import { type Frame, PER_SECTION } from "./model.ts";

/** Axes 1 (along), 2 and 3 of an element in the frame's own directions, three numbers each, and its length. */
export const AXES = 10;
/** Rows of an element's stiffness: six at each end. */
export const ROWS = 12;

/** Axes and length of element `e`. RangeError where it has no length or axis 2 lies along it. */
export function axesOf({ nodes, ends, across }: Frame, e: number, out: Float64Array): void {
  const [a, b] = [3 * ends[2 * e]!, 3 * ends[2 * e + 1]!];
  const [dx, dy, dz] = [nodes[b]! - nodes[a]!, nodes[b + 1]! - nodes[a + 1]!, nodes[b + 2]! - nodes[a + 2]!];
  const length = Math.sqrt(dx * dx + dy * dy + dz * dz);
  if (!(length > 0 && length < Infinity)) throw new RangeError(`element ${e} has no length`);
  const [x1, y1, z1] = [dx / length, dy / length, dz / length];
  const [px, py, pz] = [across[3 * e]!, across[3 * e + 1]!, across[3 * e + 2]!];
  const along = px * x1 + py * y1 + pz * z1;
  const [qx, qy, qz] = [px - along * x1, py - along * y1, pz - along * z1];
  const size = Math.sqrt(qx * qx + qy * qy + qz * qz);
  if (!(size > LEAST_ACROSS * Math.abs(along))) throw new RangeError(`axis 2 of element ${e} lies along it`);
  const [x2, y2, z2] = [qx / size, qy / size, qz / size];
  out[0] = x1;
  out[1] = y1;
  out[2] = z1;
  out[3] = x2;
  out[4] = y2;
  out[5] = z2;
  out[6] = y1 * z2 - z1 * y2;
  out[7] = z1 * x2 - x1 * z2;
  out[8] = x1 * y2 - y1 * x2;
  out[9] = length;
}
/** Axis 2 within this of the element's own direction tells nothing of how its section lies. */
const LEAST_ACROSS = 1e-6;

/** The four blocks of 3 x 3 that an element's stiffness is made of, row after row. */
export const BLOCKS = 36;
/** Where they begin: force by displacement, force by turn, couple by own turn, couple by the other end's turn. */
export const [FORCE, COUPLE, OWN, OTHER] = [0, 9, 18, 27] as const;

/**
 * Blocks of element `e` in the frame's directions. Cubic shapes (Przemieniecki, Theory of Matrix Structural Analysis,
 * 1968, 5.6, from memory, without shear), written as products of the axes, which spares turning a matrix of 12 x 12.
 */
export function blocksOf(frame: Frame, e: number, axes: Float64Array, out: Float64Array): void {
  axesOf(frame, e, axes);
  const length = axes[9]!;
  const s = PER_SECTION * e;
  const ea = frame.stiffness[s]! / length;
  const gj = frame.stiffness[s + 1]! / length;
  const ei2 = frame.stiffness[s + 2]! / length;
  const ei3 = frame.stiffness[s + 3]! / length;
  const f2 = (12 * ei3) / (length * length);
  const f3 = (12 * ei2) / (length * length);
  const c23 = (6 * ei3) / length;
  const c32 = (6 * ei2) / length;
  for (let i = 0; i < 3; i++) {
    const i1 = axes[i]!;
    const i2 = axes[3 + i]!;
    const i3 = axes[6 + i]!;
    for (let j = 0; j < 3; j++) {
      const j1 = axes[j]!;
      const j2 = axes[3 + j]!;
      const j3 = axes[6 + j]!;
      const bend = ei3 * i3 * j3 + ei2 * i2 * j2;
      const twist = gj * i1 * j1;
      const at = 3 * i + j;
      out[FORCE + at] = ea * i1 * j1 + f2 * i2 * j2 + f3 * i3 * j3;
      out[COUPLE + at] = c23 * i2 * j3 - c32 * i3 * j2;
      out[OWN + at] = 4 * bend + twist;
      out[OTHER + at] = 2 * bend - twist;
    }
  }
}

/** Stiffness of one element, 12 x 12, row after row: displacements and turns at its start, then at its end. */
export function stiffnessOf(frame: Frame, e: number, axes: Float64Array, out: Float64Array): void {
  const blocks = new Float64Array(BLOCKS);
  blocksOf(frame, e, axes, blocks);
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) {
      const force = blocks[FORCE + 3 * i + j]!;
      const couple = blocks[COUPLE + 3 * i + j]!;
      const turned = blocks[COUPLE + 3 * j + i]!;
      const own = blocks[OWN + 3 * i + j]!;
      const other = blocks[OTHER + 3 * i + j]!;
      row(out, i, j, force, couple, -force, couple);
      row(out, 3 + i, j, turned, own, -turned, other);
      row(out, 6 + i, j, -force, -couple, force, -couple);
      row(out, 9 + i, j, turned, other, -turned, own);
    }
}

function row(out: Float64Array, i: number, j: number, a: number, b: number, c: number, d: number): void {
  const at = ROWS * i + j;
  out[at] = a;
  out[at + 3] = b;
  out[at + 6] = c;
  out[at + 9] = d;
}
