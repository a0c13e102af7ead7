import { merged } from "@treewright/core/records/graph.ts";
import type { Held } from "@treewright/core/records/personal.ts";
import { type Card, type KeptPhoto, NotKept, type Store } from "@treewright/store/store.ts";
import { Device, HORSE, idOf, SADDLE } from "../records/written.ts";

/** One thing that every store does; it throws where a store does not. `again` opens what lies under the same name anew. */
export interface Clause {
  readonly says: string;
  readonly holds: (store: Store, again: () => Promise<Store>) => Promise<void>;
}

function is(actual: unknown, wanted: unknown): void {
  const [read, allowed] = [JSON.stringify(actual), JSON.stringify(wanted)];
  if (read !== allowed) throw new Error(`read ${read}; wanted ${allowed}`);
}

function said(count: number): Device {
  const device = new Device(1);
  for (let n = 0; n < count; n++) device.state("a", n, n % 2 === 0 ? HORSE : SADDLE);
  return device;
}
const card = (n: number, rank: string, sort = "visit"): Card => ({
  subject: idOf(n),
  sort,
  rank,
  line: { n },
});
const held = (n: number, field = "name"): Held => ({
  person: idOf(n),
  field,
  salt: n.toString(16).padStart(2, "0").repeat(32),
  value: `value ${n}`,
});
const photo = (byte: number): KeptPhoto => ({
  hash: byte.toString(16).padStart(2, "0").repeat(32),
  type: "image/jpeg",
  bytes: 5,
  content: new Uint8Array([byte, 1, 2, 3, 255]),
});
async function all(store: Store) {
  const entries = [];
  for await (const piece of store.everyEntry()) entries.push(...piece);
  return entries;
}

export const CONTRACT: readonly Clause[] = [
  {
    says: "gives the same entries back, by subject and all, in the order of their hashes",
    holds: async (store, again) => {
      const { entries } = said(30);
      await store.keep({ entries });
      for (const one of [store, await again()]) {
        is(await all(one), merged(entries));
        is(merged(await one.entriesOf(HORSE)), merged(entries.filter(({ subject }) => subject === HORSE)));
        is(await one.count(), { entries: 30, photos: 0 });
      }
      is(await store.entriesOf(idOf(99)), []);
    },
  },
  {
    says: "keeps once what it is given twice",
    holds: async (store) => {
      const { entries } = said(3);
      await store.keep({ entries });
      await store.keep({ entries: entries.slice(1), people: [held(8)] });
      await store.keep({ entries: [], people: [held(8)] });
      is(await all(store), merged(entries));
      is(await store.people(), [held(8)]);
    },
  },
  {
    says: "gives more entries than one piece holds, each once",
    holds: async (store) => {
      const { entries } = said(4100);
      await store.keep({ entries });
      const pieces: number[] = [];
      for await (const piece of store.everyEntry()) pieces.push(piece.length);
      if (pieces.length < 2) throw new Error("one piece");
      is(
        (await all(store)).map(({ hash }) => hash),
        merged(entries).map(({ hash }) => hash),
      );
    },
  },
  {
    says: "gives cards of one sort by rank, the last one of a subject",
    holds: async (store, again) => {
      await store.keep({ entries: [], cards: [card(1, "b"), card(2, "c"), card(3, "a", "horse")] });
      await store.keep({ entries: [], cards: [{ ...card(2, "a"), line: { n: 20 } }] });
      for (const one of [store, await again()])
        is(
          (await one.cards("visit")).map(({ line }) => line),
          [{ n: 20 }, { n: 1 }],
        );
      is((await store.cards("horse")).length, 1);
      is(await store.cards("yard"), []);
    },
  },
  {
    says: "erases one photo, with the entry that says so, and no other",
    holds: async (store, again) => {
      const { entries } = said(2);
      await store.keepPhoto(photo(1));
      await store.keepPhoto(photo(2));
      await store.erasePhoto(photo(1).hash, { entries });
      for (const one of [store, await again()]) {
        is(await one.photo(photo(1).hash), undefined);
        is(
          (await one.photos()).map(({ hash }) => hash),
          [photo(2).hash],
        );
        is(await all(one), merged(entries));
      }
      await store.erasePhoto(photo(9).hash, { entries: [] });
      is((await store.count()).photos, 1);
    },
  },
  {
    says: "erases the fields of one person, with the entry that says so, and no others",
    holds: async (store, again) => {
      await store.keep({
        entries: [],
        people: [held(1), { ...held(2), person: idOf(1), field: "street" }, held(3)],
      });
      const { entries } = said(1);
      await store.erase(idOf(1), ["name"], { entries });
      const left = async (one: Store) => (await one.people()).map(({ value }) => value).sort();
      is(await left(store), ["value 2", "value 3"]);
      is(await left(await again()), ["value 2", "value 3"]);
      is(await all(store), entries);
    },
  },
  {
    says: "gives photos back byte for byte, and lists them without their bytes",
    holds: async (store, again) => {
      await store.keepPhoto(photo(7));
      await store.keepPhoto(photo(9));
      for (const one of [store, await again()]) {
        const back = await one.photo(photo(9).hash);
        is([...(back?.content ?? [])], [9, 1, 2, 3, 255]);
        is(
          await one.photos(),
          [7, 9].map((byte) => ({ hash: photo(byte).hash, type: "image/jpeg", bytes: 5 })),
        );
      }
      is(await store.photo("00".repeat(32)), undefined);
      is((await store.count()).photos, 2);
    },
  },
  {
    says: "keeps notes of this device, the last of a name",
    holds: async (store, again) => {
      await store.note("copied", "never");
      await store.note("copied", "today");
      is(await (await again()).noted("copied"), "today");
      is(await store.noted("other"), undefined);
    },
  },
  {
    says: "keeps nothing once it is closed, and says so",
    holds: async (store) => {
      store.close();
      try {
        await store.keep(said(1));
      } catch (error) {
        if (error instanceof NotKept && error.why === "closed") return;
        throw error;
      }
      throw new Error("it was kept");
    },
  },
];
