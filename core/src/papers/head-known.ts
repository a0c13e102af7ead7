import type { Answer } from "../answer/result.ts";
import { headKind } from "../reach/build.ts";
import { CREEP, leftAfterAWeekMm } from "../reach/creep.ts";
import { FORMING, type FormingAsked, formingAsked } from "../reach/forming.ts";
import { oneSidedHeating } from "../reach/heat/one-sided.ts";
import type { Setting } from "../reach/setting.ts";
import type { Survey, SurveyedSaddle } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";

/** What is said of the head beside the answers, on sheet and command line; nothing of it goes to an owner. */
export function headLines({ saddle }: Survey, { answers: { setBack, setting } }: Answer): readonly string[] {
  return [
    ...(setting === undefined ? [] : settingSays(saddle, setting)),
    ...(setBack === undefined ? [] : [`${setBack.says} (${setBack.sourceRef}.)`]),
  ];
}

function settingSays(saddle: SurveyedSaddle, setting: Setting): readonly string[] {
  if (setting.way === "heat") return heatSays(saddle, setting);
  if (setting.way === "press" && headKind(saddle.build) === "barred-polymer") return [creepSays(setting)];
  return setting.position === undefined ? [] : [positionSays(saddle, setting.position)];
}

const range = ([lo, hi]: readonly [number, number], unit = ""): string =>
  lo === hi ? `${lo}${unit}` : `${lo} to ${hi}${unit}`;

function heatSays(saddle: SurveyedSaddle, setting: Setting): readonly string[] {
  const asked = formingAsked(saddle, setting.changeMm);
  const way = setting.changeMm > 0 ? "opened" : "closed";
  const { woodThickness } = saddle.reinforcement;
  return [
    `Asked of the maker's people: the head ${way} by ${Math.abs(setting.changeMm)} mm at the tips, to ${setting.spreadMm.toFixed(0)} mm inside them, ${asked.fromAsMadeMm.toFixed(0)} mm from as made, in ${range(asked.times)} heatings (${sourceOf(asked)}).`,
    ...sheetSays(saddle, asked),
    oneSidedHeating(isRead(woodThickness) ? woodThickness.value : undefined).says,
  ];
}

const sourceOf = (asked: FormingAsked): string =>
  asked.bySheet
    ? `the maker's sheet, ${range(asked.inAllMm, " mm")} in all`
    : `${range(FORMING.eachTimeMm, " mm")} each and ${range(asked.inAllMm, " mm")} in all, ${FORMING.timesInLife.join(" or ")} times in a life: ${FORMING.provenance}; the maker's sheet stands above it`;

/** What the maker's people want to know first. */
function sheetSays({ forming }: SurveyedSaddle, { heatedTimes }: FormingAsked): readonly string[] {
  const { fromC, toC, sheetAtHand } = forming;
  const ends = [fromC, toC].filter((end) => end !== undefined);
  return [
    sheetAtHand === "yes"
      ? "The maker's forming sheet is at hand."
      : "The maker's forming sheet is not at hand.",
    ...(ends.length === 0 ? [] : [`By the sheet it is formed at ${ends.join(" to ")} C.`]),
    heatedTimes === undefined
      ? "How often it was heated before is not known."
      : `Heated before: ${heatedTimes} times.`,
  ];
}

function creepSays({ changeMm }: Setting): string {
  const [least, most] = leftAfterAWeekMm(changeMm).map((mm) => mm.toFixed(1));
  const [back, more] = CREEP.partBack.map((part) => (100 * part).toFixed(0));
  return `Of ${Math.abs(changeMm)} mm at release ${least} to ${most} mm are left after a week: polymer with a bar takes ${back} to ${more} % back (${CREEP.provenance}). It is measured after 24 hours and after a week.`;
}

function positionSays({ inserts }: SurveyedSaddle, position: number): string {
  const name = inserts.positions[position]?.name ?? "";
  const today = isRead(inserts.near) ? ` out of ${inserts.near.value}` : "";
  return `Both inserts go into position ${position + 1}${name === "" ? "" : ` (marked ${name})`}${today}, and the head is measured again as fitted.`;
}
