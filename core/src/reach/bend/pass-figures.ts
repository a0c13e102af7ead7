import {
  type Arch,
  type ArchState,
  damageOf,
  glanceFor,
  halfTurnRad,
  MILD_STEEL_LIFE,
  openingMm,
  passFor,
  tipTravelMm,
  unbentArch,
} from "../../engine/bending/index.ts";
import type { BySide } from "../../terms/places.ts";
import type { Bend } from "./bend-of.ts";
import { pressStrain } from "./bend-of.ts";

/** What a kept change is made of, worked exactly at the base values. mm, rad. */
export interface PassFigures {
  /** Kept at each tip, outward, and how far each half turns. */
  readonly keptMm: BySide<number>;
  readonly turnRad: BySide<number>;
  /** Kept at the upper level, where its depth was read: the spread at two levels tells where a head bent. */
  readonly keptUpperMm: number | undefined;
  /** Length, both halves together, in which nine tenths of the kept turn lie: a result, no constant. */
  readonly bendsOverMm: number;
  /** Height of the hinge over the tips that would give the same, as part of the crown's. */
  readonly hingePart: number;
  /** Part of a polished coupon's life that all bends so far and this one cost the plates. Tiny; opens nothing. */
  readonly lifePart: number;
}

/** undefined where the head gives way. */
export function passFigures(bend: Bend, changeMm: number): PassFigures | undefined {
  const { arch, head } = bend.head;
  const { state } = bend;
  const pass = passFor(arch, state, openingMm(arch, state) + changeMm);
  if (pass === undefined) return undefined;
  const by = (of: (k: 0 | 1) => number): BySide<number> => ({ near: of(0), off: of(1) });
  const turnRad = by((k) => halfTurnRad(arch[k], pass.free[k]) - halfTurnRad(arch[k], state[k]));
  const keptMm = by((k) => tipTravelMm(arch[k], pass.free[k]) - tipTravelMm(arch[k], state[k]));
  const upperMm = head.upperBelowCrownMm === undefined ? undefined : head.depthMm - head.upperBelowCrownMm;
  return {
    keptMm,
    turnRad,
    keptUpperMm:
      upperMm === undefined
        ? undefined
        : openingMm(arch, pass.free, upperMm) - openingMm(arch, state, upperMm),
    bendsOverMm: lengthThatBends(arch, state, pass.free),
    hingePart: (keptMm.near + keptMm.off) / (turnRad.near + turnRad.off) / head.depthMm,
    lifePart: lifePart(bend, changeMm),
  };
}

/** Part of the kept turn by which the length that bends is counted. */
const MOST_OF_TURN = 0.9;

function lengthThatBends(arch: Arch, before: ArchState, after: ArchState): number {
  const bends = ([0, 1] as const).flatMap((k) =>
    arch[k].map(({ lengthMm }, i) => {
      const change = (after[k][i]?.curvaturePerMm ?? 0) - (before[k][i]?.curvaturePerMm ?? 0);
      return { lengthMm, curvature: Math.abs(change) };
    }),
  );
  bends.sort((a, b) => b.curvature - a.curvature);
  let left = MOST_OF_TURN * bends.reduce((sum, one) => sum + one.lengthMm * one.curvature, 0);
  let length = 0;
  for (const { lengthMm, curvature } of bends) {
    const part = Math.min(lengthMm, curvature > 0 ? left / curvature : 0);
    length += part;
    left -= part * curvature;
    if (left <= 0) break;
  }
  return length;
}

/** Each bend so far and this one as one reversal, its amplitude half of the steel's greatest strain in the press. */
function lifePart({ head: { arch }, pastMm, strainAt }: Bend, changeMm: number): number {
  let state = unbentArch(arch);
  const strains: number[] = [];
  for (const change of pastMm) {
    const stands = openingMm(arch, state);
    const pass = passFor(arch, state, stands + change);
    if (pass === undefined) break;
    const glance = glanceFor(arch, state, stands + change);
    if (glance) strains.push(pressStrain(glance, change, stands).steelStrain);
    state = pass.free;
  }
  strains.push(strainAt(changeMm)?.steelStrain ?? 0);
  return damageOf(
    MILD_STEEL_LIFE,
    strains.map((strain) => strain / 2),
  );
}
