import type { Survey, SurveyedHorse } from "../../survey/case.ts";
import { SIDES, STATIONS } from "../../terms/places.ts";
import type { MeasuredLimit } from "../input.ts";
import { difference, single } from "./figure.ts";

/** Bridge, rock, balance, hollow, and the panel's own sides. */
export function bearingLimits(survey: Survey, horse: SurveyedHorse, path: string): readonly MeasuredLimit[] {
  const { girthed, standing, riderUp } = horse;
  const bearing = survey.saddle.bearing;
  const bySide = SIDES.flatMap((side) => {
    const near = side === "near";
    const [bridge, hollow] = near
      ? (["bridgeNear", "hollowNear"] as const)
      : (["bridgeOff", "hollowOff"] as const);
    return [
      single("bridge", { at: side, side }, { path: `${path}.girthed.${bridge}`, measured: girthed[bridge] }),
      single(
        "hollow",
        { at: side, side },
        { path: `${path}.standing.${hollow}`, measured: standing[hollow] },
      ),
    ];
  });
  const panels = STATIONS.map((station) =>
    difference(
      "saddle-panel-sides",
      { at: station, station },
      { path: `saddle.bearing.${station}.near.middle`, measured: bearing[station].near.middle },
      { path: `saddle.bearing.${station}.off.middle`, measured: bearing[station].off.middle },
    ),
  );
  return [
    ...panels,
    ...bySide,
    single("rock", { at: "" }, { path: `${path}.girthed.rock`, measured: girthed.rock }),
    difference(
      "seat-slope",
      { at: "" },
      { path: `${path}.riderUp.seatSlope`, measured: riderUp.seatSlope },
      { path: "visit.groundSlope", measured: survey.visit.groundSlope },
    ),
  ];
}
