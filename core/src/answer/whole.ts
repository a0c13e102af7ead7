import type { Pose } from "../engine/contact/problem.ts";
import type { Room } from "../engine/contact/room.ts";
import type { SampleSurface } from "../engine/surface.ts";
import type { Fit, NoRest, Seat, SectionFit } from "../fit/fit.ts";
import type { Mesh } from "../fit/panel-cells.ts";
import { NOT_RIDDEN, type Ridden, restOf } from "../fit/rest.ts";
import type { RiddenPoses } from "../fit/ridden.ts";
import { sectionsOf } from "../fit/sections.ts";
import { standsAtMm } from "../fit/stands-at.ts";
import type { RiderStates } from "../fit/states.ts";
import { afterMove, type FrameInDraw, frameInDraw } from "../reach/frame/in-draw.ts";
import type { Moving } from "../reach/move.ts";
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
  /** The back about the cells as they lie, for the draws of this setting. */
  near(): NearBack | undefined;
  /** The gaits at their peaks; `near`: those of a neighbouring setting or draw. Worked out when they are asked for, and kept. */
  ridden(near?: RiddenPoses): Ridden;
  /** Out of the saddle and going up; worked out when it is asked for. */
  states(): RiderStates | undefined;
}

/** The back in any draw, about fixed places. */
export type NearBack = (deviations: Deviations) => SampleSurface;

/** All forms in one draw: what every setting has in common there. */
export interface FormsInDraw {
  readonly forms: Forms;
  readonly deviations: Deviations;
  /** Tree and head as they stand today. */
  readonly tree: Tree | undefined;
  readonly head: Head | undefined;
  /** The tree's frame, solved when it is first asked for. */
  readonly frame: FrameInDraw;
  /** The whole back; made when it is first asked for. */
  surface(): SampleSurface | undefined;
}

export function inDraw(forms: Forms, deviations: Deviations): FormsInDraw {
  const tree = forms.tree?.at(deviations);
  const head = tree?.head ?? forms.head?.at(deviations);
  let made: SampleSurface | undefined;
  const surface = () => {
    made ??= forms.back?.surface(deviations);
    return made;
  };
  return { forms, deviations, tree, head, frame: frameInDraw(forms.sections, tree, deviations), surface };
}

export interface How {
  readonly mesh: Mesh;
  readonly start?: Pose | undefined;
  /** The back about the places of the cells, where that is all that is needed of it. */
  readonly surface?: SampleSurface | undefined;
  readonly room?: Room | undefined;
  /** Residual that counts as rest, where less than the engine's own will do. */
  readonly within?: number | undefined;
  /** The tree as work on its panel would leave it. */
  readonly panel?: (tree: Tree) => Tree;
}

/** Undefined where not even the head was read. */
export function wholeAt(drawn: FormsInDraw, moving: Moving, how: How): Whole | undefined {
  const { forms, deviations } = drawn;
  if (drawn.head === undefined) return undefined;
  const move = moving.at(drawn.head, deviations);
  const moved = afterMove({ ...drawn, head: drawn.head }, move, moving.hingeOffMm);
  const turned = moved.tree;
  const tree = turned && how.panel ? how.panel(turned) : turned;
  const { head } = moved;
  const sections = (front: Section | undefined, back: Forms["back"]) =>
    front === undefined ? [] : sectionsOf(back ?? front, tree ?? head, deviations);
  const wanted = (front: Section | undefined) =>
    front === undefined ? undefined : wantedFor(front, head, tree, deviations);
  return {
    head,
    tree,
    sections: {
      cold: sections(forms.fronts.cold, tree && forms.back),
      warm: sections(forms.fronts.warm, undefined),
    },
    wanted: { cold: wanted(forms.fronts.cold), warm: wanted(forms.fronts.warm) },
    ...rested(drawn, tree, how),
  };
}

function rested(
  { forms: { back, mass, loads }, deviations, surface: wholeBack }: FormsInDraw,
  tree: Tree | undefined,
  { mesh, surface = wholeBack(), ...settling }: How,
): Pick<Whole, "rest" | "pose" | "pressed" | "near" | "ridden" | "states"> {
  if (tree === undefined || back === undefined || surface === undefined) return NOWHERE;
  const { places, ridden, ...rested } = restOf(
    { tree, back, surface, mass, deviations, loads },
    mesh,
    settling,
  );
  const near = () => {
    const at = places();
    return at && back.surfaceNear(at.x, at.y);
  };
  let kept: Ridden | undefined;
  return {
    ...rested,
    near,
    ridden: (from) => {
      kept ??= ridden(from);
      return kept;
    },
  };
}

const NOWHERE = {
  rest: undefined,
  pose: undefined,
  pressed: () => undefined,
  near: () => undefined,
  ridden: () => NOT_RIDDEN,
  states: () => undefined,
};

export function wantedFor(
  front: Section,
  head: Head,
  tree: Tree | undefined,
  deviations: Deviations,
): WantedHead | undefined {
  const panelMm =
    tree === undefined
      ? 0
      : (tree.halves.near.thicknessMm.front.middle + tree.halves.off.thicknessMm.front.middle) / 2;
  // Wanted at the height where this head stands: a computed clearance is never held against a read one.
  const clearanceMm = standsAtMm(front, head, panelMm, deviations);
  if (typeof clearanceMm !== "number") return undefined;
  const found = wantedHead(front, { depthMm: head.depthMm, clearanceMm, panelMm }, deviations);
  return isLacking(found) ? undefined : found;
}

/** One setting as it is handed on: sections, and how it rests and is ridden with its pressures. */
export function fitOf({ sections, pressed, ridden }: Whole, changeMm: number): Fit {
  return {
    changeMm,
    sections: sections.cold.length > 0 ? sections.cold : sections.warm,
    rest: pressed(),
    gaits: ridden().gaits,
  };
}
