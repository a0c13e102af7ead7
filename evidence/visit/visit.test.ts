import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { verify } from "@treewright/core/records/verify.ts";
import { ORDER_OF_WORK } from "@treewright/core/survey/order-of-work.ts";
import { describe, expect, it } from "vitest";
import { folderWith } from "../cli/run-treewright.ts";
import { FittersHand } from "./hand.ts";
import { phones, SPREAD } from "./phone.ts";

/*
 * A visit on one phone, in Chromium, as a fitter goes through it. What this cannot see: a phone, a thumb, cold, an engine of another
 * family, a battery that dies (a page that is closed has had its transactions synced by the machine or not at all).
 */
const { served, phone, atHead, exported } = phones();

/** A question with a side in it, and its step, found without words of any language. */
const HOLLOW_NEAR = "horses[0].standing.hollowNear";
const STOOD_UP = ORDER_OF_WORK.findIndex(({ title }) => title === "Horse stood up");

describe("the first screen", () => {
  it("shows the invented practice, what is unfinished first, and that nothing is copied yet", async () => {
    const { page, faults } = await phone();
    expect(await page.locator(".visit-row.next").count()).toBe(1);
    expect(await page.locator(".visit-list .visit-row").count()).toBe(24);
    expect(await page.locator(".saved-here").textContent()).toContain("25 visits are not yet copied");
    await page.fill("input[type=search]", "avoc");
    expect(await page.locator(".visit-list .visit-row").count()).toBe(1);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe("a reading", () => {
  it("is typed with big keys, kept, and there after the page was closed", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    await hand.press("174");
    await hand.enter();
    await hand.sees(SPREAD, "174 mm");
    const address = page.url();
    await page.close({ runBeforeUnload: false });
    const again = await page.context().newPage();
    await again.goto(address);
    await new FittersHand(again).sees(SPREAD, "174 mm");
    await again.context().close();
  });
  it("stays in the unit it was typed in; one that cannot be is refused and nothing is kept", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    await hand.type("6 7/8 in");
    await hand.enter();
    await hand.sees(SPREAD, "6 7/8 in");
    await hand.take(SPREAD);
    await hand.type("17");
    await hand.enter();
    expect(await page.locator(".dock .problem").textContent()).toMatch(/Read "17".*Allowed: .*mm/);
    expect(await hand.stands(SPREAD)).toBe("6 7/8 in");
    await page.context().close();
  });
  it("is taken back by undo, and a cleared one is empty; both stay recorded", async () => {
    const { page, hand } = await atHead();
    for (const spread of ["174", "176"]) {
      await hand.take(SPREAD);
      await hand.type(spread);
      await hand.enter();
      await hand.sees(SPREAD, spread);
    }
    await page.getByRole("button", { name: "Undo" }).click();
    await hand.sees(SPREAD, "174 mm");
    await hand.take(SPREAD);
    await page.getByRole("button", { name: "Clear" }).click();
    await hand.sees(SPREAD, "not said");
    const text = await exported(page);
    expect(text).toContain('"value":"176"');
    expect(text).toContain('"why":"undo"');
    await page.context().close();
  });
  it("that was typed and not entered is still in its field after the page was closed", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    await hand.press("17");
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#taken")?.value === "17");
    const address = page.url();
    const again = await page.context().newPage();
    await page.close({ runBeforeUnload: false });
    await again.goto(address);
    await again.waitForFunction(() => document.querySelector<HTMLInputElement>("#taken")?.value === "17");
    await again.context().close();
  });
});

describe("the next visit of a horse", () => {
  it("brings over what hardly changes, shows what was read last time, and reads it anew", async () => {
    const { page, hand } = await phone();
    await page.locator(".visit-list .visit-row", { hasText: "Avocet" }).click();
    await page.getByRole("button", { name: "Begin the next visit of this horse" }).click();
    await page.waitForFunction(() => document.querySelector(".saved-here + p") === null);
    expect(await page.locator(".visit-head h1").textContent()).toContain("Avocet");
    await hand.goTo("Head and points");
    expect(await hand.stands(SPREAD)).toBe("not said");
    await hand.take(SPREAD);
    expect(await page.locator(".dock").textContent()).toMatch(/Last time: \d+ mm/);
    await hand.goTo("What's been going on");
    // What may have happened since is asked anew: an old "no" would pass for a new one.
    expect(await hand.stands("rolled on")).toBe("not said");
    await hand.goTo("Tracings");
    await page.waitForSelector(".trace-before");
    await page.context().close();
  });
});

describe("what is copied out", () => {
  it("is whole, and enters an empty store entry for entry", async () => {
    const { page, hand } = await phone();
    await hand.beginVisit("Curlew");
    await hand.goTo("Who and where");
    await hand.take("Legal owner of the saddle");
    await hand.type("Ottoline Quarrender");
    await hand.enter();
    await hand.sees("Legal owner of the saddle", "Ottoline Quarrender");
    const text = await exported(page);
    const lines = text.split("\n");
    const read = readRecords(lines);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals[0]));
    expect(verify(read.records.entries, GRAPH_KINDS)).toEqual([]);
    expect(read.records.people.map(({ value }) => value)).toContain("Ottoline Quarrender");
    expect(JSON.stringify(read.records.entries).match(/.{0,60}Quarrender/)).toBeNull();

    const empty = await phone();
    const file = join(folderWith({}), "records.jsonl");
    await writeFile(file, text);
    await empty.page.goto(`${served().url}#/data`);
    const forged = join(
      folderWith({ "x.jsonl": text.replace('"value":"Curlew"', '"value":"Corncrake"') }),
      "x.jsonl",
    );
    await empty.page.setInputFiles("input[type=file]", forged);
    await empty.page.getByText("something else than was recorded").waitFor();
    const before = await empty.page.getByText("entries,").textContent();
    await empty.page.setInputFiles("input[type=file]", file);
    await empty.page.getByText("entries were brought in").waitFor();
    expect(await empty.page.getByText("entries,").textContent()).not.toBe(before);
    const back = readRecords((await exported(empty.page)).split("\n"));
    if (!back.ok) throw new Error("what was brought in is written out again");
    const hashes = new Set(back.records.entries.map(({ hash }) => hash));
    expect(read.records.entries.filter(({ hash }) => !hashes.has(hash))).toEqual([]);
    await empty.page.goto(`${served().url}#/`);
    await empty.page.fill("input[type=search]", "curl");
    await empty.page.locator(".visit-row", { hasText: "Curlew" }).first().waitFor();
    await page.context().close();
    await empty.page.context().close();
  });
});

