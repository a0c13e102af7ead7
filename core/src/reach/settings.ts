import { isLacking } from "../shape/back.ts";
import { buildHead } from "../shape/head.ts";
import { buildPlate } from "../shape/plate.ts";
import type { Plate, Survey } from "../survey/case.ts";
import { headKind } from "./build.ts";
import { capsPassed, needsBare, PRESS_CAPS } from "./caps.ts";
import { pressHistory } from "./history.ts";
import { sameMounting } from "./mounting.ts";
import { exchanged } from "./move.ts";
import type { Setting } from "./setting.ts";

/** Step of the settings of a press, mm at the tips; finer than any hand reads (assumption). */
const PRESS_STEP_MM = 1;
/** Step of the settings that nobody makes here and that only tell whether any head would serve. */
const IMAGINED_STEP_MM = 2;

/**
 * Everything this head can become, today's setting first. Settings that caps, mounting or construction forbid are
 * listed with what shuts them, so that an answer can say "it would fit, but". `spreadMm` is inside the tips today.
 */
export function settingsOf(survey: Survey, spreadMm: number): readonly Setting[] {
  const found: Setting = setting("as-found", 0, spreadMm, {});
  switch (headKind(survey.saddle.build)) {
    case "laminated-with-plates":
      return [found, ...pressSettings(survey, spreadMm)];
    case "plate-exchanged":
      return [
        found,
        ...survey.platesAtHand.flatMap((plate, index) => plateSetting(survey, plate, index, spreadMm)),
        ...imagined("no-such-plate-at-hand", spreadMm),
      ];
    default:
      return [found, ...imagined("not-calculated-for-this-build", spreadMm)];
  }
}

function changesMm(stepMm: number): readonly number[] {
  const changes: number[] = [];
  for (let mm = -PRESS_CAPS.total.limit; mm <= PRESS_CAPS.total.limit; mm += stepMm)
    if (mm !== 0) changes.push(mm);
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
    halfTurnRad: undefined,
    needsBare: false,
    shutBy: [],
    ...more,
  };
}

function pressSettings(survey: Survey, spreadMm: number): readonly Setting[] {
  const history = pressHistory(survey.saddle);
  return changesMm(PRESS_STEP_MM).map((changeMm) =>
    setting("press", changeMm, spreadMm, {
      needsBare: needsBare(changeMm),
      shutBy: capsPassed(changeMm, history),
    }),
  );
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
