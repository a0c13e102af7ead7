import type { Entry } from "@treewright/core/records/entry.ts";
import type { Held } from "@treewright/core/records/personal.ts";
import { type Batch, type Card, type KeptPhoto, NotKept, type Store } from "./store.ts";

/** Entries given out at once. */
const PIECE = 2000;

/** The store's twin in memory: the contract by itself, without a disk. Gone when the page is. */
export function memoryStore(): Store {
  const entries = new Map<string, Entry>();
  const cards = new Map<string, Card>();
  const photos = new Map<string, KeptPhoto>();
  const notes = new Map<string, string>();
  let people: readonly Held[] = [];
  let closed = false;

  const check = (): void => {
    if (closed) throw new NotKept("closed", "the store was closed");
  };
  const put = (batch: Batch): void => {
    for (const entry of batch.entries) entries.set(entry.hash, entry);
    for (const card of batch.cards ?? []) cards.set(card.subject, card);
    const added = batch.people ?? [];
    people = [...people.filter((one) => !added.some((other) => other.salt === one.salt)), ...added];
  };

  return {
    async keep(batch) {
      check();
      put(structuredClone(batch));
    },
    async entriesOf(subject) {
      return [...entries.values()].filter((one) => one.subject === subject);
    },
    async *everyEntry() {
      const all = [...entries.values()].sort((a, b) => (a.hash < b.hash ? -1 : 1));
      for (let at = 0; at < all.length; at += PIECE) yield all.slice(at, at + PIECE);
    },
    async cards(sort) {
      return [...cards.values()]
        .filter((one) => one.sort === sort)
        .sort((a, b) => (a.rank < b.rank ? -1 : a.rank > b.rank ? 1 : a.subject < b.subject ? -1 : 1));
    },
    async people() {
      return people;
    },
    async erase(person, fields, batch) {
      check();
      people = people.filter((one) => one.person !== person || !fields.includes(one.field));
      put(structuredClone(batch));
    },
    async keepPhoto(photo) {
      check();
      photos.set(photo.hash, structuredClone(photo));
    },
    async erasePhoto(hash, batch) {
      check();
      photos.delete(hash);
      put(structuredClone(batch));
    },
    async photo(hash) {
      return photos.get(hash);
    },
    async photos() {
      return [...photos.values()]
        .map(({ hash, type, bytes }) => ({ hash, type, bytes }))
        .sort((a, b) => (a.hash < b.hash ? -1 : 1));
    },
    async note(name, value) {
      check();
      notes.set(name, value);
    },
    async noted(name) {
      return notes.get(name);
    },
    async count() {
      return { entries: entries.size, photos: photos.size };
    },
    close() {
      closed = true;
    },
  };
}
