import { readFileSync, writeFileSync } from "node:fs";
import type { Entry } from "@treewright/core/records/entry.ts";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { FittersHand } from "./hand.ts";
import { copiedOut, phones, SPREAD } from "./phone.ts";

/*
 * Faults of a yard, each with a run in which what protects from it is off: then the same checker has to report the loss. What this
 * cannot see: a battery, a disk that is really full, a browser that clears what it keeps by itself, an iPhone.
 */
const { served, atHead, exported } = phones();
const PLACE = "saddle.head.spreadTips";

/** In a page: by then what was on its way to the screen is there. */
const twoFrames = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));

const entered = async (hand: FittersHand, typed: string, shown: string) => {
  await hand.take(SPREAD);
  await hand.type(typed);
  await hand.enter();
  await hand.sees(SPREAD, shown);
};

describe("the battery dies in the middle of a reading", () => {
  it.each([true, false])("what was typed is there again; protected: %s", async (isProtected) => {
    const { page, hand } = await atHead();
    if (!isProtected) await withoutNotes(page, "typing");
    await hand.take(SPREAD);
    await hand.press("17");
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#taken")?.value === "17");
    const again = await afterDeath(page);
    await again.waitForSelector(".dock");
    if (isProtected)
      await again.waitForFunction(() => document.querySelector<HTMLInputElement>("#taken")?.value === "17");
    else {
      await again.evaluate(twoFrames);
      expect(await again.locator("#taken").count()).toBe(0);
    }
    await again.context().close();
  });
});

describe("two tabs", () => {
  it.each([true, false])("the other one shows what was read here; protected: %s", async (isProtected) => {
    const { page, hand } = await atHead();
    const other = await page.context().newPage();
    if (!isProtected)
      await other.addInitScript(() => {
        BroadcastChannel.prototype.postMessage = () => undefined;
        Object.defineProperty(BroadcastChannel.prototype, "onmessage", { set: () => undefined });
      });
    await other.goto(page.url());
    const there = new FittersHand(other);
    await there.sees(SPREAD, "not said");
    await entered(hand, "174", "174 mm");
    if (isProtected) await there.sees(SPREAD, "174 mm");
    // The other tab has heard nothing by the time it has drawn again, twice.
    else {
      await other.evaluate(twoFrames);
      expect(await there.stands(SPREAD)).toBe("not said");
    }
    // Nothing is lost on the disk either way: only what is shown is old.
    await other.reload();
    await there.sees(SPREAD, "174 mm");
    await page.context().close();
  });
});

describe("a full device", () => {
  it.each([true, false])("a reading that is shown is on the disk; protected: %s", async (isProtected) => {
    const { page, hand } = await atHead();
    // Full: the data base refuses. Unprotected: it only says that it kept the entry.
    await page.evaluate((tells) => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
        if (this.name !== "entries") return put.apply(this, given);
        if (tells) throw new DOMException("no room", "QuotaExceededError");
        return this.count() as unknown as ReturnType<typeof put>;
      };
    }, isProtected);
    await hand.take(SPREAD);
    await hand.type("174");
    await hand.enter();
    if (isProtected) await page.getByText("This device has no room left").waitFor();
    else await hand.sees(SPREAD, "174 mm");
    const shown = await hand.stands(SPREAD);
    const again = await afterDeath(page);
    const there = new FittersHand(again);
    await there.sees(SPREAD, "not said");
    expect(shown === (await there.stands(SPREAD))).toBe(isProtected);
    await again.context().close();
  });
});

describe("the browser clears what it keeps", () => {
  it.each([true, false])("the last copy brings back entry for entry; copied before: %s", async (isCopied) => {
    const { page, hand } = await atHead();
    await entered(hand, "174", "174 mm");
    const before = await exported(page);
    const copy = isCopied ? Buffer.from(await (await copiedOut(page)).arrayBuffer()) : undefined;
    const context = page.context();
    await page.close();
    const cleared = await context.newPage();
    const session = await context.newCDPSession(cleared);
    await session.send("Storage.clearDataForOrigin", {
      origin: new URL(served().url).origin,
      storageTypes: "all",
    });
    await cleared.goto(`${served().url}#/data`);
    await cleared.waitForSelector("button.main");
    if (copy) {
      await cleared.locator("input[accept^='.zip']").setInputFiles({
        name: "copy.zip",
        mimeType: "application/zip",
        buffer: copy,
      });
      await cleared.getByText(/entries were brought in/).waitFor();
    }
    const hashes = (text: string) => new Set(entriesIn(text).map(({ hash }) => hash));
    const after = hashes(await exported(cleared));
    expect([...hashes(before)].every((hash) => after.has(hash))).toBe(isCopied);
    await context.close();
  });
});

describe("read by what was seen, not by the clock", () => {
  it.each([
    ["an hour", "2026-11-30T08:00:00Z", "2026-11-30T07:00:00Z"],
    ["a year", "2026-11-30T08:00:00Z", "2025-11-30T08:00:00Z"],
  ])(
    "a clock put back by %s: the later reading stands; by the clock it would be the earlier",
    async (...given) => {
      const [, then, back] = given;
      const { page, hand } = await atHead();
      await page.clock.setSystemTime(new Date(then));
      await entered(hand, "174", "174 mm");
      await page.clock.setSystemTime(new Date(back));
      await entered(hand, "176", "176 mm");
      const subject = subjectAt(page);
      const entries = ofVisit(await exported(page), subject);
      expect(standing(entries)).toBe("176");
      expect(byClock(entries)).toBe("174");
      await page.context().close();
    },
  );

  it("a cleared value and one taken back: without the entries that say so the value is there again", async () => {
    const { page, hand } = await atHead();
    await entered(hand, "174", "174 mm");
    await page.locator(".questions button", { hasText: SPREAD }).first().click();
    await page.locator(".dock button", { hasText: "Clear" }).click();
    await hand.sees(SPREAD, "not said");
    const subject = subjectAt(page);
    const cleared = ofVisit(await exported(page), subject);
    expect(standing(cleared)).toBeUndefined();
    expect(standing(cleared.filter(({ body }) => body.value !== undefined))).toBe("174");
    await page.goBack();
    await page.waitForSelector(".dock");
    await entered(hand, "176", "176 mm");
    await hand.undo();
    await hand.sees(SPREAD, "not said");
    const taken = ofVisit(await exported(page), subject);
    expect(standing(taken)).toBeUndefined();
    expect(standing(taken.filter(({ kind }) => kind !== "taken-back"))).toBe("176");
    await page.context().close();
  });
});

