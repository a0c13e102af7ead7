import type { VisitDraft } from "./draft.ts";
import { OF_VISIT } from "./places.ts";

/** One visit in a list, made from its entries. Personal names are not in it: only whose they are. */
export interface VisitLine {
  readonly horse: string;
  readonly saddle: string;
  /** Id of the visit that this one was begun from; empty where it is the first. */
  readonly last: string;
  readonly horseName: string;
  readonly saddleName: string;
  readonly yard: string;
  /** Day of the visit, yyyy-mm-dd. */
  readonly day: string;
  readonly minutes: number | undefined;
  readonly asked: string;
  readonly begun: boolean;
  readonly finished: boolean;
  /** What was done, in one line, and weeks until the next look. */
  readonly done: string;
  readonly nextInWeeks: number | undefined;
  /** The horse was not to be ridden, or was to be seen by a vet first, when answers were last given. */
  readonly horseAnswer: string;
  readonly invented: boolean;
}

/** subject: the visit's own id, which stands for its horse and saddle where none was chosen. */
export function visitLine({ file, ofVisit }: VisitDraft, subject: string): VisitLine {
  const words = (at: string): string => {
    const value = ofVisit.get(at);
    return typeof value === "string" ? value : "";
  };
  const count = (at: string): number | undefined => {
    const value = ofVisit.get(at);
    return typeof value === "number" ? value : undefined;
  };
  return {
    horse: words(OF_VISIT.horse) || subject,
    saddle: words(OF_VISIT.saddle) || subject,
    last: words(OF_VISIT.last),
    horseName: text(file.horses[0]?.name),
    saddleName: text(file.saddle.name),
    yard: text(file.visit.place),
    day: text(file.visit.date),
    minutes: count(OF_VISIT.plannedMinutes),
    asked: text(file.visit.asked),
    begun: ofVisit.has(OF_VISIT.begun),
    finished: ofVisit.has(OF_VISIT.finished),
    done: words(OF_VISIT.done),
    nextInWeeks: count(OF_VISIT.nextInWeeks),
    horseAnswer: words(OF_VISIT.horseAnswer),
    invented: file.invented === true,
  };
}

/** Records that came from elsewhere may hold anything at a place of words: a list shows words or nothing. */
const text = (value: unknown): string => (typeof value === "string" ? value : "");
