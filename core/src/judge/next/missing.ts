import type { Survey } from "../../survey/case.ts";
import { getAt, stepsOf } from "../../survey/path.ts";
import { type Question, questions } from "../../survey/questions.ts";
import { isRead, type Measured } from "../../survey/reading.ts";

/** Words that say that nobody knows yet. "Cannot be seen" is an answer. */
const NOT_KNOWN: readonly unknown[] = [
  undefined,
  "",
  "unknown",
  "not-asked",
  "not-looked",
  "not-told",
  "not-said",
];

const isMeasured = (value: unknown): value is Measured =>
  typeof value === "object" && value !== null && ("absent" in value || "instrument" in value);

const isMissing = (value: unknown): boolean =>
  isMeasured(value) ? !isRead(value) && value.absent !== "cannot-be-seen" : NOT_KNOWN.includes(value);

const isUnder = (path: string, place: string): boolean =>
  path === place || path.startsWith(`${place}.`) || path.startsWith(`${place}[`);

/** A reaction's "again?" hangs on its grade; names and remarks decide nothing unless a rule asks for that very place. */
const isIdle = (question: Question, place: string): boolean =>
  question.path.endsWith(".twice") || (question.kind === "words" && question.path !== place);

/** Questions under these places that are not answered, in the order of the work. */
export function missingUnder(survey: Survey, places: readonly string[]): readonly Question[] {
  return questions(survey.horses.length).filter(
    (question) =>
      places.some((place) => isUnder(question.path, place) && !isIdle(question, place)) &&
      isMissing(getAt(survey, stepsOf(question.path))),
  );
}
