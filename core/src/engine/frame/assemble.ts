import { AXES, ROWS, stiffnessOf } from "./element.ts";
import { elementsOf, type Frame, nodesOf, PER_NODE } from "./model.ts";

/** Stiffness of a whole frame, nothing held: `band[i (width + 1) + d]` is the entry of row i, d left of the diagonal. */
export interface Stiffness {
  readonly band: Float64Array;
  readonly n: number;
  readonly width: number;
}

export function assembled(frame: Frame): Stiffness {
  const n = PER_NODE * nodesOf(frame);
  const width = widthOf(frame);
  const band = new Float64Array(n * (width + 1));
  const [axes, own] = [new Float64Array(AXES), new Float64Array(ROWS * ROWS)];
  for (let e = 0; e < elementsOf(frame); e++) {
    stiffnessOf(frame, e, axes, own);
    addTo(band, width, own, PER_NODE * frame.ends[2 * e]!, PER_NODE * frame.ends[2 * e + 1]!);
  }
  return { band, n, width };
}

/** How far from the diagonal an entry lies at most. */
function widthOf({ ends }: Frame): number {
  let apart = 0;
  for (let e = 0; e < ends.length; e += 2) apart = Math.max(apart, Math.abs(ends[e]! - ends[e + 1]!));
  return PER_NODE * apart + PER_NODE - 1;
}

function addTo(band: Float64Array, width: number, own: Float64Array, start: number, end: number): void {
  for (let i = 0; i < ROWS; i++) {
    const row = i < PER_NODE ? start + i : end + i - PER_NODE;
    for (let j = 0; j < ROWS; j++) {
      const column = j < PER_NODE ? start + j : end + j - PER_NODE;
      if (column <= row) band[row * (width + 1) + row - column]! += own[i * ROWS + j]!;
    }
  }
}