describe("a person who was erased", () => {
  it("is in nothing that is left: not in the store, not in what is copied out, not on a screen", async () => {
    const { page, hand } = await phone();
    await hand.beginVisit("Curlew");
    await hand.goTo("Who and where");
    const OWNER = "Legal owner of the saddle";
    await hand.take(OWNER);
    await hand.type("Ottoline Quarrender");
    await hand.enter();
    await hand.sees(OWNER, "Ottoline Quarrender");
    const address = page.url();
    const older = await exported(page);
    expect(older).toContain("Quarrender");
    await page.getByRole("button", { name: "Erase Ottoline Quarrender" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Erase for good" }).click();
    await page.getByText("Erased. What was recorded stays").waitFor();
    // A copy from before, brought in again, does not bring the name back.
    const file = join(folderWith({ "older.jsonl": older }), "older.jsonl");
    await page.setInputFiles("input[type=file]", file);
    await page.getByText("entries were brought in").waitFor();
    const text = await exported(page);
    expect(text).not.toContain("Quarrender");
    const read = readRecords(text.split("\n"));
    if (!read.ok) throw new Error("what is left is read");
    expect(verify(read.records.entries, GRAPH_KINDS)).toEqual([]);
    const kept = await page.evaluate(async () => {
      const texts: string[] = [JSON.stringify({ ...localStorage })];
      for (const { name } of await indexedDB.databases()) {
        const base = await new Promise<IDBDatabase>((done) => {
          const opening = indexedDB.open(name ?? "");
          opening.onsuccess = () => done(opening.result);
        });
        for (const table of base.objectStoreNames) {
          const all = await new Promise<unknown>((done) => {
            const asking = base.transaction(table).objectStore(table).getAll();
            asking.onsuccess = () => done(asking.result);
          });
          texts.push(JSON.stringify(all));
        }
        base.close();
      }
      return texts.join("");
    });
    expect(kept.length).toBeGreaterThan(100_000);
    expect(kept).not.toContain("Quarrender");
    await page.goto(address);
    await hand.sees(OWNER, "erased");
    expect(await page.content()).not.toContain("Quarrender");
    await page.context().close();
  });
});

describe("every screen of a visit", () => {
  it("has no barrier, nothing beside its edge, and asks its own origin alone", async () => {
    const { page, hand, asked, faults } = await phone();
    const check = async (name: string) => {
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${name}: ${id}: ${nodes[0]?.html}`)).toEqual([]);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, name).toBeLessThanOrEqual(0);
    };
    await check("first");
    await hand.beginVisit("Curlew");
    const steps = await page.locator(".steps a").count();
    const address = page.url().replace(/\/\d+$/, "");
    for (let step = 0; step < steps; step++) {
      await page.goto(`${address}/${step}`);
      await page.waitForSelector(".steps a[aria-current]");
      await check(`step ${step}`);
    }
    await page.goto(`${served().url}#/data`);
    await page.waitForSelector(".tick");
    await check("data");
    for (const url of asked) expect(url.startsWith(served().url)).toBe(true);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

describe("languages", () => {
  it("are the same screens in German, in a language a third longer, and from right to left", async () => {
    for (const [tag, begin, near] of [
      ["de", "Besuch beginnen", "links"],
      ["x-long", "[Bégíñ á vísít~~~~]", "ñéár"],
      ["x-rtl", "\u202EBegin a visit\u202C", "near"],
    ] as const) {
      const { page, hand } = await phone();
      await page.selectOption(".languages", tag);
      await page.locator(".begin button", { hasText: begin }).waitFor();
      const sideways = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(await sideways(), tag).toBeLessThanOrEqual(0);
      await hand.beginVisit("Curlew");
      expect(await sideways(), tag).toBeLessThanOrEqual(0);
      // The question asks for the side by its word in the language.
      await page.locator(".steps a").nth(STOOD_UP).click();
      await page.locator(`.questions button[data-at="${HOLLOW_NEAR}"]`).click();
      await page.locator(".dock strong", { hasText: near }).waitFor();
      const box = await page.locator(".dock").boundingBox();
      expect(box?.x).toBeGreaterThanOrEqual(0);
      await page.context().close();
    }
  });
});

describe("without signal", () => {
  // Last: the server is taken away.
  it("starts cold, takes a visit, works it out and finishes it", async () => {
    const { page, hand } = await phone();
    await page.getByText("Ready without signal").waitFor();
    await served().down();
    const address = page.url();
    const cold = await page.context().newPage();
    await page.close();
    await cold.goto(address);
    const there = new FittersHand(cold);
    await there.atFirstScreen();
    await there.beginVisit("Whimbrel");
    await there.goTo("Trotted up");
    await there.take("Uneven");
    await cold.locator(".choices button", { hasText: "yes" }).first().click();
    await there.goTo("What to do");
    await cold.locator(".answers[aria-busy=false]").waitFor();
    expect(await cold.locator("#answers").textContent()).toMatch(/vet/i);
    await there.goTo("Hand-over");
    await cold.getByRole("button", { name: "Finish the visit" }).click();
    await there.atFirstScreen();
    const row = cold.locator(".visit-list .visit-row", { hasText: "Whimbrel" });
    expect(await row.textContent()).toContain("see the vet first");
    expect(hand.page.isClosed()).toBe(true);
    await cold.goto(new URL("/#/help", address).href);
    await cold.getByText("Look at the notices").click();
    expect(await cold.textContent("body")).toContain("SIL OPEN FONT LICENSE");
    await cold.context().close();
  });
});
