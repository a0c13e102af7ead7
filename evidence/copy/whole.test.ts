import { createHash } from "node:crypto";
import type { Entry } from "@treewright/core/records/entry.ts";
import { endsOf } from "@treewright/core/records/graph.ts";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { citing } from "@treewright/core/survey/recorded/photos.ts";
import { OF_VISIT } from "@treewright/core/survey/recorded/places.ts";
import { memoryStore } from "@treewright/store/memory.ts";
import type { KeptPhoto, Store } from "@treewright/store/store.ts";
import { openPack } from "@treewright/zip/read.ts";
import { packed } from "@treewright/zip/write.ts";
import { describe, expect, it } from "vitest";
import { bring as bringInto } from "../../apps/web/src/data/bring.ts";
import { BRINGING, KEPT_AT_ONCE } from "../../apps/web/src/data/bring-records.ts";
import { copyOf, type Papers } from "../../apps/web/src/data/pack.ts";
import type { Machine } from "../../apps/web/src/practice/machine.ts";
import { Practice } from "../../apps/web/src/practice/practice.ts";
import { HOSTILE, OTHER } from "./told.ts";

/*
 * What leaves one store and enters an empty one, by the store's twin in memory. What this cannot see: a browser's disk; that is
 * `evidence/store`, and one way through at the screen is `screen.test.ts`.
 */
const NOW = Date.parse("2031-04-12T09:00:00Z");
const LIMITS = { files: 100, bytes: 1e8 };
const NO_PAPERS: Papers = { made: new Map(), without: [] };

function machine(first: number): Machine {
  let count = first;
  return {
    now: () => NOW,
    zone: "Europe/London",
    chance: (bytes) =>
      Uint8Array.from({ length: bytes }, () => {
        count = (count * 48271) % 2147483647;
        return count % 256;
      }),
  };
}

function photoOf(n: number, type: KeptPhoto["type"]): KeptPhoto {
  const content = Uint8Array.from({ length: 5000 + n }, (_, at) => (at * n) % 256);
  return { hash: createHash("sha256").update(content).digest("hex"), type, bytes: content.length, content };
}

const PHOTOS = [photoOf(7, "image/jpeg"), photoOf(11, "image/heic")];

async function written(): Promise<Practice> {
  const practice = await Practice.open(memoryStore(), machine(17));
  for (const photo of PHOTOS) await practice.store.keepPhoto(photo);
  // The longest is cut: a line of records is at most 200,000 bytes.
  for (const text of HOSTILE.map((one) => one.slice(0, 100_000)))
    await practice.begin([
      { at: "visit.date", value: "2031-04-12" },
      { at: "horses[0].name", value: text },
      { at: "visit.owner", value: text },
      { at: OF_VISIT.done, value: PHOTOS[0]?.hash },
    ]);
  return practice;
}

/** As the screen brings it in. */
async function bring(to: Practice, copy: Blob) {
  const brought = await bringInto(to.store, to.machine, copy);
  await to.heardOfFile();
  return brought;
}

const empty = () => Practice.open(memoryStore(), machine(19));

async function everything(store: Store) {
  const entries: Entry[] = [];
  for await (const piece of store.everyEntry()) entries.push(...piece);
  const people = [...(await store.people())].sort((a, b) => (a.salt < b.salt ? -1 : 1));
  const photos = await Promise.all((await store.photos()).map(({ hash }) => store.photo(hash)));
  return { entries, people, photos };
}

/** The same copy, one of its files made another or left out. */
async function changed(copy: Blob, path: string, content: Uint8Array | undefined): Promise<Blob> {
  const pack = await openPack(copy, LIMITS);
  return packed(
    (async function* () {
      for (const one of pack.paths) {
        if (one !== path) yield { path: one, content: await pack.bytesOf(one, 1e8) };
        else if (content) yield { path: one, content };
      }
    })(),
    new Date(NOW),
  );
}

