import { cardOf } from "../practice/card.ts";
import type { Machine } from "../practice/machine.ts";
import { revealFrom } from "../practice/reveal.ts";
import {
  type Card,
  type Entry,
  ERASED,
  erasedPhotoOf,
  grouped,
  type Held,
  isWhole,
  OF_VISIT,
  type Photo,
  RecordsReader,
  type Refusal,
  type Store,
} from "../records.ts";

/** A list with a hole of so many items would fill the memory. Working limit, no source: no list of a case has a hundred. */
const FAR_IN_A_LIST = /\[\d{4,}\]/;

/**
 * Entries that are kept in one: with all that belongs to them or not at all. Working limit, no source: a hundred visits, which any
 * phone has in memory at once. What is more goes to the disk in pieces of so many.
 */
export const KEPT_AT_ONCE = 20_000;

/** Noted while pieces are on their way: what was brought in is not whole before the last. */
export const BRINGING = "bringing-in";

/** How far it has come: lines or visits, of how many. */
export type TellBring = (part: "looked-at" | "kept" | "listed", number: number, of: number) => void;

/** What a file of records holds besides its entries, once every line of it was found to be in order. */
export interface Checked {
  readonly people: readonly Held[];
  readonly photos: readonly Photo[];
  readonly entries: number;
  /** Visits that were begun in it. */
  readonly visits: ReadonlySet<string>;
  /** People that it tells as erased. */
  readonly erased: ReadonlySet<string>;
  /** Photos that it tells as erased, by their fingerprints. */
  readonly erasedPhotos: ReadonlySet<string>;
}

export type Lines = () => AsyncIterable<string>;

/**
 * Looks at every line and keeps none: a file is taken whole or refused whole. One in which an entry is not what was recorded is
 * refused: it would stand in the place of the true one.
 */
export async function checkRecords(
  lines: Lines,
  tell: TellBring,
): Promise<Checked | { readonly refusal: Refusal }> {
  const reader = new RecordsReader();
  const [people, photos]: [Held[], Photo[]] = [[], []];
  const [visits, erased, erasedPhotos] = [new Set<string>(), new Set<string>(), new Set<string>()];
  let [entries, of] = [0, 0];
  for await (const text of lines()) {
    const taken = reader.take(text);
    if (taken.is === "refused") return taken;
    if (taken.is === "counts") of = taken.counts.entries;
    if (taken.is === "person") people.push(taken.person);
    if (taken.is === "photo") photos.push(taken.photo);
    if (taken.is !== "entry") continue;
    const { entry } = taken;
    const refusal = faultOf(entry);
    if (refusal) return { refusal };
    if (entry.body.at === OF_VISIT.begun) visits.add(entry.subject);
    if (entry.kind === ERASED) erased.add(entry.subject);
    const gone = erasedPhotoOf(entry.body);
    if (gone) erasedPhotos.add(gone);
    entries += 1;
    tell("looked-at", entries, of);
  }
  const refusal = reader.ends();
  return refusal ? { refusal } : { people, photos, entries, visits, erased, erasedPhotos };
}

function faultOf(entry: Entry): Refusal | undefined {
  if (!isWhole(entry))
    return {
      where: `entry ${entry.id}`,
      read: "something else than was recorded",
      allowed: "entries as they were written",
    };
  const { at } = entry.body;
  return typeof at === "string" && FAR_IN_A_LIST.test(at)
    ? {
        where: `entry ${entry.id}`,
        read: `the place ${at.slice(0, 60)}`,
        allowed: "places at most 999 items into a list",
      }
    : undefined;
}

/**
 * What was checked, into the store. Who was erased, here or there, stays erased. Cards are made anew from the entries. Up to
 * `KEPT_AT_ONCE` entries all of it is kept or none; above, a note says that it is not whole until it is.
 */
export async function keepRecords(
  store: Store,
  machine: Machine,
  lines: Lines,
  checked: Checked,
  tell: TellBring,
): Promise<void> {
  const people = await notErased(store, checked);
  const held = grouped([...(await store.people()), ...people], ({ person }) => person);
  const listed = (visits: Iterable<string>, coming: readonly Entry[]) =>
    cardsOf(store, machine, visits, held, coming);
  const isMany = checked.entries > KEPT_AT_ONCE;
  if (isMany) await store.note(BRINGING, "yes");
  let kept = 0;
  for await (const entries of entriesIn(lines)) {
    const cards = isMany ? [] : await listed(checked.visits, entries);
    await store.keep({ entries, people: kept === 0 ? people : [], cards });
    kept += entries.length;
    tell("kept", kept, checked.entries);
  }
  if (!isMany) return;
  const visits = [...checked.visits];
  for (let at = 0; at < visits.length; at += LISTED_AT_ONCE) {
    const some = visits.slice(at, at + LISTED_AT_ONCE);
    await store.keep({ entries: [], cards: await listed(some, []) });
    tell("listed", at + some.length, visits.length);
  }
  await store.note(BRINGING, "");
}

/** Visits whose cards are made and kept together. Working value. */
const LISTED_AT_ONCE = 200;

/** In pieces of `KEPT_AT_ONCE`, one of nothing where there are none. */
async function* entriesIn(lines: Lines): AsyncGenerator<readonly Entry[]> {
  const reader = new RecordsReader();
  let piece: Entry[] = [];
  let isNone = true;
  for await (const text of lines()) {
    const taken = reader.take(text);
    if (taken.is !== "entry") continue;
    piece.push(taken.entry);
    if (piece.length < KEPT_AT_ONCE) continue;
    yield piece;
    [piece, isNone] = [[], false];
  }
  if (piece.length > 0 || isNone) yield piece;
}

/** Cards of the visits, out of what is here and what comes with it. */
async function cardsOf(
  store: Store,
  machine: Machine,
  visits: Iterable<string>,
  held: ReadonlyMap<string, readonly Held[]>,
  coming: readonly Entry[],
): Promise<readonly Card[]> {
  const reveal = (value: unknown) => revealFrom((person) => held.get(person) ?? [], value);
  const bySubject = grouped(coming, ({ subject }) => subject);
  return Promise.all(
    [...visits].map(async (subject) => {
      const all = new Map(
        [...(await store.entriesOf(subject)), ...(bySubject.get(subject) ?? [])].map((one) => [
          one.hash,
          one,
        ]),
      );
      return cardOf(subject, [...all.values()], reveal, machine);
    }),
  );
}

/** People that are asked for together. Working value: 30,000 at once kept a browser's data base busy for half an hour with their order. */
const ASKED_AT_ONCE = 200;

async function notErased(store: Store, { people, erased }: Checked): Promise<readonly Held[]> {
  const isErased = async ({ person }: Held) =>
    erased.has(person) || (await store.entriesOf(person)).some(({ kind }) => kind === ERASED);
  const stay: Held[] = [];
  for (let at = 0; at < people.length; at += ASKED_AT_ONCE) {
    const some = people.slice(at, at + ASKED_AT_ONCE);
    const gone = await Promise.all(some.map(isErased));
    stay.push(...some.filter((_, n) => !gone[n]));
  }
  return stay;
}
