import { cardOf, type Practice, VISIT } from "../practice/practice.ts";
import { type Entry, linesOf, readRecords, type Store } from "../records.ts";

/** Everything of a store as the text of one file of records. */
export async function recordsText(store: Store): Promise<string> {
  const entries: Entry[] = [];
  for await (const piece of store.everyEntry()) entries.push(...piece);
  const records = { people: await store.people(), photos: await store.photos(), entries };
  return `${[...linesOf(records)].join("\n")}\n`;
}

export type Brought =
  | { readonly ok: true; readonly entries: number }
  | { readonly ok: false; readonly where: string; readonly read: string; readonly allowed: string };

/** The records of a file into the store: all of them or none. Cards are made anew from the entries. */
export async function bringRecords(practice: Practice, text: string): Promise<Brought> {
  const read = readRecords(text.split(/\r?\n/));
  if (!read.ok) return { ok: false, ...(read.refusals[0] ?? { where: "", read: "", allowed: "" }) };
  const { entries, people } = read.records;
  const everyone = [...(await practice.store.people()), ...people];
  const subjects = new Set(entries.map(({ subject }) => subject));
  const cards = await Promise.all(
    [...subjects].map(async (subject) => {
      const own = entries.filter((one) => one.subject === subject);
      const here = await practice.store.entriesOf(subject);
      return cardOf(subject, [...here, ...own], everyone, practice.machine);
    }),
  );
  await practice.store.keep({ entries, people, cards: cards.filter(({ sort }) => sort === VISIT) });
  await practice.heard();
  return { ok: true, entries: entries.length };
}