describe("a copy", () => {
  it("enters an empty store entry for entry, name for name and photo for photo, as often as one likes", async () => {
    const from = await written();
    const copy = await copyOf(from.store, NO_PAPERS, new Date(NOW));
    const to = await empty();
    for (let times = 0; times < 2; times++)
      expect(await bring(to, copy)).toMatchObject({ ok: true, photos: 2, photosNotBeside: 0 });
    expect(await everything(to.store)).toEqual(await everything(from.store));
    expect(to.shown.get().visits.map(({ horseName }) => horseName)).toEqual(
      from.shown.get().visits.map(({ horseName }) => horseName),
    );
  });
  it("lies in files whose names nobody typed", async () => {
    const copy = await copyOf((await written()).store, NO_PAPERS, new Date(NOW));
    const { paths } = await openPack(copy, LIMITS);
    expect([...paths].sort()).toEqual(
      [
        "index.html",
        "records.jsonl",
        "tables/people.csv",
        "tables/readings.csv",
        "tables/visits.csv",
        `photos/${PHOTOS[0]?.hash}.jpg`,
        `photos/${PHOTOS[1]?.hash}.heic`,
      ].sort(),
    );
  });
  it("holds the papers of a visit, but not of one that was written to meanwhile", async () => {
    const { store } = await written();
    const [one, two] = (await store.cards("visit")).map(({ subject }) => subject);
    if (!one || !two) throw new Error("there are two visits");
    const papersOf = (subject: string, ends: string) => ({
      ends,
      papers: [
        { name: "Letter", path: `papers/${subject}-horse-1-letter.pdf`, content: new Uint8Array([1, 2]) },
      ],
    });
    const made = new Map([
      [one, papersOf(one, endsOf(await store.entriesOf(one)).join())],
      [two, papersOf(two, "earlier")],
    ]);
    const pack = await openPack(await copyOf(store, { made, without: [] }, new Date(NOW)), LIMITS);
    expect(pack.paths.filter((path) => path.startsWith("papers/"))).toEqual([
      `papers/${one}-horse-1-letter.pdf`,
    ]);
    const page = new TextDecoder().decode(await pack.bytesOf("index.html", 1e8));
    expect(page).toContain(`href="papers/${one}-horse-1-letter.pdf"`);
    expect(page).not.toContain(`papers/${two}`);
  });
  it("enters as its bare records too, and says how many photos did not come", async () => {
    const from = await written();
    const pack = await openPack(await copyOf(from.store, NO_PAPERS, new Date(NOW)), LIMITS);
    const to = await empty();
    const bare = new Blob([await pack.bytesOf("records.jsonl", 1e8)]);
    expect(await bring(to, bare)).toMatchObject({ ok: true, photos: 0, photosNotBeside: 2 });
    expect((await everything(to.store)).entries).toEqual((await everything(from.store)).entries);
  });
  it("of many entries goes in by pieces, and says until the last that it is not whole", async () => {
    const from = await Practice.open(memoryStore(), machine(31));
    const subject = await from.begin([{ at: "horses[0].name", value: "Curlew" }]);
    const said = Array.from({ length: KEPT_AT_ONCE }, (_, n) => ({ at: "horses[0].age", value: n }));
    const own = await from.store.entriesOf(subject);
    await from.say(subject, own, said);
    const copy = await copyOf(from.store, NO_PAPERS, new Date(NOW));
    const store = memoryStore();
    const noted: unknown[] = [];
    const watched: Store = {
      ...store,
      async keep(batch) {
        noted.push([batch.entries.length, batch.cards?.length, await store.noted(BRINGING)]);
        await store.keep(batch);
      },
    };
    const to = await Practice.open(watched, machine(37));
    const told: string[] = [];
    expect(
      await bringInto(watched, to.machine, copy, (part, n, of) => told.push(`${part} ${n} of ${of}`)),
    ).toMatchObject({
      ok: true,
    });
    const count = own.length + KEPT_AT_ONCE;
    expect(noted).toEqual([
      [KEPT_AT_ONCE, 0, "yes"],
      [count - KEPT_AT_ONCE, 0, "yes"],
      [0, 1, "yes"],
    ]);
    expect(await store.noted(BRINGING)).toBe("");
    expect(told).toContain(`looked-at ${count} of ${count}`);
    expect(told.at(-1)).toBe("listed 1 of 1");
    await to.heard();
    expect(to.shown.get().visits.map(({ horseName }) => horseName)).toEqual(["Curlew"]);
    expect((await everything(store)).entries).toEqual((await everything(from.store)).entries);
  });
  it("a photo that was erased, here or there, is not taken in again with an older copy, and goes where a newer tells of it", async () => {
    const from = await written();
    const [gone, stays] = PHOTOS;
    if (!gone || !stays) throw new Error("two photos");
    const subject = await from.begin([citing(gone, "saddle.head")]);
    const older = await copyOf(from.store, NO_PAPERS, new Date(NOW));
    await from.erasePhoto(subject, await from.store.entriesOf(subject), gone);
    const newer = await copyOf(from.store, NO_PAPERS, new Date(NOW));
    expect((await openPack(newer, LIMITS)).paths.filter((path) => path.startsWith("photos/"))).toEqual([
      `photos/${stays.hash}.heic`,
    ]);
    expect(await bring(from, older)).toMatchObject({ ok: true, photos: 1, photosNotBeside: 0 });
    expect(await from.store.photo(gone.hash)).toBeUndefined();

    const to = await empty();
    expect(await bring(to, older)).toMatchObject({ ok: true, photos: 2 });
    expect(await to.store.photo(gone.hash)).toBeDefined();
    expect(await bring(to, newer)).toMatchObject({ ok: true, photos: 1 });
    expect(await to.store.photo(gone.hash)).toBeUndefined();
    expect(await to.store.photo(stays.hash)).toBeDefined();
    expect(await bring(to, older)).toMatchObject({ ok: true, photos: 1 });
    expect(await to.store.photo(gone.hash)).toBeUndefined();
  });
  it("puts photos, read back, before the entries that cite them", async () => {
    const copy = await copyOf((await written()).store, NO_PAPERS, new Date(NOW));
    const order: string[] = [];
    const store = memoryStore();
    const to = await Practice.open(
      {
        ...store,
        async keepPhoto(photo) {
          await store.keepPhoto(photo);
          order.push("photo");
        },
        async keep(batch) {
          order.push("entries");
          await store.keep(batch);
        },
      },
      machine(23),
    );
    await bring(to, copy);
    expect(order).toEqual(["photo", "photo", "entries"]);
  });
});

