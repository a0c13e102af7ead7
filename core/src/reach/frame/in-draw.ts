import type { Deviations, Head, Tree } from "../../shape/model.ts";
import { type HeadMove, type Lever, leverOfHead, movedHead } from "./head-move.ts";
import type { SectionsBelief } from "./sections.ts";
import { type Travel, travelOf } from "./travel.ts";
import { treeAt } from "./tree-at.ts";
import { beamsOf, type TreeBeams } from "./tree-frame.ts";

/** The frame of one tree in one draw: solved once, whatever settings are asked of it. */
export interface FrameInDraw {
  /** For a hinge so far off the crown, mm; undefined: where this draw has it. Undefined comes back where no tree was read, or its readings make none that stands. */
  travel(hingeOffMm: number | undefined): Travel | undefined;
  /** Of a head whose tree was not read. */
  lever(head: Head, hingeOffMm: number | undefined): Lever;
}

export function frameInDraw(
  belief: SectionsBelief,
  tree: Tree | undefined,
  deviations: Deviations,
): FrameInDraw {
  const sections = belief.at(deviations);
  const travels = new Map<number, Travel | undefined>();
  let beams: { readonly found: TreeBeams | undefined } | undefined;
  const solved = (): TreeBeams | undefined => {
    beams ??= { found: tree && standing(tree) };
    return beams.found;
  };
  const standing = (of: Tree): TreeBeams | undefined => {
    const found = beamsOf(of, sections);
    return "held" in found ? found : undefined;
  };
  return {
    travel: (hingeOffMm = sections.hingeOffMm) => {
      if (!travels.has(hingeOffMm)) {
        const found = solved();
        travels.set(hingeOffMm, found && travelOf(found, hingeOffMm));
      }
      return travels.get(hingeOffMm);
    },
    lever: (head, hingeOffMm = sections.hingeOffMm) => leverOfHead(head, hingeOffMm),
  };
}

/** A head, and the tree behind it as far as one was read, after a move. */
export function afterMove(
  {
    head,
    tree,
    frame,
  }: { readonly head: Head; readonly tree: Tree | undefined; readonly frame: FrameInDraw },
  move: HeadMove,
  hingeOffMm: number | undefined,
): { readonly head: Head; readonly tree: Tree | undefined; readonly travel: Travel | undefined } {
  if (move.changeMm === 0 && (move.halfTurnRad ?? 0) === 0) return { head, tree, travel: undefined };
  const travel = frame.travel(hingeOffMm);
  if (travel !== undefined) {
    const after = treeAt(travel, move);
    return { head: after.head, tree: after, travel };
  }
  return { head: movedHead(head, move, frame.lever(head, hingeOffMm)).head, tree: undefined, travel };
}
