import { keepYield, type LayerSums, layerSums, sumLayer } from "./fibres.ts";
import { rootOf } from "./root.ts";
import type { Layer, Section, SectionState } from "./section.ts";

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

/** Forces in a section are in balance to this part of what its layers carry at a strain of 1. */
const BALANCED = 1e-13;

const axialStiffness = (layer: Layer): number => layer.modulusMPa * layer.widthMm * layer.thicknessMm;

/** Strain of a crushed layer's middle if nothing held it, and how it follows the curvature. Layers that yield alike both ways keep theirs. */
function alone(section: Section, state: SectionState, i: number, curvature: number, sums: LayerSums) {
  const layer = section.layers[i]!;
  const before = state.aloneAxial[i]!;
  if (layer.law.kind !== "crushing") return { axial: before, follows: 0 };
  const from = i * section.fibres;
  const at = (axial: number) => {
    sumLayer(layer, section.fibres, curvature, axial, state.alonePlastic, from, sums);
    return { y: sums.forceN, slope: sums.k0 };
  };
  const axial = rootOf(at, before, BALANCED * axialStiffness(layer)) ?? before;
  at(axial);
  return { axial, follows: -sums.k1 / sums.k0 };
}

/** The balance at `curvature`, one step on from `state`; undefined where no strain balances the layers. */
export function balanceAt(section: Section, state: SectionState, curvature: number): Balance | undefined {
  const { layers } = section;
  const n = layers.length;
  const sums = layerSums();
  const bend = curvature - state.curvaturePerMm;
  const own = 1 - state.composite;
  const aloneAxial = new Float64Array(n);
  const given = new Float64Array(n);
  const givenFollows = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const free = alone(section, state, i, curvature, sums);
    aloneAxial[i] = free.axial;
    const common = state.composite * layers[i]!.middleMm;
    given[i] = state.axial[i]! + common * bend + own * (free.axial - state.aloneAxial[i]!);
    givenFollows[i] = common + own * free.follows;
  }
  const axial = new Float64Array(n);
  const slipped = new Float64Array(n);
  let momentNmm = 0;
  let forceByShift = 0;
  let forceByBend = 0;
  let momentByShift = 0;
  let momentByBend = 0;
  const at = (shift: number) => {
    let force = 0;
    momentNmm = forceByShift = forceByBend = momentByShift = momentByBend = 0;
    for (let i = 0; i < n; i++) {
      const layer = layers[i]!;
      const wanted = given[i]! + shift;
      const held = heldByJoint(section, state, i, curvature, wanted, sums);
      axial[i] = held;
      slipped[i] = wanted - held;
      const slips = held !== wanted;
      const byBend = slips ? -sums.k1 / sums.k0 : givenFollows[i]!;
      const byShift = slips ? 0 : 1;
      force += sums.forceN;
      momentNmm += sums.momentNmm + sums.forceN * layer.middleMm;
      forceByShift += sums.k0 * byShift;
      const layerByBend = sums.k1 + sums.k0 * byBend;
      forceByBend += layerByBend;
      momentByShift += (sums.k1 + sums.k0 * layer.middleMm) * byShift;
      momentByBend += sums.k2 + sums.k1 * byBend + layerByBend * layer.middleMm;
    }
    return { y: force, slope: forceByShift };
  };
  const scale = layers.reduce((sum, layer) => sum + axialStiffness(layer), 0);
  const shift = rootOf(at, 0, BALANCED * scale);
  if (shift === undefined) return undefined;
  at(shift);
  const stiffness = momentByBend - (forceByShift > 0 ? (momentByShift * forceByBend) / forceByShift : 0);
  return { curvaturePerMm: curvature, axial, aloneAxial, slipped, momentNmm, stiffness };
}

/** Strain of the layer's middle that its joints let it have, with its sums there: as wanted, or so that its force is what they pass. */
function heldByJoint(
  section: Section,
  state: SectionState,
  i: number,
  curvature: number,
  wanted: number,
  sums: LayerSums,
): number {
  const layer = section.layers[i]!;
  const from = i * section.fibres;
  const sum = (axial: number) => sumLayer(layer, section.fibres, curvature, axial, state.plastic, from, sums);
  sum(wanted);
  if (Math.abs(sums.forceN) <= layer.jointN) return wanted;
  const passed = sums.forceN > 0 ? layer.jointN : -layer.jointN;
  const held = rootOf(
    (axial) => {
      sum(axial);
      return { y: sums.forceN - passed, slope: sums.k0 };
    },
    wanted,
    BALANCED * axialStiffness(layer),
  );
  sum(held ?? wanted);
  return held ?? wanted;
}

/** The state that a balance leaves: yield, crushing and slip are kept. */
export function kept(section: Section, state: SectionState, balance: Balance): SectionState {
  const { layers, fibres } = section;
  const { curvaturePerMm, axial, aloneAxial, slipped } = balance;
  const plastic = state.plastic.slice();
  const accumulated = state.accumulated.slice();
  const alonePlastic = state.alonePlastic.slice();
  layers.forEach((layer, i) => {
    const from = i * fibres;
    keepYield(layer, fibres, curvaturePerMm, axial[i]!, plastic, accumulated, from);
    if (layer.law.kind === "crushing")
      keepYield(layer, fibres, curvaturePerMm, aloneAxial[i]!, alonePlastic, undefined, from);
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
