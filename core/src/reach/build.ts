import type { SurveyedSaddle } from "../survey/case.ts";

/** What the properties of a head's build allow, and who can help where this program does not calculate. */
export const HEAD_KINDS = [
  "plate-exchanged",
  "insert-exchanged",
  "laminated-with-plates",
  "barred-polymer",
  "solid-polymer",
  "makers-form",
  "not-known",
] as const;
export type HeadKind = (typeof HEAD_KINDS)[number];

/**
 * Follows from properties, never from a class name. Whatever is exchanged is exchanged, whatever the arch is made of;
 * a form that only its maker touches comes before all; anything that does not add up is not known.
 */
export function headKind(build: SurveyedSaddle["build"]): HeadKind {
  if (build.form === "unknown") return "not-known";
  if (build.form !== "none" || build.arch === "composite") return "makers-form";
  if (build.toldBy === "not-told" || build.exchange === "unknown") return "not-known";
  if (build.exchange === "plate") return "plate-exchanged";
  if (build.exchange === "insert") return "insert-exchanged";
  if (build.arch === "wood" && build.metal === "plates") return "laminated-with-plates";
  if (build.arch === "wood" && build.metal !== "unknown") return "makers-form";
  if (build.arch === "polymer" && build.metal === "bar") return "barred-polymer";
  if (build.arch === "polymer" && build.metal === "none") return "solid-polymer";
  return "not-known";
}

/** Kinds whose settings are calculated here; the others are recognised and answered with who can help. */
export const CALCULATED: readonly HeadKind[] = ["plate-exchanged", "laminated-with-plates"];
