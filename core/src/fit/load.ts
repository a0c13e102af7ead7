import type { Load, Vector } from "../engine/contact/problem.ts";
import { Doubts } from "../shape/doubt.ts";
import type { Deviations, Tree, Uncertain } from "../shape/model.ts";
import type { Survey } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import { ASSUMED, type AssumedName, GRAVITY } from "./assumed.ts";
import { type GirthBelief, oneStrap } from "./girth.ts";

/** Value of an assumed quantity in a draw. */
export function assumed(name: AssumedName, deviations: Deviations): number {
  const one = ASSUMED[name];
  return one.base + (deviations[one.id] ?? 0);
}

/** Mass on the horse's back, with its doubt. */
export interface MassBelief {
  /** kg in one draw. */
  at(deviations: Deviations): number;
  readonly uncertain: readonly Uncertain[];
}

/** Rider and tack: as weighed, else from the assumed range of both together, or of the tack alone. */
export function massOf(rider: Survey["rider"]): MassBelief {
  if (!isRead(rider.massDressed))
    return { at: (deviations) => assumed("riderMassKg", deviations), uncertain: [] };
  const doubts = new Doubts();
  const dressed = doubts.take("rider.massDressed", rider.massDressed);
  const tack = doubts.takeIfRead("rider.tackMass", rider.tackMass);
  return {
    at: (deviations) => dressed(deviations) + (tack?.(deviations) ?? assumed("tackMassKg", deviations)),
    uncertain: doubts.uncertain,
  };
}

/** The weight at its point over the seat, and the girth at its straps, at rest. N, mm. */
export function loadAtRest({ tree, mass, deviations, loads }: Loaded): Load {
  const girth = loads?.girth ?? oneStrap(false);
  return {
    weightN: mass.at(deviations) * GRAVITY,
    at: seatPoint(tree, deviations),
    turnsWithBody: true,
    pulls: girth.pulls(tree, assumed("girthN", deviations), deviations),
  };
}

/** What a load at rest hangs on. */
export interface Loaded {
  readonly tree: Tree;
  readonly mass: MassBelief;
  readonly deviations: Deviations;
  readonly loads?: { readonly girth: GirthBelief } | undefined;
}

/** Where the rider who sits weighs on the seat, in the saddle's frame. */
export const seatPoint = (tree: Tree, deviations: Deviations): Vector => ({
  x: assumed("loadPart", deviations) * tree.lengthMm,
  y: 0,
  z: assumed("loadHeightMm", deviations),
});
