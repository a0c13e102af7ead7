import { isLacking } from "../shape/back.ts";
import { buildHead } from "../shape/head.ts";
import { buildInsert } from "../shape/insert.ts";
import { buildPlate } from "../shape/plate.ts";
import type { Plate, Survey } from "../survey/case.ts";
import { bendOf } from "./bend/bend-of.ts";
import { headKind } from "./build.ts";
import { BARRED_CAPS, type Caps, capsPassed, needsBare, PRESS_CAPS } from "./caps.ts";
import { BY_MAKERS_PEOPLE, formingAsked, formingCapsPassed } from "./forming.ts";
import { pressHistory } from "./history.ts";
import { insertsStand } from "./inserts.ts";
import { sameMounting } from "./mounting.ts";
import { exchanged } from "./move.ts";
import type { Setting } from "./setting.ts";

/** Settings are looked at so far either way, whatever the caps of the stuff: what lies beyond its caps tells "spent" from "no head serves". */
const LOOKED_AT_MM = PRESS_CAPS.total.limit;
/** Step of the settings of a press, mm at the tips; finer than any hand reads (assumption). */
const PRESS_STEP_MM = 1;
/** Step of the settings that nobody makes here: by heat, or that only tell whether any head would serve. */
const IMAGINED_STEP_MM = 2;

/**
 * Everything this head can become, today's setting first. Settings that caps, mounting or construction forbid are
 * listed with what shuts them, so that an answer can say "it would fit, but". `spreadMm` is inside the tips today.
 */
export function settingsOf(survey: Survey, spreadMm: number): readonly Setting[] {
  return [setting("as-found", 0, spreadMm, {}), ...othersOf(survey, spreadMm)];
}

function othersOf(survey: Survey, spreadMm: number): readonly Setting[] {
  switch (headKind(survey.saddle.build)) {
    case "laminated-with-plates":
      return pressSettings(survey, spreadMm, PRESS_CAPS);
    case "barred-polymer":
      return pressSettings(survey, spreadMm, BARRED_CAPS);
    case "solid-polymer":
      return heatSettings(survey, spreadMm);
    case "plate-exchanged":
      return [
        ...survey.platesAtHand.flatMap((plate, index) => plateSetting(survey, plate, index, spreadMm)),
        ...imagined("no-such-plate-at-hand", spreadMm),
      ];
    case "insert-exchanged":
      return insertSettings(survey, spreadMm);
    default:
      return imagined("not-calculated-for-this-build", spreadMm);
  }
}

function changesMm(stepMm: number): readonly number[] {
  const changes: number[] = [];
  for (let mm = -LOOKED_AT_MM; mm <= LOOKED_AT_MM; mm += stepMm) if (mm !== 0) changes.push(mm);
  return changes;
}

function imagined(shutBy: string, spreadMm: number): readonly Setting[] {
  return changesMm(IMAGINED_STEP_MM).map((mm) => setting("imagined", mm, spreadMm, { shutBy: [shutBy] }));
}

function setting(way: Setting["way"], changeMm: number, spreadMm: number, more: Partial<Setting>): Setting {
  return {
    id: `${way} ${changeMm >= 0 ? "+" : ""}${changeMm} mm`,
    way,
    changeMm,
    spreadMm: spreadMm + changeMm,
    plate: undefined,
    position: undefined,
    halfTurnRad: undefined,
    needsBare: false,
    shutBy: [],
    ...more,
  };
}

function pressSettings(survey: Survey, spreadMm: number, caps: Caps): readonly Setting[] {
  const history = pressHistory(survey.saddle);
  const bend = bendOf(survey.saddle);
  return changesMm(PRESS_STEP_MM).map((changeMm) =>
    setting("press", changeMm, spreadMm, {
      needsBare: needsBare(changeMm, caps),
      shutBy: [...capsPassed(changeMm, history, caps), ...(bend?.shutBy(changeMm) ?? [])],
    }),
  );
}

/** What the maker's people could be asked for: never a way here, and listed with the caps that it would pass. */
function heatSettings({ saddle }: Survey, spreadMm: number): readonly Setting[] {
  return changesMm(IMAGINED_STEP_MM).map((changeMm) => {
    const caps = formingCapsPassed(formingAsked(saddle, changeMm));
    return setting("heat", changeMm, spreadMm, { shutBy: [BY_MAKERS_PEOPLE, ...caps] });
  });
}

/** Each position but the one they stand in; without it, or with one not read, whether another head would serve. */
function insertSettings({ saddle }: Survey, spreadMm: number): readonly Setting[] {
  const stand = insertsStand(saddle.inserts);
  const built = saddle.inserts.positions.map((position, index) => buildInsert(position, index, saddle));
  const head = buildHead(saddle);
  if (isLacking(head)) return [];
  const positions = built.flatMap((belief, position) => {
    const isToday = stand.how === "alike" && stand.position === position;
    if (isLacking(belief) || isToday) return [];
    const moved = exchanged(belief).at(head.at({}), {});
    return [
      setting("exchange", moved.changeMm, spreadMm, {
        id: `position ${position + 1}`,
        position,
        halfTurnRad: moved.halfTurnRad,
      }),
    ];
  });
  const isRead = built.length > 0 && !built.some(isLacking);
  return [...positions, ...imagined(isRead ? "no-such-position" : "position-not-read", spreadMm)];
}

function plateSetting(survey: Survey, plate: Plate, index: number, spreadMm: number): readonly Setting[] {
  // Inside the tips as fitted, whichever face it was read on; a plate that cannot be turned into that is no setting.
  const built = buildPlate(plate, index, survey.saddle);
  const head = buildHead(survey.saddle);
  if (isLacking(built) || isLacking(head)) return [];
  const { changeMm, halfTurnRad } = exchanged(built).at(head.at({}), {});
  const match = sameMounting(survey.saddle.mounting, plate.mounting);
  const shutBy = [
    ...(match === "same" ? [] : [match === "differs" ? "mounting-differs" : "mounting-not-read"]),
    ...(plate.sound === "sound" ? [] : ["plate-not-seen-sound"]),
  ];
  return [
    setting("exchange", changeMm, spreadMm, { id: `plate ${index + 1}`, plate: index, halfTurnRad, shutBy }),
  ];
}
