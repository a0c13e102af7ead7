import type { Load, Pull } from "../engine/contact/problem.ts";
import { Doubts } from "../shape/doubt.ts";
import type { Deviations, Tree, Uncertain } from "../shape/model.ts";
import type { Survey } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import type { Side } from "../terms/places.ts";
import { ASSUMED, type AssumedName, GRAVITY } from "./assumed.ts";

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

/** Where a girth strap leaves the panel and which way it pulls: down and a little outward (assumption). */
const STRAP_OUT_MM = 150;
const STRAP_BELOW_TIPS_MM = 25;
const STRAP_OUTWARD = 0.3;

/** The weight at its point over the seat, and the girth at its straps, at rest. N, mm. */
export function loadAtRest(tree: Tree, mass: MassBelief, deviations: Deviations): Load {
  const pull = assumed("girthN", deviations);
  return {
    weightN: mass.at(deviations) * GRAVITY,
    at: { x: assumed("loadPart", deviations) * tree.lengthMm, y: 0, z: assumed("loadHeightMm", deviations) },
    turnsWithBody: true,
    pulls: [strap(tree, "near", pull), strap(tree, "off", pull)],
  };
}

function strap(tree: Tree, side: Side, pullN: number): Pull {
  const out = side === "near" ? -1 : 1;
  return {
    at: { x: tree.straps[side].xMm, y: out * STRAP_OUT_MM, z: tree.tipHeightMm - STRAP_BELOW_TIPS_MM },
    force: { x: 0, y: out * STRAP_OUTWARD * pullN, z: -pullN },
  };
}
