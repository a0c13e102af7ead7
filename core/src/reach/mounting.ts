import type { Plate, SurveyedSaddle } from "../survey/case.ts";
import { isRead, type Measured } from "../survey/reading.ts";

type Mounting = Plate["mounting"];
export type MountingMatch = "same" | "differs" | "cannot-tell";

/** How far two mountings may differ and still take the same plate (common practice, no source). */
const PITCH_APART_MM = 1;
const THICKNESS_APART_MM = 0.5;

/** Two mountings by what was measured on them; a maker's name or a size word is never compared. */
export function sameMounting(saddle: SurveyedSaddle["mounting"], plate: Mounting): MountingMatch {
  const checks = [
    near(saddle.holes, plate.holes, 0),
    near(saddle.pitch, plate.pitch, PITCH_APART_MM),
    near(saddle.thickness, plate.thickness, THICKNESS_APART_MM),
    saddle.edge === "unknown" || plate.edge === "unknown"
      ? "cannot-tell"
      : saddle.edge === plate.edge
        ? "same"
        : "differs",
  ] as const;
  if (checks.includes("differs")) return "differs";
  return checks.includes("cannot-tell") ? "cannot-tell" : "same";
}

function near(a: Measured, b: Measured, apart: number): MountingMatch {
  if (!isRead(a) || !isRead(b)) return "cannot-tell";
  return Math.abs(a.value - b.value) <= apart ? "same" : "differs";
}
