import { layerSums, sumLayer } from "./fibres.ts";
import { balanced } from "./path.ts";
import type { Layer, Section, SectionState } from "./section.ts";
import type { LayerReading, SectionReading } from "./section-reading.ts";
import { stripsOf } from "./strips.ts";

/** Moment, forces and strains of a section as it stands. */
export function readSection(section: Section, state: SectionState): SectionReading {
  return {
    momentNmm: balanced(section, state, state.curvaturePerMm).momentNmm,
    layers: section.layers.map((layer, i) => readLayer(section, state, layer, i)),
  };
}

function readLayer(section: Section, state: SectionState, layer: Layer, i: number): LayerReading {
  const { fibres } = section;
  const strips = stripsOf(section)[i]!;
  const sums = layerSums();
  const axial = state.axial[i]!;
  const from = i * fibres;
  sumLayer(strips, state.curvaturePerMm, axial, state.plastic, from, sums);
  const face = (state.curvaturePerMm * layer.thicknessMm) / 2;
  const own = state.plastic.subarray(from, from + fibres);
  const stretch = Math.max(axial - face - own[0]!, axial + face - own[fibres - 1]!, 0);
  return {
    name: layer.name,
    forceN: sums.forceN,
    strain: [axial - Math.abs(face), axial + Math.abs(face)],
    stretch,
    crushed: own.reduce((most, one) => Math.max(most, -one), 0),
    accumulated: state.accumulated
      .subarray(from, from + fibres)
      .reduce((most, one) => Math.max(most, one), 0),
    slip: state.slip[i]!,
    parted: layer.law.kind === "crushing" && stretch > layer.law.partsAtStretch,
  };
}
