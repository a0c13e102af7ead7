import { bendingStiffness } from "../../engine/bending/index.ts";
import { rectangle, type SectionStiffness, type Strain, together } from "../../engine/frame/index.ts";

/** One layer of the head's arch, wide along the back, mm and MPa. */
export interface Layer {
  readonly what: "wood" | "polymer" | "plate";
  readonly thinMm: number;
  readonly wideMm: number;
  readonly modulusMPa: number;
  readonly shearMPa: number;
}

/** Layers from the inside of the arch outward, and how far they work as one: 0 each by itself, 1 as if grown together. */
export interface Layered {
  readonly layers: readonly Layer[];
  readonly composite: number;
}

/** How far each layer's middle lies outside the middle that counts by stiffness, mm. */
function offsets(layers: readonly Layer[]): readonly number[] {
  let at = 0;
  let [sum, weight] = [0, 0];
  const middles = layers.map(({ thinMm, wideMm, modulusMPa }) => {
    const middle = at + thinMm / 2;
    at += thinMm;
    sum += modulusMPa * thinMm * wideMm * middle;
    weight += modulusMPa * thinMm * wideMm;
    return middle;
  });
  return middles.map((middle) => middle - sum / weight);
}

/**
 * Strain of a layer is the curvature times its own lever, and the composite part of the curvature times its distance
 * from the common middle; so the stiffness is that of the layers by themselves and that part of what full joint
 * action adds. Axis 2 lies along the back: bending about it opens the arch.
 */
export function layeredStiffness({ layers, composite }: Layered): SectionStiffness {
  const off = offsets(layers);
  const levers = layers.map(({ modulusMPa, wideMm, thinMm }, i) => {
    return { modulusMPa, widthMm: wideMm, thicknessMm: thinMm, middleMm: off[i] ?? 0 };
  });
  return { ...together(layers.map(rectangle)), bending2: bendingStiffness({ layers: levers }, composite) };
}

/** Greatest stress in each layer, MPa, and the pull along each layer, N; without signs. */
export function layerStresses(
  { layers, composite }: Layered,
  { stretch, bend2, bend3 }: Strain,
): readonly { readonly layer: Layer; readonly stressMPa: number; readonly pullN: number }[] {
  const off = offsets(layers);
  return layers.map((layer, i) => {
    const middle = stretch + composite * bend2 * (off[i] ?? 0);
    const bent = Math.abs(bend2) * (layer.thinMm / 2) + Math.abs(bend3) * (layer.wideMm / 2);
    return {
      layer,
      stressMPa: layer.modulusMPa * (Math.abs(middle) + bent),
      pullN: Math.abs(layer.modulusMPa * layer.thinMm * layer.wideMm * middle),
    };
  });
}
