import { type Frame, PER_NODE, type Vector } from "./model.ts";

export const placeOf = ({ nodes }: Frame, node: number): Vector => [
  nodes[3 * node]!,
  nodes[3 * node + 1]!,
  nodes[3 * node + 2]!,
];

/** How one node moved and turned. */
export function motionOf(
  moved: Float64Array,
  node: number,
): { readonly shift: Vector; readonly turn: Vector } {
  const at = PER_NODE * node;
  return {
    shift: [moved[at]!, moved[at + 1]!, moved[at + 2]!],
    turn: [moved[at + 3]!, moved[at + 4]!, moved[at + 5]!],
  };
}

/** A frame is linear: displacements under several causes, each so many times its unit, added up. */
export function added(parts: readonly { readonly by: number; readonly unit: Float64Array }[]): Float64Array {
  const sum = new Float64Array(parts[0]?.unit.length ?? 0);
  for (const { by, unit } of parts) for (let i = 0; i < sum.length; i++) sum[i]! += by * unit[i]!;
  return sum;
}
