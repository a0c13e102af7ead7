import {
  type Card,
  committedSchema,
  type Entry,
  GRAPH_KINDS,
  standingOf,
  type VisitLine,
  visitDraft,
  visitLine,
} from "../records.ts";
import type { Machine } from "./machine.ts";

export const VISIT = "visit";
const OWNER = "visit.owner";

/** A visit in a list, by its subject. */
export interface ListedVisit extends VisitLine {
  readonly subject: string;
  /** Id of the saddle's owner, whose name stands in the store of people; empty where none was told. */
  readonly owner: string;
}

/** A visit's card, out of its entries alone. No name of a person is in it: only whose it is. */
export function cardOf(
  subject: string,
  entries: readonly Entry[],
  reveal: (value: unknown) => string | undefined,
  machine: Machine,
): Card {
  const day = new Date(machine.now()).toISOString().slice(0, 10);
  const standing = standingOf(entries, GRAPH_KINDS);
  const line = visitLine(visitDraft(standing, reveal, day), subject);
  const owner = committedSchema.safeParse(standing.get(OWNER)?.entries[0]?.value);
  return {
    subject,
    sort: VISIT,
    rank: rankOf({ ...line, subject }),
    line: { ...line, owner: owner.success ? owner.data.person : "" },
  };
}

const NO_OWNER = { owner: "" };
// A card's line was made by `cardOf` and by nothing else; one of an earlier version told no owner.
export const listed = ({ subject, line }: Card): ListedVisit => ({
  ...NO_OWNER,
  ...(line as unknown as Omit<ListedVisit, "subject">),
  subject,
});

const rankOf = ({ day, subject }: { day: string; subject: string }): string => `${day} ${subject}`;

/** The list with one visit written anew, in its place by day: the others are not sorted again at every reading. */
export function withVisit(visits: readonly ListedVisit[], one: ListedVisit): readonly ListedVisit[] {
  const others = visits.filter(({ subject }) => subject !== one.subject);
  const rank = rankOf(one);
  // A visit that is written to is most often among the last.
  let at = others.length;
  while (at > 0 && rankOf(others[at - 1] ?? one) > rank) at -= 1;
  return [...others.slice(0, at), one, ...others.slice(at)];
}
