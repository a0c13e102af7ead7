import type { Layer } from "./section.ts";
import { rangeOf } from "./section.ts";

/** Force and moment of one layer about its own middle, and how they change with strain (0 th, 1 st, 2 nd moment of the tangent). */
export interface LayerSums {
  forceN: number;
  momentNmm: number;
  k0: number;
  k1: number;
  k2: number;
}

const ROOT_THIRD = Math.sqrt(1 / 3);

/** Lever of fibre j from the layer's middle: Gauss points, two in each double strip, so that elastic sums are exact. mm */
export function leverOf(j: number, stripMm: number, thicknessMm: number): number {
  const odd = j % 2;
  return (j - odd + 1 + (odd === 0 ? -ROOT_THIRD : ROOT_THIRD)) * stripMm - 0.5 * thicknessMm;
}

export const layerSums = (): LayerSums => ({ forceN: 0, momentNmm: 0, k0: 0, k1: 0, k2: 0 });

/**
 * Kernel: the layer at a curvature and a strain of its middle, from the plastic strains `plastic[from..]` that it
 * came with. Yield is followed from there straight to the new strain, so steps must be small where a fibre turns.
 */
export function sumLayer(
  layer: Layer,
  fibres: number,
  curvature: number,
  axial: number,
  plastic: Float64Array,
  from: number,
  out: LayerSums,
): void {
  const { stretchMPa, squeezeMPa, plasticModulusMPa: h } = rangeOf(layer);
  const e = layer.modulusMPa;
  const strip = layer.thicknessMm / fibres;
  const area = strip * layer.widthMm;
  const tangent = (e * h) / (e + h);
  let force = 0;
  let moment = 0;
  let k0 = 0;
  let k1 = 0;
  let k2 = 0;
  for (let j = 0; j < fibres; j++) {
    const lever = leverOf(j, strip, layer.thicknessMm);
    const held = plastic[from + j]!;
    let stress = e * (curvature * lever + axial - held);
    const hi = stretchMPa + h * held;
    const lo = h * held - squeezeMPa;
    let slope = e;
    if (stress > hi) {
      stress = hi + (h * (stress - hi)) / (e + h);
      slope = tangent;
    } else if (stress < lo) {
      stress = lo + (h * (stress - lo)) / (e + h);
      slope = tangent;
    }
    force += stress * area;
    moment += stress * lever * area;
    k0 += slope * area;
    k1 += slope * lever * area;
    k2 += slope * lever * lever * area;
  }
  out.forceN = force;
  out.momentNmm = moment;
  out.k0 = k0;
  out.k1 = k1;
  out.k2 = k2;
}

/** Kernel: lets each fibre of the layer keep what it yielded by on the way to the new strain; in place. */
export function keepYield(
  layer: Layer,
  fibres: number,
  curvature: number,
  axial: number,
  plastic: Float64Array,
  accumulated: Float64Array | undefined,
  from: number,
): void {
  const { stretchMPa, squeezeMPa, plasticModulusMPa: h } = rangeOf(layer);
  const e = layer.modulusMPa;
  const strip = layer.thicknessMm / fibres;
  for (let j = 0; j < fibres; j++) {
    const held = plastic[from + j]!;
    const stress = e * (curvature * leverOf(j, strip, layer.thicknessMm) + axial - held);
    const hi = stretchMPa + h * held;
    const lo = h * held - squeezeMPa;
    const beyond = stress > hi ? stress - hi : stress < lo ? stress - lo : 0;
    if (beyond === 0) continue;
    const change = beyond / (e + h);
    plastic[from + j] = held + change;
    if (accumulated) accumulated[from + j]! += Math.abs(change);
  }
}
