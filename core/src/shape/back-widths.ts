import { U_PER_SD } from "../engine/central.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import { buildFront, isLacking } from "./back.ts";
import type { Section } from "./model.ts";
import type { Temper } from "./trace-doubt.ts";

/**
 * Depths below the top at which a front section's width is told, mm: under the points of most heads, and at the tips of deep ones
 * (common practice, no source).
 */
export const WIDTH_DEPTHS_MM = [50, 100] as const;

export interface BackWidth {
  readonly depthMm: number;
  readonly widthMm: number;
  /** Half of the central 95 %, mm: the drawing's own doubt and the instrument's. */
  readonly uMm: number;
}

/** The outline of a horse's back at the front station and its widths there; undefined where no trace of that temper tells it. */
export interface FrontBack {
  readonly outline: Section["outline"];
  readonly widths: readonly BackWidth[];
}

export function frontBack(horse: SurveyedHorse, temper: Temper): FrontBack | undefined {
  const section = buildFront(horse, temper);
  if (isLacking(section)) return undefined;
  const uMm = U_PER_SD * together(section.widthOwnMm, section.widthSharedMm);
  const widths = WIDTH_DEPTHS_MM.flatMap((depthMm): readonly BackWidth[] => {
    const near = section.halfWidthMm("near", depthMm, {});
    const off = section.halfWidthMm("off", depthMm, {});
    return near === undefined || off === undefined ? [] : [{ depthMm, widthMm: near + off, uMm }];
  });
  return { outline: section.outline, widths };
}

/**
 * What may be said of two widths of one back at one depth. Both doubts are taken as each other's strangers, which is the larger:
 * whether both traces were drawn with one and the same curve is not kept.
 */
export function widthChange(
  before: BackWidth,
  now: BackWidth,
): { readonly byMm: number; readonly is: "wider" | "narrower" | "cannot-tell" } {
  const byMm = now.widthMm - before.widthMm;
  const uMm = together(before.uMm, now.uMm);
  return { byMm, is: Math.abs(byMm) <= uMm ? "cannot-tell" : byMm > 0 ? "wider" : "narrower" };
}

/** Of two doubts that know nothing of each other. */
const together = (a: number, b: number): number => Math.sqrt(a * a + b * b);
