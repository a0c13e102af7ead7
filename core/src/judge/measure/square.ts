import type { SurveyedSaddle } from "../../survey/case.ts";
import type { MeasuredLimit } from "../input.ts";
import { difference, single } from "./figure.ts";

const NOWHERE = { at: "" } as const;

/** The tree's sides against one another; `bare` says against which of the two diagonal limits. */
export function squareLimits(saddle: SurveyedSaddle, bare: boolean): readonly MeasuredLimit[] {
  const { head, lines } = saddle;
  const at = (path: string, measured: (typeof lines)["benchRock"]) => ({ path: `saddle.${path}`, measured });
  const diagonals = bare ? "saddle-diagonals-bare" : "saddle-diagonals-dressed";
  return [
    difference(
      "saddle-half-angles",
      NOWHERE,
      at("head.halfAngleNear", head.halfAngleNear),
      at("head.halfAngleOff", head.halfAngleOff),
    ),
    difference(
      diagonals,
      NOWHERE,
      at("lines.diagonalNear", lines.diagonalNear),
      at("lines.diagonalOff", lines.diagonalOff),
    ),
    difference(
      "saddle-point-lengths",
      NOWHERE,
      at("lines.pointLengthNear", lines.pointLengthNear),
      at("lines.pointLengthOff", lines.pointLengthOff),
    ),
    single("saddle-bench-rock", NOWHERE, at("lines.benchRock", lines.benchRock)),
    single("saddle-string", NOWHERE, at("lines.stringOffCentre", lines.stringOffCentre)),
  ];
}
