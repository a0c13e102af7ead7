import type { Pose } from "../engine/contact/problem.ts";
import type { Fit, NoRest, SectionFit, Seat } from "../fit/fit.ts";
import { assumed } from "../fit/load.ts";
import type { Mesh } from "../fit/panel-cells.ts";
import { restOf } from "../fit/rest.ts";
import { sectionsOf } from "../fit/sections.ts";
import { standsAtMm } from "../fit/stands-at.ts";
import { type HeadMove, movedHead, treeAt } from "../reach/turn.ts";
import type { TurnBelief } from "../reach/setting.ts";
import { isLacking } from "../shape/back.ts";
import type { Deviations, Head, Section, Tree } from "../shape/model.ts";
import { type WantedHead, wantedHead } from "../shape/wanted-head.ts";
import type { Forms } from "./forms.ts";

/** One setting on one horse in one draw: the head it makes, its sections by temper, and how the whole rests. */
export interface Whole {
  readonly head: Head;
  readonly tree: Tree | undefined;
  readonly sections: { readonly cold: readonly SectionFit[]; readonly warm: readonly SectionFit[] };
  readonly wanted: { readonly cold: WantedHead | undefined; readonly warm: WantedHead | undefined };
  readonly rest: Seat | NoRest | undefined;
  readonly pose: Pose | undefined;
  /** The pressures under it, worked out when they are asked for. */
  pressed(): Fit["rest"];
}

export interface How {
  readonly deviations: Deviations;
  readonly mesh: Mesh;
  readonly start?: Pose | undefined;
}

/** Undefined where not even the head was read. */
export function wholeAt(forms: Forms, move: HeadMove, how: How): Whole | undefined {
  const { deviations } = how;
  const turn = turnBelief(deviations, move);
  const today = forms.tree?.at(deviations);
  const tree = today && treeAt(today, move, turn);
  const head = tree?.head ?? (forms.head && movedHead(forms.head.at(deviations), move, turn).head);
  if (head === undefined) return undefined;
  const sections = (front: Section | undefined, back: Forms["back"]) =>
    front === undefined ? [] : sectionsOf(back ?? front, tree ?? head, deviations);
  const wanted = (front: Section | undefined) => (front === undefined ? undefined : wantedFor(front, head, tree, deviations));
  return {
    head,
    tree,
    sections: { cold: sections(forms.fronts.cold, tree && forms.back), warm: sections(forms.fronts.warm, undefined) },
    wanted: { cold: wanted(forms.fronts.cold), warm: wanted(forms.fronts.warm) },
    ...rested(forms, tree, how),
  };
}

function rested(forms: Forms, tree: Tree | undefined, how: How): Pick<Whole, "rest" | "pose" | "pressed"> {
  const { back, mass } = forms;
  const { mesh, deviations, start } = how;
  if (tree === undefined || back === undefined) return { rest: undefined, pose: undefined, pressed: () => undefined };
  return restOf({ tree, back, surface: back.surface(deviations), mass, deviations }, mesh, { start });
}

/** An exchanged plate turns about the crown, where it is new; a pressed head about its hinge. */
function turnBelief(deviations: Deviations, move: HeadMove): TurnBelief {
  return {
    hingePart: move.halfTurnRad === undefined ? assumed("hingePart", deviations) : 1,
    rearPart: assumed("rearPart", deviations),
    fade: assumed("fade", deviations),
  };
}

function wantedFor(front: Section, head: Head, tree: Tree | undefined, deviations: Deviations): WantedHead | undefined {
  const panelMm = tree === undefined ? 0 : (tree.halves.near.thicknessMm.front.middle + tree.halves.off.thicknessMm.front.middle) / 2;
  // Wanted at the height where this head stands: a computed clearance is never held against a read one.
  const clearanceMm = standsAtMm(front, head, panelMm, deviations);
  if (typeof clearanceMm !== "number") return undefined;
  const found = wantedHead(front, { depthMm: head.depthMm, clearanceMm, panelMm }, deviations);
  return isLacking(found) ? undefined : found;
}

/** One setting as it is handed on: sections, and how it rests with its pressures. */
export function fitOf({ sections, pressed }: Whole, changeMm: number): Fit {
  return { changeMm, sections: sections.cold.length > 0 ? sections.cold : sections.warm, rest: pressed() };
}
