import { readFile } from "node:fs/promises";
import { memoryStore } from "@treewright/store/memory.ts";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { ACTIONS_MOST, Actions } from "../../apps/web/src/help/actions.ts";
import { browserKind } from "../../apps/web/src/help/device.ts";
import { phones } from "./phone.ts";

/*
 * What a problem file tells and what it never tells. What this cannot see: a place that a later field's name gives away by itself.
 */
const { served, phone, exported } = phones();

/** Path, and what is typed there: each a text found nowhere else. Readings are told by a figure nobody would write by chance. */
const TYPED = [
  ["visit.place", "Quorfleyard"],
  ["visit.owner", "Ottoline Quarrender"],
  ["visit.asked", "canaryasked slips left"],
  ["practice.name", "Zwickelbarn Saddles"],
  ["practice.address", "Canarylane 4471"],
  ["practice.telephone", "00990 447193"],
  ["practice.mail", "pell@zwickelbarn.example"],
  ["worker.name", "Ignatia Vosper"],
  ["horses[0].name", "Canaryhorse"],
  ["horses[0].about", "roan cob canaryabout"],
  ["saddle.name", "Canarysaddle"],
  ["saddle.maker", "Brindlewick & Daughter"],
  ["saddle.model", "Modelcanary"],
  ["saddle.standing.serial", "SN-77x31q"],
  ["horses[0].mass", "487.61"],
  ["horses[0].body.girth", "1873.4"],
  ["horses[0].body.length", "1612.7"],
] as const;
const REFUSED = ["horses[0].body.neck", "seventeen canaryhands"] as const;
const NOT_ENTERED = ["horses[0].body.height", "1477.77"] as const;
const AGREED = "canaryagreed bolted stays";

async function take(page: Page, path: string): Promise<void> {
  await page.locator(`.questions button[data-at="${path}"]`).click();
  await page.waitForSelector(`.dock[data-at="${path}"]`);
}

async function made(page: Page): Promise<string> {
  await page.goto(`${served().url}#/help`);
  await page.getByRole("button", { name: "Make a problem file" }).click();
  return (await page.locator(".whole-file").textContent()) ?? "";
}

describe("a problem file", () => {
  it("holds none of twenty-two texts typed into names, words, owner, yard and readings, and nobody's id", async () => {
    const { page, hand } = await phone();
    await hand.beginVisit("Firsthorsecanary");
    for (const [path, typed] of TYPED) {
      await take(page, path);
      await hand.type(typed);
      await page.keyboard.press("Enter");
      await page.waitForSelector(`.questions button[data-at="${path}"][data-said="yes"]`);
    }
    await take(page, REFUSED[0]);
    await hand.type(REFUSED[1]);
    await page.keyboard.press("Enter");
    await page.locator(".dock .problem").waitFor();
    await take(page, NOT_ENTERED[0]);
    await hand.type(NOT_ENTERED[1]);
    await hand.goTo("Agreed");
    await page.locator("textarea").nth(2).fill(AGREED);
    await page.locator("textarea").nth(2).blur();
    // A fault whose words tell a value: its kind is told, its words are not.
    await page.evaluate(() => {
      setTimeout(() => {
        throw new RangeError("canaryfault 173.25");
      });
    });
    const records = await exported(page);
    const text = await made(page);

    const canaries = [...TYPED.map(([, typed]) => typed), REFUSED[1], NOT_ENTERED[1], AGREED];
    const words = [...canaries, "canaryfault", "Firsthorsecanary"];
    expect(words.length).toBe(22);
    for (const canary of words) {
      expect(text).not.toContain(canary);
      for (const part of canary.split(" ").filter((one) => one.length > 4)) expect(text).not.toContain(part);
    }
    // That the texts were there to be found: all but what was refused, never entered, or thrown.
    for (const [, typed] of TYPED) expect(records).toContain(typed);
    const ids = new Set(records.match(/[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f-]+|[0-9a-f]{64}/g));
    expect(ids.size).toBeGreaterThan(1000);
    for (const id of ids) expect(text).not.toContain(id);
    expect(text).not.toMatch(/\d\d:\d\d|[0-9a-f]{12}/);

    const { actions, counts, browser, app } = JSON.parse(text);
    const did = actions.map((one: { did: string; place: string }) => `${one.did} ${one.place}`);
    for (const [path] of TYPED) expect(did).toContain(`entered ${path}`);
    expect(did).toContain(`refused ${REFUSED[0]}`);
    expect(did).toContain("entered agreed.worseCase");
    expect(did.some((one: string) => one.startsWith("fault RangeError"))).toBe(true);
    expect(did.at(-1)).toBe("went to help screen");
    expect([counts.visits, counts.unfinished]).toEqual([26, 2]);
    expect(browser.family).toBe("Chromium");
    expect(app.script).toMatch(/\.js$/);
    await page.context().close();
  });

  it("that is saved is what was shown, sign for sign", async () => {
    const { page } = await phone();
    const shown = await made(page);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save this file" }).click(),
    ]);
    expect(await readFile(await download.path(), "utf8")).toBe(shown);
    expect(download.suggestedFilename()).toMatch(/^treewright-problem-\d{4}-\d\d-\d\d\.json$/);
    await page.context().close();
  });

  it("still tells what was done before the page was closed in the middle", async () => {
    const { page, hand } = await phone();
    await hand.beginVisit("Curlew");
    await hand.type("Quorfleyard");
    await take(page, "visit.place");
    await hand.type("Quorfleyard");
    await hand.enter();
    await page.waitForSelector('.questions button[data-at="visit.place"][data-said="yes"]');
    const again = await page.context().newPage();
    await page.close({ runBeforeUnload: false });
    const { actions } = JSON.parse(await made(again));
    expect(actions.map(({ place }: { place: string }) => place)).toContain("visit.place");
    await again.context().close();
  });
});

