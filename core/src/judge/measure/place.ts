import type { SurveyedHorse, SurveyedSaddle } from "../../survey/case.ts";
import { SIDES, STATIONS, type Station } from "../../terms/places.ts";
import type { MeasuredLimit } from "../input.ts";
import { difference, single } from "./figure.ts";

const RIDGE = { front: "ridgeFront", mid: "ridgeMid", rear: "ridgeRear" } as const;

function channelAt(
  saddle: SurveyedSaddle,
  horse: SurveyedHorse,
  path: string,
  station: Station,
): readonly MeasuredLimit[] {
  const channel = { path: `saddle.bearing.${station}.channel`, measured: saddle.bearing[station].channel };
  const ridge = { path: `${path}.standing.${RIDGE[station]}`, measured: horse.standing[RIDGE[station]] };
  const place = { at: station, station };
  return [difference("channel-over-ridge", place, channel, ridge), single("channel-width", place, channel)];
}

/** Channel, girth line, and where the saddle lies between blade and last rib. */
export function placeLimits(
  saddle: SurveyedSaddle,
  horse: SurveyedHorse,
  path: string,
): readonly MeasuredLimit[] {
  const { girthed, standing, moved } = horse;
  const blade = SIDES.map((side) => {
    const field = side === "near" ? "pointBehindBladeNear" : "pointBehindBladeOff";
    return single(
      "point-behind-blade",
      { at: side, side },
      { path: `${path}.girthed.${field}`, measured: girthed[field] },
    );
  });
  return [
    ...STATIONS.flatMap((station) => channelAt(saddle, horse, path, station)),
    difference(
      "girth-groove",
      { at: "" },
      { path: `${path}.girthed.strapLine`, measured: girthed.strapLine },
      { path: `${path}.standing.girthGroove`, measured: standing.girthGroove },
    ),
    ...blade,
    single(
      "panel-rear-edge",
      { at: "" },
      { path: `${path}.girthed.rearBeforeLastRib`, measured: girthed.rearBeforeLastRib },
    ),
    single("side-offset", { at: "" }, { path: `${path}.moved.sideOffset`, measured: moved.sideOffset }),
  ];
}