describe("a new version while a visit is open", () => {
  it.each([true, false])(
    "waits until the first screen, and nothing typed goes; protected: %s",
    async (waits) => {
      const { page, hand } = await atHead();
      await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
      await page.reload();
      await hand.take(SPREAD);
      await hand.press("17");
      await page.evaluate(() => Object.assign(globalThis, { sameVisit: true }));
      const worker = served().file("sw.js");
      const old = readFileSync(worker, "utf8");
      try {
        writeFileSync(worker, `${old}\n// another build\n`);
        await page.evaluate(async () => {
          const registration = await navigator.serviceWorker.getRegistration();
          await registration?.update();
        });
        await page.waitForFunction(
          async () => ((await navigator.serviceWorker.getRegistration())?.waiting ?? null) !== null,
        );
        // Unprotected: it takes over at once, and the page begins anew with it.
        if (!waits) {
          await page.evaluate(async () => {
            const registration = await navigator.serviceWorker.getRegistration();
            registration?.waiting?.postMessage({ type: "SKIP_WAITING" });
          });
          await page.waitForFunction(
            async () => ((await navigator.serviceWorker.getRegistration())?.waiting ?? null) === null,
          );
          await page.reload();
        }
        expect(await page.evaluate(() => "sameVisit" in globalThis)).toBe(waits);
        if (waits) {
          expect(await page.inputValue("#taken")).toBe("17");
          await page.goto(`${served().url}#/`);
          const take = page.getByRole("button", { name: /A new version is ready/ });
          await Promise.all([page.waitForEvent("load"), take.click()]);
          await hand.atFirstScreen();
          await page.goBack();
          await page.waitForSelector(".dock");
          await page.waitForFunction(
            () => document.querySelector<HTMLInputElement>("#taken")?.value === "17",
          );
        }
      } finally {
        writeFileSync(worker, old);
      }
      await page.context().close();
    },
  );
});

describe("records of a newer version", () => {
  it.each([true, false])("are left as they are, and said; protected: %s", async (isProtected) => {
    const { page, hand } = await atHead();
    await entered(hand, "174", "174 mm");
    await page.goto(`${served().url}mark.svg`);
    const count = () =>
      page.evaluate(
        () =>
          new Promise<number>((done) => {
            const open = indexedDB.open("treewright");
            open.onsuccess = () => {
              const { result } = open;
              if (!result.objectStoreNames.contains("entries")) return done(0);
              const all = result.transaction("entries").objectStore("entries").count();
              all.onsuccess = () => {
                result.close();
                done(all.result);
              };
            };
          }),
      );
    const before = await count();
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          const open = indexedDB.open("treewright", 990);
          open.onsuccess = () => {
            open.result.close();
            done();
          };
        }),
    );
    // Unprotected: what cannot be read is begun anew.
    if (!isProtected)
      await page.evaluate(
        () =>
          new Promise<void>((done) => {
            indexedDB.deleteDatabase("treewright").onsuccess = () => done();
          }),
      );
    await page.goto(served().url);
    if (isProtected) await page.getByText("A newer Treewright wrote these records").waitFor();
    else await hand.atFirstScreen();
    await page.goto(`${served().url}mark.svg`);
    expect((await count()) === before).toBe(isProtected);
    await page.context().close();
  });
});

/** The page is gone without a word, and another is opened at the same place. */
async function afterDeath(page: Page): Promise<Page> {
  const address = page.url();
  const again = await page.context().newPage();
  await page.close({ runBeforeUnload: false });
  await again.goto(address);
  return again;
}

/** Notes of this name no longer come to the disk. */
const withoutNotes = (page: Page, name: string) =>
  page.evaluate((begins) => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
      if (this.name === "notes" && String(given[0].name).startsWith(begins))
        given[0] = { ...given[0], value: "" };
      return put.apply(this, given);
    };
  }, name);

type Said = Entry & { readonly body: { readonly at?: string; readonly value?: unknown } };

function entriesIn(text: string): readonly Said[] {
  const read = readRecords(text.split("\n"));
  if (!read.ok) throw new Error("the records are read");
  return read.records.entries as readonly Said[];
}

/** Entries of one visit. */
const ofVisit = (text: string, subject: string): readonly Said[] =>
  entriesIn(text).filter((one) => one.subject === subject);
const subjectAt = (page: Page): string => /visit\/([0-9a-f-]{36})/.exec(page.url())?.[1] ?? "";

const standing = (entries: readonly Said[]): unknown =>
  standingOf(entries, GRAPH_KINDS).get(PLACE)?.entries[0]?.value;

/** What would stand if the clock said which came last. */
const byClock = (entries: readonly Said[]): unknown =>
  entries
    .filter(({ body }) => body.at === PLACE)
    .sort((a, b) => (a.saidAt < b.saidAt ? -1 : 1))
    .at(-1)?.body.value;
