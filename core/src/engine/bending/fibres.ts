import type { Strips } from "./strips.ts";

/** Force and moment of one layer about its own middle, and how they change with strain (0 th, 1 st, 2 nd moment of the tangent). */
export interface LayerSums {
  forceN: number;
  momentNmm: number;
  k0: number;
  k1: number;
  k2: number;
}

export const layerSums = (): LayerSums => ({ forceN: 0, momentNmm: 0, k0: 0, k1: 0, k2: 0 });

/**
 * Kernel: the layer at a curvature and a strain of its middle, from the plastic strains `plastic[from..]` that it
 * came with. Yield is followed from there straight to the new strain, so steps must be small where a fibre turns.
 */
export function sumLayer(
  strips: Strips,
  curvature: number,
  axial: number,
  plastic: Float64Array,
  from: number,
  out: LayerSums,
): void {
  const { modulusMPa: e, plasticMPa: h, tangentMPa: tangent, stretchMPa, squeezeMPa, levers } = strips;
  const beyond = e > 0 ? h / (e + h) : 0;
  let force = 0;
  let moment = 0;
  let k0 = 0;
  let k1 = 0;
  let k2 = 0;
  for (let j = 0; j < levers.length; j++) {
    const lever = levers[j]!;
    const held = plastic[from + j]!;
    let stress = e * (curvature * lever + axial - held);
    const moved = h * held;
    let slope = e;
    if (stress > stretchMPa + moved) {
      stress = stretchMPa + moved + beyond * (stress - stretchMPa - moved);
      slope = tangent;
    } else if (stress < moved - squeezeMPa) {
      stress = moved - squeezeMPa + beyond * (stress - moved + squeezeMPa);
      slope = tangent;
    }
    force += stress;
    moment += stress * lever;
    k0 += slope;
    k1 += slope * lever;
    k2 += slope * lever * lever;
  }
  out.forceN = force * strips.areaMm2;
  out.momentNmm = moment * strips.areaMm2;
  out.k0 = k0 * strips.areaMm2;
  out.k1 = k1 * strips.areaMm2;
  out.k2 = k2 * strips.areaMm2;
}

/** Kernel: lets each fibre of the layer keep what it yielded by on the way to the new strain; in place. */
export function keepYield(
  strips: Strips,
  curvature: number,
  axial: number,
  plastic: Float64Array,
  accumulated: Float64Array | undefined,
  from: number,
): void {
  const { modulusMPa: e, plasticMPa: h, stretchMPa, squeezeMPa, levers } = strips;
  for (let j = 0; j < levers.length; j++) {
    const held = plastic[from + j]!;
    const stress = e * (curvature * levers[j]! + axial - held);
    const hi = stretchMPa + h * held;
    const lo = h * held - squeezeMPa;
    const beyond = stress > hi ? stress - hi : stress < lo ? stress - lo : 0;
    if (beyond === 0) continue;
    const change = beyond / (e + h);
    plastic[from + j] = held + change;
    if (accumulated) accumulated[from + j]! += Math.abs(change);
  }
}
