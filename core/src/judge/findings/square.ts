import type { SurveyedSaddle } from "../../survey/case.ts";
import { limitRule } from "../limits/all.ts";
import { bandOf } from "../limits/bands.ts";
import { squareLimits } from "../measure/square.ts";
import type { SoundnessFindings } from "./orders.ts";

/** Lines that tell whether a tree is twisted; without the first two nobody has looked. */
const NEEDED = ["saddle-half-angles", "saddle-diagonals-dressed", "saddle-diagonals-bare"];

/** Twisted when any line lies outside by its best estimate; square only when half-angles and diagonals were read. */
export function square(saddle: SurveyedSaddle, bare: boolean): SoundnessFindings["square"] {
  const lines = squareLimits(saddle, bare);
  const outside = lines.some(
    (line) => line.value !== undefined && bandOf(limitRule(line.rule), line.value) === "outside",
  );
  if (outside) return "off";
  return lines.some((line) => NEEDED.includes(line.rule) && line.value === undefined)
    ? "not-measured"
    : "square";
}