describe("the list of actions", () => {
  const machine = { now: () => 60_000 * 1000, chance: () => new Uint8Array(), zone: "UTC" };
  it("holds two hundred, and forgets the oldest", async () => {
    const actions = await Actions.open(memoryStore(), machine);
    for (let at = 0; at <= ACTIONS_MOST; at++) actions.add("went to", `step ${at % 90}`);
    expect(actions.list()).toHaveLength(ACTIONS_MOST);
    expect(actions.list()[0]?.place).toBe("step 1");
  });
  it("takes nothing for a place that is none, nor out of a note that was meddled with", async () => {
    const store = memoryStore();
    const noted = [
      { did: "entered", place: "saddle.head.spreadTips", minute: 7 },
      { did: "entered", place: "Ottoline Quarrender", minute: 7 },
      { did: "entered", place: "horses[447193].name", minute: 7 },
      { did: "Quarrender", place: "visit", minute: 7 },
      { did: "fault", place: "TypeError: Quarrender", minute: 7 },
      "Quarrender",
    ];
    await store.note("last-actions", JSON.stringify(noted));
    const actions = await Actions.open(store, machine);
    actions.add("fault", "Quarrender at index-x.js:1:2");
    expect(actions.list().map(({ place }) => place)).toEqual([
      "saddle.head.spreadTips",
      "elsewhere",
      "elsewhere",
      "elsewhere",
      "elsewhere",
    ]);
    expect(JSON.stringify(actions.list())).not.toMatch(/Quarrender|447193/);
  });
});

describe("the kind of browser", () => {
  // Agent strings as browsers write them (from memory).
  it.each([
    [
      "Mozilla/5.0 (Linux; Android 14; Pixel 8) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/131.0.6778.39 Mobile Safari/537.36",
      "Chromium 131 Android",
    ],
    [
      "Mozilla/5.0 (iPhone; CPU iPhone OS 17_5 like Mac OS X) AppleWebKit/605.1.15 (KHTML, like Gecko) Version/17.5 Mobile/15E148 Safari/604.1",
      "Safari 17 iPhone or iPad",
    ],
    ["Mozilla/5.0 (X11; Linux x86_64; rv:133.0) Gecko/20100101 Firefox/133.0", "Firefox 133 Linux"],
    ["Quarrender's own", "another 0 another"],
  ])("is told without its model: %s", (agent, told) => {
    const { family, number, system } = browserKind(agent);
    expect(`${family} ${number} ${system}`).toBe(told);
  });
});
