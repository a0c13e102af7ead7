import type { Entry } from "@treewright/core/records/entry.ts";
import type { Held } from "@treewright/core/records/personal.ts";
import Dexie, { type EntityTable } from "dexie";
import { type Batch, type Card, type KeptPhoto, NotKept, type Store } from "./store.ts";

/*
 * The browser's own data base (IndexedDB), through Dexie. Two pitfalls: its usual durability loses the last readings when a
 * battery dies, so every transaction asks for "strict" (measured: 101 syncs in 100 commits, at the same speed); and it is a copy
 * that a browser may clear, not a home: ask to persist, and export.
 */

const PIECE = 2000;
const VERSION = 1;

export { VERSION as STORE_VERSION };

/** Dexie multiplies its versions by ten, and opens what a newer version wrote without a word: so that is looked at here. */
const DEXIE_TIMES = 10;

class Tables extends Dexie {
  declare entries: EntityTable<Entry, "hash">;
  declare people: EntityTable<Held, "salt">;
  declare cards: EntityTable<Card, "subject">;
  declare photos: EntityTable<KeptPhoto, "hash">;
  declare notes: EntityTable<{ name: string; value: string }, "name">;

  constructor(name: string) {
    super(name, { chromeTransactionDurability: "strict" });
    this.version(VERSION).stores({
      entries: "hash, subject",
      people: "salt, person",
      cards: "subject, [sort+rank+subject]",
      photos: "hash",
      notes: "name",
    });
  }
}

/** Opens the data base of that name, or makes it. Throws `NotKept` ("newer") where a newer version wrote it, and leaves it alone. */
export async function indexedStore(name: string): Promise<Store> {
  const tables = new Tables(name);
  // Another tab with a newer version waits for this one to let go.
  tables.on("versionchange", () => tables.close());
  await asNotKept(tables.open());
  if (tables.backendDB().version > VERSION * DEXIE_TIMES) {
    tables.close();
    throw new NotKept("newer", "a newer version wrote these records; they were left alone");
  }
  return {
    async keep(batch) {
      await inOne(tables, () => put(tables, batch));
    },
    entriesOf: (subject) => tables.entries.where("subject").equals(subject).toArray(),
    everyEntry: () => pieces(tables),
    cards: (sort) =>
      tables.cards
        .where("[sort+rank+subject]")
        .between([sort, Dexie.minKey, Dexie.minKey], [sort, Dexie.maxKey, Dexie.maxKey])
        .toArray(),
    people: () => tables.people.toArray(),
    async erase(person, fields, batch) {
      await inOne(tables, async () => {
        await tables.people
          .where("person")
          .equals(person)
          .filter(({ field }) => fields.includes(field))
          .delete();
        await put(tables, batch);
      });
    },
    async keepPhoto(photo) {
      await asNotKept(tables.photos.put(photo));
      const back = await tables.photos.get(photo.hash);
      if (!isSame(back?.content, photo.content))
        throw new NotKept("other", "the photo was not read back as it was");
    },
    async erasePhoto(hash, batch) {
      await inOne(tables, async () => {
        await tables.photos.delete(hash);
        await put(tables, batch);
      });
    },
    photo: (hash) => tables.photos.get(hash),
    async photos() {
      const all: { hash: string; type: KeptPhoto["type"]; bytes: number }[] = [];
      await tables.photos.each(({ hash, type, bytes }) => void all.push({ hash, type, bytes }));
      return all;
    },
    async note(noteName, value) {
      await asNotKept(tables.notes.put({ name: noteName, value }));
    },
    async noted(noteName) {
      return (await tables.notes.get(noteName))?.value;
    },
    async count() {
      return { entries: await tables.entries.count(), photos: await tables.photos.count() };
    },
    close: () => tables.close(),
  };
}

async function put(tables: Tables, { entries, people = [], cards = [] }: Batch): Promise<void> {
  await tables.entries.bulkPut([...entries]);
  await tables.people.bulkPut([...people]);
  await tables.cards.bulkPut([...cards]);
}

const inOne = (tables: Tables, act: () => Promise<void>): Promise<void> =>
  asNotKept(tables.transaction("rw", [tables.entries, tables.people, tables.cards, tables.photos], act));

async function* pieces(tables: Tables): AsyncGenerator<readonly Entry[]> {
  let last = "";
  for (;;) {
    const piece = await tables.entries.where("hash").above(last).limit(PIECE).toArray();
    const end = piece.at(-1);
    if (end === undefined) return;
    yield piece;
    last = end.hash;
  }
}

async function asNotKept<T>(act: PromiseLike<T>): Promise<T> {
  try {
    return await act;
  } catch (error) {
    throw error instanceof NotKept ? error : notKept(error);
  }
}

/** Dexie wraps what the browser says; the first name known on the way inwards counts. */
function notKept(error: unknown): NotKept {
  const { name = "", message = "", inner } = error as { name?: string; message?: string; inner?: unknown };
  if (name === "QuotaExceededError") return new NotKept("full", "this device has no room left");
  if (name === "VersionError") return new NotKept("newer", "a newer version wrote these records");
  if (name === "DatabaseClosedError") return new NotKept("closed", "the store was closed");
  return inner === undefined || inner === null ? new NotKept("other", `${name}: ${message}`) : notKept(inner);
}

const isSame = (a: Uint8Array | undefined, b: Uint8Array): boolean =>
  a !== undefined && a.length === b.length && a.every((byte, at) => byte === b[at]);
