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

/** What decides; springs along the rails leave the head as it is built, and how warm it is changes from day to day. */
type Built = Pick<SurveyedSaddle["build"], "arch" | "metal" | "exchange" | "movedBy" | "form" | "toldBy">;

/** Properties that cannot be true together: heat said of wood, a press said of polymer without metal, an exchange of nothing. */
function contradicts({ arch, metal, exchange, movedBy }: Built): boolean {
  if (arch === "wood" && movedBy === "heat") return true;
  if (arch === "polymer" && metal === "none" && movedBy === "press") return true;
  if (exchange === "none") return movedBy === "exchange";
  return exchange !== "unknown" && (movedBy === "press" || movedBy === "heat");
}

/**
 * Follows from properties, never from a class name. A form or a stuff that only its maker touches, and a head that
 * nothing moves, come before all; whatever is exchanged is exchanged, be its arch of wood or polymer; anything that does
 * not add up is not known.
 */
export function headKind(build: Built): HeadKind {
  if (build.arch === "composite" || (build.form !== "none" && build.form !== "unknown")) return "makers-form";
  if (contradicts(build)) return "not-known";
  if (build.movedBy === "nothing") return "makers-form";
  if (build.form === "unknown" || build.toldBy === "not-told" || build.arch === "unknown") return "not-known";
  return build.exchange === "none" ? bentKind(build) : exchangedKind(build);
}

function exchangedKind({ exchange }: Built): HeadKind {
  if (exchange === "plate") return "plate-exchanged";
  return exchange === "insert" ? "insert-exchanged" : "not-known";
}

/** Kinds of a head with nothing in it that is made to be exchanged. */
function bentKind({ arch, metal }: Built): HeadKind {
  if (metal === "unknown") return "not-known";
  if (arch === "wood") return metal === "plates" ? "laminated-with-plates" : "makers-form";
  if (metal === "bar") return "barred-polymer";
  return metal === "none" ? "solid-polymer" : "makers-form";
}
