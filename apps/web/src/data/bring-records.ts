import { cardOf } from "../practice/card.ts";
import type { Practice } from "../practice/practice.ts";
import {
  type Entry,
  ERASED,
  grouped,
  type Held,
  isWhole,
  OF_VISIT,
  type Records,
  type Refusal,
  type Store,
} from "../records.ts";

/** A list with a hole of so many items would fill the memory. Working limit, no source: no list of a case has a hundred. */
const FAR_IN_A_LIST = /\[\d{4,}\]/;

export type RecordsBrought =
  | { readonly ok: true; readonly entries: number }
  | ({ readonly ok: false } & Refusal);

/**
 * Records into the store: all of them or none. `before` puts what the entries cite, once they are known to be whole. A file in which an entry is not what was recorded is refused: it would
 * stand in the place of the true one. Who was erased, here or there, stays erased. Cards are made anew from the entries.
 */
export async function bringRecords(
  practice: Practice,
  { entries, people: added }: Records,
  before: () => Promise<void> = async () => undefined,
): Promise<RecordsBrought> {
  const changed = entries.find((entry) => !isWhole(entry));
  if (changed)
    return {
      ok: false,
      where: `entry ${changed.id}`,
      read: "something else than was recorded",
      allowed: "entries as they were written",
    };
  const far = entries.find(({ body }) => typeof body.at === "string" && FAR_IN_A_LIST.test(body.at));
  if (far)
    return {
      ok: false,
      where: `entry ${far.id}`,
      read: `the place ${String(far.body.at).slice(0, 60)}`,
      allowed: "places at most 999 items into a list",
    };
  const people = await notErased(practice.store, added, entries);
  const everyone = [...(await practice.store.people()), ...people];
  const cards = await Promise.all(
    [...grouped(entries, ({ subject }) => subject)].filter(isVisit).map(async ([subject, own]) => {
      const here = await practice.store.entriesOf(subject);
      return cardOf(subject, [...here, ...own], everyone, practice.machine);
    }),
  );
  await before();
  await practice.store.keep({ entries, people, cards });
  await practice.heard();
  practice.actions.add("brought in", "a file");
  return { ok: true, entries: entries.length };
}

/** A visit was begun; what else has a graph of its own is in no list. */
const isVisit = ([, own]: readonly [string, readonly Entry[]]): boolean =>
  own.some(({ body }) => body.at === OF_VISIT.begun);

async function notErased(store: Store, people: readonly Held[], entries: readonly Entry[]) {
  const there = new Set(entries.filter(({ kind }) => kind === ERASED).map(({ subject }) => subject));
  const erased = await Promise.all(
    people.map(
      async ({ person }) =>
        there.has(person) || (await store.entriesOf(person)).some(({ kind }) => kind === ERASED),
    ),
  );
  return people.filter((_, at) => !erased[at]);
}
