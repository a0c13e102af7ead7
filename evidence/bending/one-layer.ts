import type { Layer, Section } from "@treewright/core/engine/bending/index.ts";

/** Sections of the reference values. */

/** One steel layer about its own middle. */
export function steelLayer(b: number, h: number, modulus: number, yieldMPa: number, fibres: number): Section {
  const law = { kind: "elastic-plastic" as const, yieldMPa, hardeningMPa: 0 };
  return {
    layers: [
      {
        name: "steel",
        modulusMPa: modulus,
        widthMm: b,
        thicknessMm: h,
        middleMm: 0,
        law,
        jointN: Number.POSITIVE_INFINITY,
      },
    ],
    composite: 1,
    wear: undefined,
    fibres,
  };
}

export const hardened = (section: Section, hardeningMPa: number): Section => ({
  ...section,
  layers: section.layers.map((layer) =>
    layer.law.kind === "elastic-plastic" ? { ...layer, law: { ...layer.law, hardeningMPa } } : layer,
  ),
});

function plate(
  name: string,
  widthMm: number,
  thicknessMm: number,
  middleMm: number,
  yieldMPa: number,
): Layer {
  const law = { kind: "elastic-plastic" as const, yieldMPa, hardeningMPa: 0 };
  return {
    name,
    modulusMPa: 205_000,
    widthMm,
    thicknessMm,
    middleMm,
    law,
    jointN: Number.POSITIVE_INFINITY,
  };
}

const core: Layer = {
  name: "core",
  modulusMPa: 13_000,
  widthMm: 50,
  thicknessMm: 10,
  middleMm: 0,
  law: { kind: "elastic" },
  jointN: Number.POSITIVE_INFINITY,
};

/** The section of the bd cases: an elastic core of 50 x 10 with plates of 40 x 2.5 over and 40 x 2 under it. */
export const layered = (composite: number, fibres: number): Section => ({
  layers: [core, plate("over", 40, 2.5, 6.25, 300), plate("under", 40, 2, -6, 300)],
  composite,
  wear: undefined,
  fibres,
});

/** The same core with a plate of 40 x 0.5 each side. */
export const thinPlated = (composite: number, fibres: number): Section => ({
  layers: [core, plate("over", 40, 0.5, 5.25, 300), plate("under", 40, 0.5, -5.25, 300)],
  composite,
  wear: undefined,
  fibres,
});
