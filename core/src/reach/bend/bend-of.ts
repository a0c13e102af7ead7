import { type ArchState, glanceFor, openingMm, type PassGlance } from "../../engine/bending/index.ts";
import { canonicalJson } from "../../engine/canonical-json.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import { bendingHead, type HeadArch, type HeadArchBelief, LAYER } from "./head-arch.ts";
import { changesThatBent, throughPast } from "./past.ts";
import { STRAIN_STOPS, type StrainStop } from "./stops.ts";

/** What keeping one change takes at the base values, and what the head bears in the press. Strains without unit. */
export interface PressStrain {
  readonly changeMm: number;
  /** Travel at the tips from first touch, both halves together, the way of the change, mm. */
  readonly travelMm: number;
  /** What comes back of it once the press lets go, mm. */
  readonly springBackMm: number;
  /** Between the tips. */
  readonly forceN: number;
  /** Wood, or polymer: stretch of its outer face, and what is crushed for good on the squeezed side. */
  readonly stretch: number;
  readonly crushed: number;
  readonly steelStrain: number;
  /** Force in the plate that bears most. */
  readonly plateN: number;
}

/** A head under a press at the base values. */
export interface Bend {
  readonly belief: HeadArchBelief;
  readonly head: HeadArch;
  readonly state: ArchState;
  readonly pastMm: readonly number[];
  readonly pastCutShort: boolean;
  readonly stop: StrainStop;
  /** undefined where the head cannot be brought there: it gives way. */
  strainAt(changeMm: number): PressStrain | undefined;
  /** The stop that shuts a change; empty where it does not. */
  shutBy(changeMm: number): readonly StrainStop["id"][];
}

let last: { readonly key: string; readonly bend: Bend | undefined } | undefined;

/** Undefined for a build that nobody bends, or where the head was not read. The same saddle asked for again is not worked out again. */
export function bendOf(saddle: SurveyedSaddle): Bend | undefined {
  const { build, head, reinforcement, past } = saddle;
  const key = canonicalJson({ build, head, reinforcement, alterations: past.alterations });
  if (last?.key !== key) last = { key, bend: workedOut(saddle) };
  return last.bend;
}

function workedOut(saddle: SurveyedSaddle): Bend | undefined {
  const belief = bendingHead(saddle);
  if (belief === undefined) return undefined;
  const head = belief.at({});
  const { state, changesMm, cutShort } = throughPast(head.arch, changesThatBent(saddle));
  const stop = STRAIN_STOPS[belief.stuff];
  const known = new Map<number, PressStrain | undefined>();
  const strainAt = (changeMm: number) => {
    if (!known.has(changeMm)) known.set(changeMm, strainOf(head, state, changeMm));
    return known.get(changeMm);
  };
  return {
    belief,
    head,
    state,
    pastMm: changesMm,
    pastCutShort: cutShort,
    stop,
    strainAt,
    shutBy: (changeMm) => {
      const strain = strainAt(changeMm);
      return strain !== undefined && strain.stretch <= stop.limit ? [] : [stop.id];
    },
  };
}

function strainOf({ arch }: HeadArch, state: ArchState, changeMm: number): PressStrain | undefined {
  const stands = openingMm(arch, state);
  const glance = glanceFor(arch, state, stands + changeMm);
  return glance && pressStrain(glance, changeMm, stands);
}

/** `standsMm`: the opening from which the press starts. */
export function pressStrain(
  { forceN, heldMm, layers }: PassGlance,
  changeMm: number,
  standsMm: number,
): PressStrain {
  const core = layers.find(({ name }) => name === LAYER.core);
  const steel = layers.filter(({ name }) => name !== LAYER.core);
  const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b), 0);
  const travelMm = heldMm - standsMm;
  return {
    changeMm,
    travelMm,
    springBackMm: travelMm - changeMm,
    forceN,
    stretch: core?.stretch ?? 0,
    crushed: core?.crushed ?? 0,
    steelStrain: most(steel.map(({ strain }) => strain)),
    plateN: most(steel.map((one) => one.forceN)),
  };
}
