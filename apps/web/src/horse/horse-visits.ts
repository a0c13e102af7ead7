import type { ListedVisit } from "../practice/card.ts";
import type { Practice } from "../practice/practice.ts";
import type { VisitDraft } from "../records.ts";
import { type FrontBack, frontBack, readCaseValue, type Survey } from "../road.ts";

/** Visits that are read for the drawings of a horse: five years at one a quarter. Working limit, no source. */
const MOST_READ = 20;

/** One visit of a horse with what was read of its back. */
export interface HorseVisit {
  readonly line: ListedVisit;
  readonly draft: VisitDraft;
  /** Undefined where the visit cannot be worked out yet. */
  readonly survey: Survey | undefined;
  readonly back: FrontBack | undefined;
}

/** The visits of one horse, the last first. */
export const linesOf = (visits: readonly ListedVisit[], horse: string): readonly ListedVisit[] =>
  visits.filter((one) => one.horse === horse).reverse();

export async function visitsOf(practice: Practice, lines: readonly ListedVisit[]): Promise<HorseVisit[]> {
  const read = lines.slice(0, MOST_READ).map(async (line): Promise<HorseVisit> => {
    const draft = practice.draftOf(await practice.store.entriesOf(line.subject));
    const taken = readCaseValue(draft.file);
    const survey = taken.ok ? taken.survey : undefined;
    const horse = survey?.horses[0];
    return { line, draft, survey, back: horse && frontBack(horse, "cold") };
  });
  return Promise.all(read);
}
