import { riddenGaits } from "@treewright/core/fit/gaits.ts";
import { RESTS_NOT, refusalSays } from "@treewright/core/fit/refusal-words.ts";
import { horseWords, mayRideSays, saddleWords, workWords } from "@treewright/core/judge/answer-words.ts";
import { LIMITS } from "@treewright/core/judge/limits/all.ts";
import { readingSays, traceSays } from "@treewright/core/judge/next/traces.ts";
import { ownerQuestions } from "@treewright/core/judge/owner/asks.ts";
import { RULES } from "@treewright/core/judge/rules/all.ts";
import { CAUTIONS } from "@treewright/core/judge/words/cautions.ts";
import { COME_BACK_NEXT } from "@treewright/core/judge/words/horse.ts";
import { NOTHING_OVER_A_HOLLOW } from "@treewright/core/judge/words/work.ts";
import { aboutPath } from "@treewright/core/survey/about-path.ts";
import { ORDER_OF_WORK } from "@treewright/core/survey/order-of-work.ts";
import { asksAt, questions } from "@treewright/core/survey/questions.ts";
import { ridesSchema } from "@treewright/core/survey/rider-rides.ts";
import { FIELDS, fieldAt } from "@treewright/core/survey/schema-fields.ts";
import { unitBeside } from "@treewright/core/survey/unit-beside.ts";
import { HORSE_ANSWERS, OUTCOMES, SADDLE_ANSWERS, WORK_ANSWERS } from "@treewright/core/terms/answers.ts";
import { SIDES, STATIONS } from "@treewright/core/terms/places.ts";
import { shownRange } from "../../apps/web/src/units/shown.ts";

/** Two, so that a place names its horse. */
const QUESTIONS = questions(2);

/** Every part of every title, question and place that a screen can ask core for. */
export function placesSaid(): ReadonlySet<string> {
  const said = new Set<string>(ORDER_OF_WORK.map(({ title }) => title));
  const hear = (english: string): string => {
    said.add(english);
    return english;
  };
  for (const { path } of QUESTIONS) {
    asksAt(path, hear);
    aboutPath(path, hear);
  }
  // Reasons lead to the places they were read at, groups among them; a refused file names any place of it.
  for (const { readings } of [...RULES, ...LIMITS]) for (const path of readings) aboutPath(path, hear);
  aboutPath("horses[1].traces[0].points[3]", hear);
  aboutPath("horses[1].traces[0].repeats[1]", hear);
  return said;
}

/** What may be typed, in the usual units and in those that a device may have beside its fields instead. */
export function hintsSaid(): ReadonlySet<string> {
  const others = { length: "in", mass: "lb" } as const;
  return new Set(
    QUESTIONS.filter(({ words }) => words === undefined).flatMap(({ path, range, hint }) => {
      const unit = unitBeside(path, others);
      const kind = unit === others.mass ? "mass" : "length";
      return unit === undefined || range === undefined ? [hint] : [hint, shownRange(range, kind, others)];
    }),
  );
}

/** The sentence that a visit keeps of the one reading that would settle it, with the place that it names. */
export const readNextSaid = (): readonly { readonly says: string; readonly path: string }[] =>
  [...QUESTIONS.map(({ path }) => path), "horses[1].traces.rear.warm"].map((path) => ({
    says: `Read next: ${readingSays(path)}.`,
    path,
  }));

/** Ids that can be chosen, with the name of the place that asks for them; units and outcomes as their own places. */
export function choicesGiven(): readonly { readonly id: string; readonly place: string }[] {
  const ofFields = FIELDS.filter(({ kind }) => kind === "choice").flatMap(({ path, words = [] }) =>
    words.map((id) => ({ id, place: path.split(".").at(-1) ?? "" })),
  );
  const units = [...new Set(QUESTIONS.flatMap(({ unit }) => unit ?? []))].map((id) => ({
    id,
    place: "unit",
  }));
  const outcomes = [...OUTCOMES, "not-read"].map((id) => ({ id, place: "outcome" }));
  const owners = ownerQuestions().flatMap(({ name, words }) => words.map((id) => ({ id, place: name })));
  return [...ofFields, ...units, ...outcomes, ...owners];
}

/** Every sentence that an answer can be made of. */
export function answersSaid(): ReadonlySet<string> {
  const words = [
    ...HORSE_ANSWERS.map(horseWords),
    ...SADDLE_ANSWERS.map(saddleWords),
    ...WORK_ANSWERS.map(workWords),
  ].flatMap(({ heading, meaning, nextStep, who }) => [heading, meaning, nextStep, who]);
  const rides = HORSE_ANSWERS.flatMap((horse) =>
    SADDLE_ANSWERS.flatMap((saddle) => [mayRideSays(horse, saddle), mayRideSays(horse, saddle, [])]),
  );
  const rules = [...RULES, ...LIMITS].flatMap(({ says, provenance }) => [says, provenance]);
  const traces = ["front", "mid", "rear"].flatMap((station) =>
    ["cold", "warm"].flatMap((temper) => traceSays(`horses[0].traces.${station}.${temper}`) ?? []),
  );
  const gaits = riddenGaitsOfAll().map(({ says }) => says);
  // Where a limit was judged: parts of its place, as `at` of a judged limit joins them.
  const places = ["template", "computed", "cold", "warm", ...STATIONS, ...SIDES];
  return new Set([
    ...places,
    ...words,
    ...rides,
    ...rules,
    ...traces,
    ...gaits,
    ...CAUTIONS.map(({ says }) => says),
    ...Object.values(COME_BACK_NEXT),
    NOTHING_OVER_A_HOLLOW,
    ...RESTS_NOT.map(refusalSays),
  ]);
}

/** Every way in which the rider may sit. */
function riddenGaitsOfAll() {
  const trots = fieldAt("rider.rides.trot")?.words ?? [];
  const canters = fieldAt("rider.rides.canter")?.words ?? [];
  return trots.flatMap((trot) =>
    canters.flatMap((canter) => riddenGaits(ridesSchema.parse({ trot, canter }))),
  );
}
