import type { Plate, SurveyedSaddle } from "../survey/case.ts";
import { isRead, type Measured } from "../survey/reading.ts";

type Mounting = Plate["mounting"];
export type MountingMatch = "same" | "differs" | "cannot-tell";

/** One thing that was held against its like. */
export interface MountingCheck {
  readonly what: "holes" | "pitch" | "thickness" | "edge";
  readonly match: MountingMatch;
  /** Which of the two was not read. */
  readonly notRead: readonly ("head" | "plate")[];
}

/** How far two mountings may differ and still take the same plate (common practice, no source). */
const PITCH_APART_MM = 1;
const THICKNESS_APART_MM = 0.5;

/** Two mountings by what was measured on them; a maker's name or a size word is never compared. */
export function sameMounting(saddle: SurveyedSaddle["mounting"], plate: Mounting): MountingMatch {
  const checks = mountingChecks(saddle, plate).map(({ match }) => match);
  if (checks.includes("differs")) return "differs";
  return checks.includes("cannot-tell") ? "cannot-tell" : "same";
}

/** The same, one by one: holes, pitch, thickness, edge. What was not read on either is never "same". */
export function mountingChecks(
  saddle: SurveyedSaddle["mounting"],
  plate: Mounting,
): readonly MountingCheck[] {
  return [
    near("holes", saddle.holes, plate.holes, 0),
    near("pitch", saddle.pitch, plate.pitch, PITCH_APART_MM),
    near("thickness", saddle.thickness, plate.thickness, THICKNESS_APART_MM),
    edges(saddle.edge, plate.edge),
  ];
}

function near(what: MountingCheck["what"], head: Measured, plate: Measured, apart: number): MountingCheck {
  if (isRead(head) && isRead(plate))
    return { what, match: Math.abs(head.value - plate.value) <= apart ? "same" : "differs", notRead: [] };
  return {
    what,
    match: "cannot-tell",
    notRead: [...(isRead(head) ? [] : (["head"] as const)), ...(isRead(plate) ? [] : (["plate"] as const))],
  };
}

function edges(head: Mounting["edge"], plate: Mounting["edge"]): MountingCheck {
  if (head !== "unknown" && plate !== "unknown")
    return { what: "edge", match: head === plate ? "same" : "differs", notRead: [] };
  return {
    what: "edge",
    match: "cannot-tell",
    notRead: [
      ...(head === "unknown" ? (["head"] as const) : []),
      ...(plate === "unknown" ? (["plate"] as const) : []),
    ],
  };
}
