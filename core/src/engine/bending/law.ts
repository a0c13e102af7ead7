/**
 * How a fibre answers to strain. Stresses in MPa, stretch positive.
 * - elastic: back along the same line, whatever the strain.
 * - elastic-plastic: yields at the same stress both ways, then on with `hardeningMPa` as tangent. Hardening moves the
 *   yield range without widening it (kinematic), and so every turn is remembered: the path rejoins the old curve at
 *   the old turning point, and a reversed branch is the virgin one doubled (Masing 1926, from memory).
 * - crushing: elastic when stretched, crushed at `crushMPa` when squeezed; what was crushed stays short and comes
 *   back along the elastic line, not along the virgin curve. Parts when it is stretched by `partsAtStretch`, counted
 *   from its crushed length.
 */
export type Law =
  | { readonly kind: "elastic" }
  | { readonly kind: "elastic-plastic"; readonly yieldMPa: number; readonly hardeningMPa: number }
  | { readonly kind: "crushing"; readonly crushMPa: number; readonly partsAtStretch: number };

/** A law as numbers: stresses at which a virgin fibre yields, and the plastic modulus that moves both. MPa. */
export interface YieldRange {
  readonly stretchMPa: number;
  readonly squeezeMPa: number;
  readonly plasticModulusMPa: number;
}

/** modulusMPa: the elastic one; a hardening tangent below it is needed (RangeError otherwise). */
export function yieldRange(law: Law, modulusMPa: number): YieldRange {
  if (law.kind === "elastic")
    return {
      stretchMPa: Number.POSITIVE_INFINITY,
      squeezeMPa: Number.POSITIVE_INFINITY,
      plasticModulusMPa: 0,
    };
  if (law.kind === "crushing")
    return { stretchMPa: Number.POSITIVE_INFINITY, squeezeMPa: law.crushMPa, plasticModulusMPa: 0 };
  const { yieldMPa, hardeningMPa } = law;
  if (!(hardeningMPa >= 0 && hardeningMPa < modulusMPa))
    throw new RangeError(`hardening must be from 0 to below the modulus ${modulusMPa}, read ${hardeningMPa}`);
  return {
    stretchMPa: yieldMPa,
    squeezeMPa: yieldMPa,
    plasticModulusMPa: (modulusMPa * hardeningMPa) / (modulusMPa - hardeningMPa),
  };
}
