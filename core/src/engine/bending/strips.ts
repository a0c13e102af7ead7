import { yieldRange } from "./law.ts";
import type { Section } from "./section.ts";

/** A layer cut into strips through its thickness, as numbers. Levers from the layer's own middle, mm. */
export interface Strips {
  readonly modulusMPa: number;
  /** Modulus that moves the yield range, and the tangent of yielding with it. MPa */
  readonly plasticMPa: number;
  readonly tangentMPa: number;
  readonly stretchMPa: number;
  readonly squeezeMPa: number;
  readonly areaMm2: number;
  readonly levers: Float64Array;
  readonly middleMm: number;
  /** Stiffness of the whole layer when pulled, N. */
  readonly axialN: number;
  readonly jointN: number;
  /** Yields otherwise when squeezed than when stretched. */
  readonly oneSided: boolean;
}

const CUT = new WeakMap<Section, readonly Strips[]>();

/** The strips of each layer, cut once per section. */
export function stripsOf(section: Section): readonly Strips[] {
  const known = CUT.get(section);
  if (known) return known;
  const cut = section.layers.map((layer): Strips => {
    const { modulusMPa, widthMm, thicknessMm, middleMm, jointN } = layer;
    const { stretchMPa, squeezeMPa, plasticModulusMPa: h } = yieldRange(layer.law, modulusMPa);
    return {
      modulusMPa,
      plasticMPa: h,
      tangentMPa: (modulusMPa * h) / (modulusMPa + h),
      stretchMPa,
      squeezeMPa,
      areaMm2: (widthMm * thicknessMm) / section.fibres,
      levers: leversOf(section.fibres, thicknessMm),
      middleMm,
      axialN: modulusMPa * widthMm * thicknessMm,
      jointN,
      oneSided: stretchMPa !== squeezeMPa,
    };
  });
  CUT.set(section, cut);
  return cut;
}

const ROOT_THIRD = Math.sqrt(1 / 3);

/** Gauss points, two in each double strip, so that elastic sums are exact whatever their even number. */
function leversOf(fibres: number, thicknessMm: number): Float64Array {
  if (fibres % 2 !== 0 || fibres < 2) throw new RangeError(`fibres must be an even number, read ${fibres}`);
  return Float64Array.from({ length: fibres }, (_, j) => {
    const middle = j - (j % 2) + 1;
    return ((middle + (j % 2 === 0 ? -ROOT_THIRD : ROOT_THIRD)) / fibres - 0.5) * thicknessMm;
  });
}
