import { bendTo, type Section, type SectionState, unbent } from "@treewright/core/engine/bending/index.ts";
import fc from "fast-check";
import { propertySeed } from "../number/seed.ts";

/** Seed of the drawn cases: `SEED=1 npx vitest run evidence/bending` draws others. */
export const SEED = propertySeed("sections", 20_310_412);
export const RUNS = 60;

/** A layered section as drawn. */
export interface Drawn {
  readonly composite: number;
  readonly coreMm: number;
  readonly overMm: number;
  readonly underMm: number;
  readonly yieldMPa: number;
  readonly hardeningMPa: number;
  readonly jointN: number;
  readonly crushing: boolean;
}

export const drawnSections = fc.record({
  composite: fc.double({ min: 0, max: 1, noNaN: true }),
  coreMm: fc.double({ min: 7, max: 14, noNaN: true }),
  overMm: fc.double({ min: 2, max: 3.5, noNaN: true }),
  underMm: fc.double({ min: 2.5, max: 4, noNaN: true }),
  yieldMPa: fc.double({ min: 200, max: 400, noNaN: true }),
  hardeningMPa: fc.double({ min: 0, max: 4000, noNaN: true }),
  jointN: fc.oneof(fc.constant(Number.POSITIVE_INFINITY), fc.double({ min: 3000, max: 15_000, noNaN: true })),
  crushing: fc.boolean(),
});

/** A curvature of 0.0002 to 0.003 per mm: faces strained by 0.1 to 3 %. */
export const curvatures = fc.double({ min: 2e-4, max: 3e-3, noNaN: true });

export function sectionOf(drawn: Drawn, fibres = 24): Section {
  const law = {
    kind: "elastic-plastic" as const,
    yieldMPa: drawn.yieldMPa,
    hardeningMPa: drawn.hardeningMPa,
  };
  const plate = (name: string, thicknessMm: number, side: 1 | -1) => ({
    name,
    modulusMPa: 205_000,
    widthMm: 30,
    thicknessMm,
    middleMm: (side * (drawn.coreMm + thicknessMm)) / 2,
    law,
    jointN: drawn.jointN,
  });
  return {
    layers: [
      plate("over", drawn.overMm, -1),
      {
        name: "core",
        modulusMPa: 12_000,
        widthMm: 45,
        thicknessMm: drawn.coreMm,
        middleMm: 0,
        law: drawn.crushing ? { kind: "crushing", crushMPa: 50, partsAtStretch: 1 } : { kind: "elastic" },
        jointN: Number.POSITIVE_INFINITY,
      },
      plate("under", drawn.underMm, 1),
    ],
    composite: drawn.composite,
    wear: undefined,
    fibres,
  };
}

/** A state after a row of bends, none of them let go in between. */
export const bentThrough = (section: Section, path: readonly number[]): SectionState =>
  path.reduce((state, curvature) => bendTo(section, state, curvature), unbent(section));

export const near = (a: number, b: number, part: number, scale: number): boolean =>
  Math.abs(a - b) <= part * scale;
