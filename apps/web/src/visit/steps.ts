import type { Language } from "../catalogue/use-words.ts";
import type { VisitDraft } from "../records.ts";
import {
  asksAt,
  getAt,
  isAsked,
  ORDER_OF_WORK,
  type Question,
  questions,
  stepsOf,
  USUAL_UNITS,
} from "../road.ts";

/** One step of a visit, in the order of the work: questions of the case, or a screen of its own. */
export type Step =
  | { readonly is: "asked"; readonly title: string; readonly questions: readonly Question[] }
  | { readonly is: "what-to-do" | "agreed" | "hand-over"; readonly title: string };

/** The steps in a language: where questions and titles of core are said in it. */
export function stepsFor(horses: number, { words: { visit }, trade }: Language): readonly Step[] {
  const all = questions(horses).map((one) => ({
    ...one,
    asks: asksAt(one.path, trade.said),
    hint: trade.said(one.hint),
  }));
  return [
    ...ORDER_OF_WORK.map(
      ({ title }): Step => ({
        is: "asked",
        title: trade.said(title),
        questions: all.filter(({ section }) => section === title),
      }),
    ),
    { is: "what-to-do", title: visit.whatToDo },
    { is: "agreed", title: visit.agreed },
    { is: "hand-over", title: visit.handOver },
  ];
}

/** What stands at a question, as typed; undefined where nothing was said. */
export const saidAt = ({ file }: VisitDraft, { path }: Question): unknown => getAt(file, stepsOf(path));

/** The unit that a line's points were typed in; the usual one where none was said. */
export function lineUnit({ file }: VisitDraft, { path }: Question): string {
  const said = getAt(file, stepsOf(path.replace(/points$/, "unit")));
  return typeof said === "string" ? said : USUAL_UNITS.length;
}

/** Questions that are put now: some hang on an earlier answer. */
export const askedNow = (step: Step, { file }: VisitDraft): readonly Question[] =>
  step.is === "asked" ? step.questions.filter((one) => isAsked(one, file)) : [];

export const countSaid = (step: Step, draft: VisitDraft): number =>
  askedNow(step, draft).filter((one) => saidAt(draft, one) !== undefined).length;