describe("a copy that is not what was written", () => {
  const photoFile = `photos/${PHOTOS[1]?.hash}.heic`;
  it.each([
    ["a photo of other bytes", photoFile, new Uint8Array(5011), "other bytes than were recorded"],
    ["a photo cut short", photoFile, PHOTOS[1]?.content.slice(1), "other bytes than were recorded"],
    ["a photo made longer", photoFile, new Uint8Array(9999), "more bytes, unpacked, than were told"],
    ["a photo missing", photoFile, undefined, "no such file in the copy"],
    ["no records", "records.jsonl", undefined, "no records.jsonl in it"],
    ["other records", "records.jsonl", new TextEncoder().encode("{}\n"), "nothing"],
  ])("is refused in words with %s, and leaves nothing behind", async (_, path, content, says) => {
    const copy = await copyOf((await written()).store, NO_PAPERS, new Date(NOW));
    const to = await empty();
    const brought = await bring(to, await changed(copy, path, content));
    expect(brought).toMatchObject({ ok: false });
    expect(brought.ok ? "" : brought.read).toContain(says);
    expect(await to.store.count()).toEqual({ entries: 0, photos: 0 });
  });
  it("is refused with an entry that was changed, before a photo is put", async () => {
    const copy = await copyOf((await written()).store, NO_PAPERS, new Date(NOW));
    const pack = await openPack(copy, LIMITS);
    const text = new TextDecoder().decode(await pack.bytesOf("records.jsonl", 1e8));
    expect(readRecords(text.split("\n")).ok).toBe(true);
    const forged = new TextEncoder().encode(text.replace('"value":"2031-04-12"', '"value":"2031-04-13"'));
    const to = await empty();
    expect(await bring(to, await changed(copy, "records.jsonl", forged))).toMatchObject({
      ok: false,
      read: "something else than was recorded",
    });
    expect(await to.store.count()).toEqual({ entries: 0, photos: 0 });
  });
  it("of values that no screen would let in is kept and shown as nothing; a place far into a list is refused", async () => {
    const from = await Practice.open(memoryStore(), machine(29));
    await from.begin([
      { at: "horses[0].name", value: { a: 1 } },
      { at: "visit.place", value: [1] },
      { at: "visit.date", value: 7 },
    ]);
    const to = await empty();
    expect(await bring(to, await copyOf(from.store, NO_PAPERS, new Date(NOW)))).toMatchObject({ ok: true });
    expect(to.shown.get().visits).toMatchObject([{ horseName: "", yard: "", day: "" }]);
    const far = from.pen.state(OTHER, [], [{ at: "horses[999999999].age", value: 7 }], []);
    await from.store.keep({ entries: far.entries });
    const third = await empty();
    expect(await bring(third, await copyOf(from.store, NO_PAPERS, new Date(NOW)))).toMatchObject({
      ok: false,
      read: "the place horses[999999999].age",
    });
    expect(await third.store.count()).toEqual({ entries: 0, photos: 0 });
  });
  it.each([
    ["a ZIP cut short", "PK\u0003\u0004 and no more"],
    ["something else", "%PDF-1.7"],
    ["nothing", ""],
    ["one line without an end", "x".repeat(500_000)],
  ])("is refused in words when it is %s", async (_, text) => {
    const brought = await bring(await empty(), new Blob([text]));
    expect(brought).toMatchObject({ ok: false });
    expect(brought.ok ? "" : brought.allowed).not.toBe("");
  });
});
