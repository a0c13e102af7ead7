import { keepYield, type LayerSums, layerSums, sumLayer } from "./fibres.ts";
import { rootOf } from "./root.ts";
import type { Section, SectionState } from "./section.ts";
import { type Strips, stripsOf } from "./strips.ts";

/** A section in balance at a curvature that was reached in one step: its layers' strains, and its moment. */
export interface Balance {
  readonly curvaturePerMm: number;
  readonly axial: Float64Array;
  readonly aloneAxial: Float64Array;
  /** Slip of each layer in this step, signed. */
  readonly slipped: Float64Array;
  readonly momentNmm: number;
  /** How the moment rises with curvature, N mm2. */
  readonly stiffness: number;
}

/** Forces are in balance to this part of what the layers would carry at a strain of 1. */
const BALANCED = 1e-13;
/** A first step of strain where no slope shows the way. */
const REACH = 1e-3;

/** The balance at `curvature`, one step on from `state`; undefined where no strain balances the layers. */
export function balanceAt(section: Section, state: SectionState, curvature: number): Balance | undefined {
  const strips = stripsOf(section);
  const { given, follows, aloneAxial } = wantedStrains(strips, state, curvature, section.fibres);
  const axial = new Float64Array(strips.length);
  const slipped = new Float64Array(strips.length);
  const sums = layerSums();
  const all = { forceByShift: 0, forceByBend: 0, momentNmm: 0, momentByShift: 0, momentByBend: 0 };
  const at = (shift: number) => {
    let force = 0;
    all.forceByShift = all.forceByBend = all.momentNmm = all.momentByShift = all.momentByBend = 0;
    for (let i = 0; i < strips.length; i++) {
      const layer = strips[i]!;
      const wanted = given[i]! + shift;
      const held = heldByJoint(layer, curvature, wanted, state.plastic, i * section.fibres, sums);
      axial[i] = held;
      slipped[i] = wanted - held;
      const slips = held !== wanted;
      const byBend = sums.k1 + sums.k0 * (slips ? -sums.k1 / sums.k0 : follows[i]!);
      const byShift = slips ? 0 : 1;
      force += sums.forceN;
      all.momentNmm += sums.momentNmm + sums.forceN * layer.middleMm;
      all.forceByShift += sums.k0 * byShift;
      all.forceByBend += byBend;
      all.momentByShift += (sums.k1 + sums.k0 * layer.middleMm) * byShift;
      all.momentByBend +=
        sums.k2 + sums.k1 * (slips ? -sums.k1 / sums.k0 : follows[i]!) + byBend * layer.middleMm;
    }
    return { y: force, slope: all.forceByShift };
  };
  const scale = strips.reduce((sum, { axialN }) => sum + axialN, 0);
  if (rootOf(at, 0, BALANCED * scale, REACH) === undefined) return undefined;
  const { forceByShift, forceByBend, momentNmm, momentByShift, momentByBend } = all;
  const stiffness = momentByBend - (forceByShift > 0 ? (momentByShift * forceByBend) / forceByShift : 0);
  return { curvaturePerMm: curvature, axial, aloneAxial, slipped, momentNmm, stiffness };
}

/** Strain that each layer's middle takes with the bend alone, before any common shift, and how it follows the curvature. */
function wantedStrains(
  strips: readonly Strips[],
  state: SectionState,
  curvature: number,
  fibres: number,
): { given: Float64Array; follows: Float64Array; aloneAxial: Float64Array } {
  const given = new Float64Array(strips.length);
  const follows = new Float64Array(strips.length);
  const aloneAxial = state.aloneAxial.slice();
  const bend = curvature - state.curvaturePerMm;
  for (let i = 0; i < strips.length; i++) {
    const layer = strips[i]!;
    const common = state.composite * layer.middleMm;
    given[i] = state.axial[i]! + common * bend;
    follows[i] = common;
    if (!layer.oneSided || state.composite === 1) continue;
    const own = 1 - state.composite;
    const alone = strainAlone(layer, curvature, state.aloneAxial[i]!, state.alonePlastic, i * fibres);
    aloneAxial[i] = alone.axial;
    given[i]! += own * (alone.axial - state.aloneAxial[i]!);
    follows[i]! += own * alone.follows;
  }
  return { given, follows, aloneAxial };
}

/** Strain of a layer's middle if nothing held it. One that yields alike both ways keeps its own; a crushed one moves. */
function strainAlone(layer: Strips, curvature: number, before: number, plastic: Float64Array, from: number) {
  const sums = layerSums();
  const at = (axial: number) => {
    sumLayer(layer, curvature, axial, plastic, from, sums);
    return { y: sums.forceN, slope: sums.k0 };
  };
  const axial = rootOf(at, before, BALANCED * layer.axialN, REACH) ?? before;
  return { axial, follows: -sums.k1 / sums.k0 };
}

/** Strain of the layer's middle that its joints let it have, with its sums there: as wanted, or so that its force is what they pass. */
function heldByJoint(
  layer: Strips,
  curvature: number,
  wanted: number,
  plastic: Float64Array,
  from: number,
  sums: LayerSums,
): number {
  sumLayer(layer, curvature, wanted, plastic, from, sums);
  if (Math.abs(sums.forceN) <= layer.jointN) return wanted;
  const passed = sums.forceN > 0 ? layer.jointN : -layer.jointN;
  const at = (axial: number) => {
    sumLayer(layer, curvature, axial, plastic, from, sums);
    return { y: sums.forceN - passed, slope: sums.k0 };
  };
  return rootOf(at, wanted, BALANCED * layer.axialN, REACH) ?? wanted;
}

/** The state that a balance leaves: yield, crushing and slip are kept. */
export function kept(section: Section, state: SectionState, balance: Balance): SectionState {
  const { curvaturePerMm, axial, aloneAxial, slipped } = balance;
  const plastic = state.plastic.slice();
  const accumulated = state.accumulated.slice();
  const alonePlastic = state.alonePlastic.slice();
  stripsOf(section).forEach((layer, i) => {
    const from = i * section.fibres;
    keepYield(layer, curvaturePerMm, axial[i]!, plastic, accumulated, from);
    if (layer.oneSided) keepYield(layer, curvaturePerMm, aloneAxial[i]!, alonePlastic, undefined, from);
  });
  const slip = state.slip.map((sum, i) => sum + Math.abs(slipped[i]!));
  return {
    curvaturePerMm,
    composite: state.composite,
    axial,
    slip,
    plastic,
    accumulated,
    aloneAxial,
    alonePlastic,
  };
}
