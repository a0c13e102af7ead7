import { applyAnswer, emptyCase } from "@treewright/core/survey/answer-question.ts";
import type { CaseFile } from "@treewright/core/survey/case.ts";
import { getAt, stepsOf } from "@treewright/core/survey/path.ts";
import { isAsked, type Question, questions } from "@treewright/core/survey/questions.ts";
import { wrap } from "./columns.ts";
import type { Desk } from "./desk.ts";
import { problemLines } from "./open-case.ts";

const placeholder = emptyCase("", "");

function standing(draft: CaseFile, path: string): string | undefined {
  const value = getAt(draft, stepsOf(path));
  if (value === undefined) return undefined;
  if (Array.isArray(value)) return `${value.length} points`;
  return typeof value === "object" ? JSON.stringify(value) : String(value);
}

const lastPlace = (asked: readonly Question[], test: (question: Question) => boolean): number =>
  asked.reduce((last, question, at) => (test(question) ? at : last), -1);

/** The first question after the last one that a person has answered; names that the program gave do not count. */
function whereToGoOn(asked: readonly Question[], draft: CaseFile): number {
  const isAnswered = ({ path }: Question): boolean => {
    if (path === "visit.date" || /^horses\[\d+\]\.name$/.test(path)) return false;
    const stands = getAt(draft, stepsOf(path));
    return stands !== undefined && stands !== getAt(placeholder, stepsOf(path));
  };
  return lastPlace(asked, isAnswered) + 1;
}

/** With more than one horse in the case every question of a horse says which. */
function whose({ path }: Question, { horses }: CaseFile): string {
  const horse = horses[Number(/^horses\[(\d+)\]/.exec(path)?.[1] ?? Number.NaN)];
  return horse && horses.length > 1 ? `${horse.name}: ` : "";
}

function heading(question: Question, at: number, count: number, draft: CaseFile): string[] {
  const stands = standing(draft, question.path);
  return [
    ...wrap(`${at + 1} of ${count}  ${whose(question, draft)}${question.asks} [${question.hint}]`, 0, 2),
    ...wrap(`Enter: ${stands === undefined ? question.enterMeans : `${stands} stays`}`, 2, 2),
  ];
}

function nextSection(asked: readonly Question[], at: number): number {
  const found = asked.findIndex((one, place) => place > at && one.section !== asked[at]?.section);
  return found === -1 ? asked.length : found;
}

function before(asked: readonly Question[], at: number, draft: CaseFile): number {
  const found = lastPlace(asked.slice(0, at), (one) => isAsked(one, draft));
  return found === -1 ? at : found;
}

/** Puts the questions of a visit one by one; `keep` is given the draft after every answer. */
export async function walkVisit(
  begun: CaseFile,
  desk: Desk,
  keep: (draft: CaseFile) => void,
): Promise<"done" | "left"> {
  const asked = questions(begun.horses.length);
  let draft = begun;
  let section = "";
  let at = whereToGoOn(asked, draft);
  for (let question = asked[at]; question !== undefined; question = asked[at]) {
    if (!isAsked(question, draft)) {
      at += 1;
      continue;
    }
    if (question.section !== section)
      for (const line of ["", question.section.toUpperCase(), ""]) desk.say(line);
    section = question.section;
    for (const line of heading(question, at, asked.length, draft)) desk.say(line);
    const typed = await desk.ask("  > ");
    if (typed === undefined || typed.trim() === "leave") return "left";
    if (typed.trim() === "back") at = before(asked, at, draft);
    else if (typed.trim() === "next") at = nextSection(asked, at);
    else {
      const answered = applyAnswer(draft, question.path, typed);
      if (answered.ok) {
        if (answered.draft !== draft) keep(answered.draft);
        draft = answered.draft;
        at += 1;
      } else for (const line of problemLines(answered.problem)) desk.say(line);
    }
  }
  return "done";
}
