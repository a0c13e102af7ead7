import type { Held } from "../../records/personal.ts";
import { type CopyTold, furtherPageBegins, PAGE_ENDS, pageAt, pageBegins, section } from "./page.ts";
import { type Piece, personRows, tablesBegin, visitRows } from "./tables.ts";
import type { ListedForCopy, ToldVisit } from "./visit-told.ts";

/**
 * The pages and tables of a copy, given out piece by piece in the order in which each file is to be written: so that a practice of many
 * years is never in memory as one text. `visit` is called once for each that is listed, in the list's order.
 */
export class CopyTexts {
  private at = 0;
  private readonly visitsOf = new Map<string, string[]>();

  constructor(
    private readonly listed: readonly ListedForCopy[],
    private readonly told: CopyTold,
  ) {}

  begin(): readonly Piece[] {
    return [{ path: pageAt(0), text: pageBegins(this.listed, this.told) }, ...tablesBegin()];
  }

  visit(visit: ToldVisit): readonly Piece[] {
    const path = pageAt(this.at);
    const before = this.at === 0 ? path : pageAt(this.at - 1);
    this.at += 1;
    for (const person of new Set(visit.said.flatMap((one) => one.person ?? []))) this.names(person, visit);
    return [
      ...(path === before
        ? []
        : [
            { path: before, text: PAGE_ENDS },
            { path, text: furtherPageBegins() },
          ]),
      { path, text: section(visit) },
      ...visitRows(visit),
    ];
  }

  /** Adds to the list in place: who works in every visit would have it copied at each. */
  private names(person: string, { subject }: ToldVisit): void {
    const visits = this.visitsOf.get(person);
    if (visits === undefined) this.visitsOf.set(person, [subject]);
    else visits.push(subject);
  }

  end(people: readonly Held[]): readonly Piece[] {
    return [
      { path: pageAt(Math.max(0, this.at - 1)), text: PAGE_ENDS },
      ...personRows(people, this.visitsOf),
    ];
  }
}
