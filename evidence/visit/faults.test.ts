import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { verify } from "@treewright/core/records/verify.ts";
import { describe, expect, it } from "vitest";
import { FittersHand } from "./hand.ts";
import { phones, SPREAD } from "./phone.ts";

/* What goes wrong in a yard, in Chromium. What this cannot see: a real disk that is full, a battery that dies. */
const { served, atHead, exported } = phones();

describe("a hand that is quicker than the disk", () => {
  it("writes one after the other: no entry misses the one before it", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    await hand.type("174");
    await page.evaluate(() => {
      const form = document.querySelector<HTMLFormElement>(".dock form");
      for (let presses = 0; presses < 5; presses++) form?.requestSubmit();
    });
    await hand.sees(SPREAD, "174 mm");
    const read = readRecords((await exported(page)).split("\n"));
    if (!read.ok) throw new Error("the records are read");
    const twice = read.records.entries.filter(
      ({ body }) => body.at === "saddle.head.spreadTips" && body.value === "174",
    );
    expect(twice.length).toBe(5);
    expect(verify(read.records.entries, GRAPH_KINDS)).toEqual([]);
    await page.context().close();
  });
});

describe("a full device", () => {
  it("refuses the reading, says so, keeps it in its field, and takes it once there is room", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    await hand.type("174");
    await page.waitForFunction(() => document.querySelector<HTMLInputElement>("#taken")?.value === "174");
    // A stand-in: Chromium's own override of its quota changes nothing for a page like this, so the data base is made to refuse.
    await page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      Object.assign(globalThis, { makeRoom: () => Object.assign(IDBObjectStore.prototype, { put }) });
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
    });
    await hand.enter();
    await page.getByText("This device has no room left").waitFor();
    expect(await page.inputValue("#taken")).toBe("174");
    expect(await hand.stands(SPREAD)).toBe("not said");
    await page.evaluate("makeRoom()");
    await hand.enter();
    await hand.sees(SPREAD, "174 mm");
    expect(await page.locator(".saved-here").textContent()).toContain("Saved on this device");
    await page.context().close();
  });
});

describe("a wrong clock", () => {
  it("by a year changes no reading and no order", async () => {
    const { page, hand } = await atHead();
    const address = page.url();
    const type = async (words: string) => {
      await hand.take(SPREAD);
      await hand.type(words);
      await hand.enter();
      await hand.sees(SPREAD, words);
    };
    await type("174");
    await page.clock.setSystemTime(new Date("2020-01-01T00:00:00Z"));
    await type("176");
    await page.goto(served().url);
    await hand.atFirstScreen();
    await page.goto(address);
    await hand.sees(SPREAD, "176 mm");
    await page.getByRole("button", { name: "Undo" }).click();
    await hand.sees(SPREAD, "174 mm");
    await page.context().close();
  });
});

describe("two tabs", () => {
  it("hear each other", async () => {
    const { page, hand } = await atHead();
    const other = await page.context().newPage();
    await other.goto(page.url());
    const there = new FittersHand(other);
    await hand.take(SPREAD);
    await hand.type("174");
    await hand.enter();
    await there.sees(SPREAD, "174 mm");
    // And then they are quiet: each hears the other out once, not for ever.
    const told = await other.evaluate(
      () =>
        new Promise<number>((done) => {
          let count = 0;
          const channel = new BroadcastChannel("treewright-records");
          channel.onmessage = () => {
            count += 1;
          };
          const frame = (left: number) =>
            left === 0 ? done(count) : requestAnimationFrame(() => frame(left - 1));
          frame(30);
        }),
    );
    expect(told).toBeLessThanOrEqual(2);
    await page.context().close();
  });
});

describe("undo", () => {
  it("takes back what a hand said last, not what the app said by itself after", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    await hand.type("174");
    await hand.enter();
    await hand.sees(SPREAD, "174 mm");
    await hand.goTo("What to do");
    await page.locator(".answers[aria-busy=false]").waitFor();
    await hand.goTo("Head and points");
    await page.getByRole("button", { name: "Undo" }).click();
    await hand.sees(SPREAD, "not said");
    await page.context().close();
  });
});
