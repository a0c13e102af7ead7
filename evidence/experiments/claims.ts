/**
 * What is compared, and within which bands: written down before the first run. Directions must hold; sizes are bands
 * only. Not claimed at all: absolute kPa, a size for the middle third, peaks at edges.
 */

import type { Third } from "../../core/src/terms/places.ts";

/** Widths of the tree against the fitted one, mm inside the tips: the steps of the published study. */
export const STEPS_MM = { narrow: -20, wide: 20, veryWide: 40 } as const;
export type Step = keyof typeof STEPS_MM;

/** One thing said beforehand about every back. `least` and `most`: change against the fitted tree, per cent. */
export interface Claim {
  readonly id: string;
  readonly step: Step;
  readonly of: "head" | Third;
  readonly says: string;
  /** +1: it rises. */
  readonly direction: 1 | -1;
  /** Band of sizes for a step of 2 cm; undefined: only the direction is said. */
  readonly band: { readonly least: number; readonly most: number } | undefined;
}

export const CLAIMS: readonly Claim[] = [
  {
    id: "narrow-head",
    step: "narrow",
    of: "head",
    says: "2 cm narrower lifts the head",
    direction: 1,
    band: undefined,
  },
  {
    id: "narrow-rear",
    step: "narrow",
    of: "rear",
    says: "2 cm narrower raises the rear third",
    direction: 1,
    band: { least: 5, most: 30 },
  },
  {
    id: "wide-head",
    step: "wide",
    of: "head",
    says: "2 cm wider drops the head",
    direction: -1,
    band: undefined,
  },
  {
    id: "wide-front",
    step: "wide",
    of: "front",
    says: "2 cm wider raises the front third",
    direction: 1,
    band: { least: 2, most: 30 },
  },
  {
    id: "very-wide-head",
    step: "veryWide",
    of: "head",
    says: "4 cm wider drops the head",
    direction: -1,
    band: undefined,
  },
  {
    id: "very-wide-front",
    step: "veryWide",
    of: "front",
    says: "4 cm wider raises the front third",
    direction: 1,
    band: undefined,
  },
];

/** A published figure that stands beside the model's, not a target of it. */
export interface PublishedFigure {
  readonly step: Step;
  readonly of: Third | "head";
  readonly gait: "walk" | "trot" | "canter" | "any";
  /** Change against the fitting tree, per cent; undefined: only a direction is published. */
  readonly percent: number | undefined;
  readonly direction: 1 | -1;
  readonly source: string;
  readonly status: string;
}

const MESCHAN =
  "Meschan EM, Peham C, Schobesberger H, Licka TF (2007) Vet J 173:578-584; 19 horses, one rider, treadmill, one size = 2 cm";
const MACKECHNIE =
  "MacKechnie-Guire R et al (2019) Animals 9(10):842, doi:10.3390/ani9100842; 14 horses, one width fitting wide or narrow";
const HARTPURY =
  "Hartpury University (2023) abstract, 9th Int. Conf. on Canine and Equine Locomotion, Utrecht; 8 horses; one width fitting = 10 degrees, the wide saddle with half pad and shims";

const figure = (
  step: Step,
  of: Third | "head",
  gait: PublishedFigure["gait"],
  percent: number | undefined,
  source: string,
  status: string,
  direction: 1 | -1 = 1,
): PublishedFigure => ({ step, of, gait, percent, direction, source, status });

export const PUBLISHED_FIGURES: readonly PublishedFigure[] = [
  figure("narrow", "rear", "walk", 26, MESCHAN, "6.3 against 5.0 kPa read; per cent derived"),
  figure("narrow", "rear", "trot", 26, MESCHAN, "10.8 against 8.6 kPa read; per cent derived"),
  figure("wide", "middle", "walk", 12, MESCHAN, "7.3 kPa read; fitting 6.5 kPa from memory"),
  figure("wide", "middle", "trot", 14, MESCHAN, "15.2 kPa read; fitting 13.3 kPa from memory"),
  figure("veryWide", "middle", "walk", 18, MESCHAN, "7.7 kPa read; fitting 6.5 kPa from memory"),
  figure("veryWide", "middle", "trot", 18, MESCHAN, "15.7 and 13.3 kPa from memory"),
  figure("narrow", "head", "any", undefined, MACKECHNIE, "direction read"),
  figure("narrow", "rear", "any", undefined, MACKECHNIE, "direction read"),
  figure("wide", "head", "any", undefined, MACKECHNIE, "direction read", -1),
  figure("wide", "front", "any", undefined, MACKECHNIE, "direction read"),
  figure("wide", "front", "walk", 29, HARTPURY, "14.2 against 11.0 kPa read; per cent derived"),
  figure("wide", "front", "trot", 20, HARTPURY, "rising trot 10.9 against 9.1 kPa read; per cent derived"),
  figure("wide", "front", "canter", 24, HARTPURY, "17.8 against 14.3 kPa read; per cent derived"),
];
