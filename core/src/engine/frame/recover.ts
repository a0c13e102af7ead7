import { AXES, ROWS, stiffnessOf } from "./element.ts";
import { freeEnds, type Kept } from "./kept.ts";
import { elementsOf, type Frame, nodesOf, PER_NODE, PER_SECTION } from "./model.ts";

/** Forces in each element: stretch, shear along 2 and 3, twist, bending about 2 and 3 at its start; the same at its end. N, N mm. */
export const PER_ELEMENT = 12;

/**
 * Section forces at both ends of every element, in its own axes, as the part beyond the section pulls on the part
 * before it: a stretched element has a positive first force at both ends.
 */
export function endForces(frame: Frame, moved: Float64Array, kept: readonly Kept[] = []): Float64Array {
  const out = new Float64Array(PER_ELEMENT * elementsOf(frame));
  const room = roomForPulls();
  const { axes, force } = room;
  for (let e = 0; e < elementsOf(frame); e++) {
    pulls(frame, e, moved, kept, room);
    for (let block = 0; block < 4; block++) {
      const sign = block < 2 ? -1 : 1;
      for (let axis = 0; axis < 3; axis++) {
        let along = 0;
        for (let i = 0; i < 3; i++) along += axes[3 * axis + i]! * force[3 * block + i]!;
        out[PER_ELEMENT * e + 3 * block + axis] = sign * along;
      }
    }
  }
  return out;
}

/** What the frame pulls at each node less what loads it: zero where nothing is held, the reactions elsewhere. */
export function reactions(
  frame: Frame,
  moved: Float64Array,
  loads: Float64Array,
  kept: readonly Kept[] = [],
): Float64Array {
  const out = new Float64Array(PER_NODE * nodesOf(frame));
  const room = roomForPulls();
  const { force } = room;
  for (let i = 0; i < out.length; i++) out[i] = -loads[i]!;
  for (let e = 0; e < elementsOf(frame); e++) {
    pulls(frame, e, moved, kept, room);
    for (let i = 0; i < PER_NODE; i++) {
      out[PER_NODE * frame.ends[2 * e]! + i]! += force[i]!;
      out[PER_NODE * frame.ends[2 * e + 1]! + i]! += force[PER_NODE + i]!;
    }
  }
  return out;
}

interface Room {
  readonly axes: Float64Array;
  readonly force: Float64Array;
  readonly own: Float64Array;
  readonly ends: Float64Array;
  readonly free: Float64Array;
}

const roomForPulls = (): Room => ({
  axes: new Float64Array(AXES),
  force: new Float64Array(ROWS),
  own: new Float64Array(ROWS * ROWS),
  ends: new Float64Array(ROWS),
  free: new Float64Array(ROWS),
});

/** Forces that the nodes put on one element, in the frame's directions; its axes come back with them. */
function pulls(
  frame: Frame,
  e: number,
  moved: Float64Array,
  kept: readonly Kept[],
  { axes, force, own, ends, free }: Room,
): void {
  stiffnessOf(frame, e, axes, own);
  for (let i = 0; i < PER_NODE; i++) {
    ends[i] = moved[PER_NODE * frame.ends[2 * e]! + i]!;
    ends[PER_NODE + i] = moved[PER_NODE * frame.ends[2 * e + 1]! + i]!;
  }
  for (const one of kept) {
    if (one.element !== e) continue;
    freeEnds(one, axes, free);
    for (let i = 0; i < ROWS; i++) ends[i]! -= free[i]!;
  }
  for (let i = 0; i < ROWS; i++) {
    let sum = 0;
    for (let j = 0; j < ROWS; j++) sum += own[i * ROWS + j]! * ends[j]!;
    force[i] = sum;
  }
}

/** Strain of a section: stretch, twist a mm, curvature about 2 and 3 a mm. Every strip in the section shares it. */
export interface Strain {
  readonly stretch: number;
  readonly twist: number;
  readonly bend2: number;
  readonly bend3: number;
}

/** Strain at the start (0) or end (1) of an element out of its forces. */
export function strainAt(frame: Frame, forces: Float64Array, e: number, end: 0 | 1): Strain {
  const at = PER_ELEMENT * e + PER_NODE * end;
  const s = PER_SECTION * e;
  return {
    stretch: forces[at]! / frame.stiffness[s]!,
    twist: forces[at + 3]! / frame.stiffness[s + 1]!,
    bend2: forces[at + 4]! / frame.stiffness[s + 2]!,
    bend3: forces[at + 5]! / frame.stiffness[s + 3]!,
  };
}

/** Greatest stress along a strip whose outermost fibre lies `out2` and `out3` from the section's middle, MPa, without sign. */
export function peakStressMPa(strain: Strain, modulusMPa: number, out2: number, out3: number): number {
  const { stretch, bend2, bend3 } = strain;
  return modulusMPa * (Math.abs(stretch) + Math.abs(bend2) * out3 + Math.abs(bend3) * out2);
}
