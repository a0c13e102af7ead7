import type { Law } from "./law.ts";

/** A layer as far as it bends elastically. Levers are from any common line, positive to the side that positive curvature stretches. */
export interface ElasticLayer {
  readonly modulusMPa: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  /** Lever of the layer's middle. */
  readonly middleMm: number;
}

/** One layer of a section. */
export interface Layer extends ElasticLayer {
  readonly name: string;
  readonly law: Law;
  /** Largest axial force that its joints pass, N; beyond it the layer slips. Infinity: bonded. */
  readonly jointN: number;
}

/** How slip wears the joints: the composite factor falls from the section's own toward `composite`. */
export interface Wear {
  readonly composite: number;
  /** Slip, as strain summed over a layer, by which all but 1/e of the fall is done. */
  readonly slipStrain: number;
}

/**
 * Layers bent to one curvature. `composite` is the part of the common strain that the joints pass on: strain =
 * curvature x own lever + composite x (common axial strain + curvature x lever of the layer's middle). 0: each layer
 * bends by itself; 1: one solid section.
 */
export interface Section {
  readonly layers: readonly Layer[];
  readonly composite: number;
  readonly wear: Wear | undefined;
  /** Strips of a layer through its thickness, an even number. */
  readonly fibres: number;
}

/** What a section remembers. Never changed in place; strains have no unit, arrays run layer by layer. */
export interface SectionState {
  readonly curvaturePerMm: number;
  /** Composite factor now: the section's own until slip has worn it. */
  readonly composite: number;
  /** Strain of each layer's middle. */
  readonly axial: Float64Array;
  /** Slip of each layer past the others, summed whichever way it went. */
  readonly slip: Float64Array;
  /** Plastic strain of each fibre, and the sum of its changes whichever way they went. */
  readonly plastic: Float64Array;
  readonly accumulated: Float64Array;
  /** The same of each layer as if nothing held it: what it would do on its own. */
  readonly aloneAxial: Float64Array;
  readonly alonePlastic: Float64Array;
}

/** Straight, without stress, never bent. */
export function unbent({ layers, composite, fibres }: Section): SectionState {
  const all = () => new Float64Array(layers.length * fibres);
  const each = () => new Float64Array(layers.length);
  return {
    curvaturePerMm: 0,
    composite,
    axial: each(),
    slip: each(),
    plastic: all(),
    accumulated: all(),
    aloneAxial: each(),
    alonePlastic: all(),
  };
}

/**
 * Elastic bending stiffness, N mm2: the layers' own and, times the composite factor, what their distance from the
 * common centre adds. Closed form; published: model of layered bending, linear in the factor.
 */
export function bendingStiffness(
  { layers }: { readonly layers: readonly ElasticLayer[] },
  composite: number,
): number {
  const axial = layers.map((layer) => layer.modulusMPa * layer.widthMm * layer.thicknessMm);
  const total = axial.reduce((sum, one) => sum + one, 0);
  const centre = layers.reduce((sum, { middleMm }, i) => sum + middleMm * (axial[i] ?? 0), 0) / total;
  return layers.reduce((sum, { thicknessMm, middleMm }, i) => {
    const own = ((axial[i] ?? 0) * thicknessMm * thicknessMm) / 12;
    return sum + own + composite * (axial[i] ?? 0) * (middleMm - centre) * (middleMm - centre);
  }, 0);
}
