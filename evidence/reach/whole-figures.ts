import { bendAnswer } from "@treewright/core/answer/bend.ts";
import { frameAnswer } from "@treewright/core/answer/frame.ts";
import { platesSeen } from "@treewright/core/answer/plates.ts";
import { roadOf } from "@treewright/core/answer/road.ts";
import { settledAt } from "@treewright/core/answer/settle.ts";
import { horseShutsFit } from "@treewright/core/judge/horse-flag.ts";
import { formingAsked } from "@treewright/core/reach/forming.ts";
import { oneSidedHeating } from "@treewright/core/reach/heat/one-sided.ts";
import { NAMES, SEED, surveyOf } from "../answer/examples.ts";

export const FILE = new URL("./whole.json", import.meta.url);
export { NAMES };

/** What is known of the head of an example: all that it can become, what that takes, and what a change makes of its tree. */
export function partsOf(name: string): readonly (readonly [place: string, part: unknown])[] {
  const survey = surveyOf(name);
  const horse = survey.horses.findIndex((_, index) => !horseShutsFit(survey, index));
  const road = roadOf(survey, Math.max(0, horse), SEED);
  const chosen = road.settings.find(({ way, changeMm }) => way !== "as-found" && changeMm > 3);
  return [
    ["settings", road.settings],
    ["press", bendAnswer(survey, road.settings, chosen, SEED)],
    ["frame", frameAnswer(settledAt(road, chosen), chosen, SEED)],
    ["plates", platesSeen(survey, [], SEED)],
    ["forming", [-6, 3, 9].map((mm) => formingAsked(survey.saddle, mm))],
    ["heated from one side", [undefined, 4, 8].map(oneSidedHeating)],
  ];
}
