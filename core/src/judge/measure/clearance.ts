import type { SurveyedHorse } from "../../survey/case.ts";
import { SIDES } from "../../terms/places.ts";
import type { MeasuredLimit } from "../input.ts";
import { single } from "./figure.ts";

/** Clearances in the states that have a limit; states are never mixed. */
export function clearanceLimits(horse: SurveyedHorse, path: string): readonly MeasuredLimit[] {
  const top = (rule: Parameters<typeof single>[0], state: "girthed" | "riderUp" | "halfSeat") =>
    single(rule, { at: "" }, { path: `${path}.${state}.clearanceTop`, measured: horse[state].clearanceTop });
  const beside = (["girthed", "riderUp"] as const).flatMap((state) =>
    SIDES.map((side) => {
      const field = side === "near" ? "clearanceNear" : "clearanceOff";
      const at = `${state === "girthed" ? "girthed" : "rider up"}, ${side}`;
      return single(
        "clearance-side",
        { at, side },
        { path: `${path}.${state}.${field}`, measured: horse[state][field] },
      );
    }),
  );
  return [
    top("clearance-girthed", "girthed"),
    top("clearance-rider-up", "riderUp"),
    top("clearance-half-seat", "halfSeat"),
    ...beside,
  ];
}
