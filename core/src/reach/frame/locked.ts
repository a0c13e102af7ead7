import { added, endForces, type Kept, peakStressMPa, strainAt } from "../../engine/frame/index.ts";
import { SIDES } from "../../terms/places.ts";
import { STEEL_MPA } from "../bend/head-priors.ts";
import { layerStresses } from "./layers.ts";
import { PIECES, RAIL_FRONT } from "./places.ts";
import type { Travel } from "./travel.ts";
import type { Keeps } from "./tree-at.ts";
import { elementOf, type TreeBeams } from "./tree-frame.ts";

/** What stays in a tree that was let go: its rails and cantle lean against what the head keeps. Greatest values, without signs. */
export interface Locked {
  /** Wood or polymer of the head, and of the rails, MPa. */
  readonly headMPa: number;
  readonly railMPa: number;
  /** Plates or bar of the head, MPa; undefined where it has none. */
  readonly plateMPa: number | undefined;
  readonly springMPa: number | undefined;
  /** What a plate hands to each of its rivets, N, were they to share it evenly. */
  readonly rivetN: number | undefined;
}

/**
 * The state that a setting leaves, without the tips being held and without rider. Elastic: what the plates and the wood
 * of the head lock among themselves while they yield at the press is not in it (`engine/bending` has that).
 */
export function lockedIn(travel: Travel, { turnRad, shiftMm }: Keeps): Locked {
  const parts = SIDES.flatMap((side) => [
    { by: turnRad, unit: travel.turned[side] },
    ...(shiftMm === 0 ? [] : [{ by: shiftMm, unit: travel.shifted()[side] }]),
  ]);
  const kept = parts.map(({ by, unit }) => times(unit.kept, by));
  const moved = added(parts.map(({ by, unit }) => ({ by, unit: unit.moved })));
  const forces = endForces(travel.beams.frame, moved, kept);
  return { ...headIn(travel.beams, forces), ...railsIn(travel.beams, forces) };
}

const times = ({ element, at, turn, shift }: Kept, by: number): Kept => ({
  element,
  at,
  turn: [by * turn[0], by * turn[1], by * turn[2]],
  shift: [by * shift[0], by * shift[1], by * shift[2]],
});

function headIn({ frame, sections }: TreeBeams, forces: Float64Array) {
  let [headMPa, plateMPa, pullN] = [0, 0, 0];
  for (const e of pieces(0, PIECES.head)) {
    for (const end of [0, 1] as const) {
      for (const { layer, stressMPa, pullN: pull } of layerStresses(
        sections.head,
        strainAt(frame, forces, e, end),
      )) {
        if (layer.what !== "plate") headMPa = Math.max(headMPa, stressMPa);
        else {
          plateMPa = Math.max(plateMPa, stressMPa);
          pullN = Math.max(pullN, pull);
        }
      }
    }
  }
  const plated = sections.head.layers.some((layer) => layer.what === "plate");
  const rivets = sections.rivetsASide ?? 0;
  return {
    headMPa,
    plateMPa: plated ? plateMPa : undefined,
    rivetN: plated && rivets > 0 ? pullN / rivets : undefined,
  };
}

function railsIn({ frame, sections }: TreeBeams, forces: Float64Array) {
  let [railMPa, springMPa] = [0, 0];
  const { rail, spring, stuff } = sections;
  for (const e of pieces(RAIL_FRONT, PIECES.rail)) {
    for (const end of [0, 1] as const) {
      const strain = strainAt(frame, forces, e, end);
      railMPa = Math.max(railMPa, peakStressMPa(strain, stuff.modulusMPa, rail.wideMm / 2, rail.thinMm / 2));
      if (spring !== undefined)
        springMPa = Math.max(
          springMPa,
          peakStressMPa(strain, STEEL_MPA, spring.wideMm / 2, spring.thinMm / 2),
        );
    }
  }
  return { railMPa, springMPa: spring && springMPa };
}

const pieces = (from: number, count: number): readonly number[] =>
  SIDES.flatMap((side) => Array.from({ length: count }, (_, i) => elementOf(side, from + i)));
