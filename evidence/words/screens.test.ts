import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { phones } from "../visit/phone.ts";
import { answersSaid, hintsSaid, placesSaid } from "./core-says.ts";

/*
 * Every screen of a visit in the made languages and in German, on a phone: no word that is not of the language, read as a reader's
 * voice would (the accessibility tree), and nothing wider than the phone. In the made languages every text of the catalogue is
 * marked, so what stands outside the marks was never in it. What it cannot see: whether a text is the right one.
 */
const { phone } = phones();
const HORSE = "Curlew";
/** Same in every language, what the hand itself typed, and the first signs of a fingerprint. */
const EVERYWHERE = /\b(Treewright|Curlew|mm|cm|kg|lb|in|min|kPa|treewright|npm start|[0-9a-f]{12})\b/g;
const QUESTION_STEPS = 14;
/** Horse comes after the steps, so that it has answers to show. */
const SCREENS = [
  ...Array.from({ length: QUESTION_STEPS + 3 }, (_, step) => `step ${step}`),
  "scale",
  "horse",
  "first",
  "data",
  "help",
];

/** Opens a screen of the visit that lies open, and waits for what is on it. */
async function show(page: Page, visit: string, screen: string): Promise<void> {
  const step = /\d+/.exec(screen)?.[0];
  const horse = () => page.locator('.visit-head a[href^="#/horse/"]').first().getAttribute("href");
  const addresses = {
    first: "#/",
    data: "#/data",
    help: "#/help",
    scale: `${visit}/${QUESTION_STEPS}/scale`,
  };
  const address = new Map(Object.entries(addresses)).get(screen) ?? `${visit}/${step}`;
  await page.evaluate(
    (to) => {
      location.hash = to;
    },
    screen === "horse" ? ((await horse()) ?? "") : address,
  );
  const ready = {
    first: ".begin",
    data: "dialog",
    help: "#problem",
    scale: ".true-size-screen",
    horse: ".last-answers",
    [`step ${QUESTION_STEPS}`]: ".paper-keys",
  }[screen];
  await page.waitForSelector(ready ?? `.steps li:nth-child(${Number(step) + 1}) a[aria-current="step"]`, {
    state: "attached",
  });
}

/** Opens every fold, and takes away what says itself that it is English, people's names, and languages by their own names. */
const unfold = (page: Page): Promise<void> =>
  page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
    for (const english of document.querySelectorAll('body [lang="en"], .person span, .languages option'))
      english.remove();
  });

/** What a reader's voice is given: names and texts of the accessibility tree. */
async function namesOn(page: Page): Promise<readonly string[]> {
  const client = await page.context().newCDPSession(page);
  const { nodes } = await client.send("Accessibility.getFullAXTree");
  await client.detach();
  return nodes
    .filter(
      ({ ignored, role }) => !ignored && role?.value !== "InlineTextBox" && role?.value !== "RootWebArea",
    )
    .map(({ name }) => String(name?.value ?? ""))
    .filter((name) => name !== "");
}

/** What stands outside the marks of a made language; marks may stand within marks. */
function unmarked(name: string, [opens, closes]: readonly [string, string]): string {
  let depth = 0;
  let rest = "";
  for (const sign of name) {
    if (sign === opens) depth += 1;
    if (depth === 0) rest += sign;
    if (sign === closes) depth = Math.max(0, depth - 1);
  }
  return rest;
}

async function inLanguage(tag: string) {
  const { page, hand, faults } = await phone();
  await page.evaluate((chosen) => localStorage.setItem("language", chosen), tag);
  await page.reload();
  await hand.atFirstScreen();
  await hand.beginVisit(HORSE);
  const visit = await page.evaluate(() => location.hash.replace(/\/\d+$/, ""));
  return { page, hand, visit, faults };
}

/** What stands out of a screen that is wider than the phone; nothing where none is. */
const tooWide = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const out = [...document.querySelectorAll("main *")].filter((one) => {
      const { left, right } = one.getBoundingClientRect();
      return right > clientWidth + 1 || left < -1;
    });
    return [
      `${scrollWidth} px`,
      ...out.map((one) => `${one.tagName} ${one.className} ${one.textContent?.slice(0, 40)}`),
    ];
  });

test.each([
  ["x-long", "ltr", ["[", "]"]],
  ["x-rtl", "rtl", ["\u202E", "\u202C"]],
] as const)(
  "%s: every word of every screen is out of the catalogue, and nothing is too wide",
  async (tag, direction, marks) => {
    const { page, visit, faults } = await inLanguage(tag);
    const strange: string[] = [];
    for (const screen of SCREENS) {
      await show(page, visit, screen);
      await unfold(page);
      const names = await namesOn(page);
      expect(names.length, screen).toBeGreaterThan(5);
      expect(await page.evaluate(() => document.documentElement.dir)).toBe(direction);
      for (const name of names) {
        const rest = unmarked(name, marks).replace(EVERYWHERE, "");
        if (/\p{L}/u.test(rest)) strange.push(`${screen}: ${name}`);
      }
      strange.push(...(await tooWide(page)));
      // What was taken away comes back.
      await page.reload();
    }
    expect(strange).toEqual([]);
    expect(faults).toEqual([]);
  },
);

test("German: no title, question, hint or answer of core stands in English, and nothing is too wide", async () => {
  const { page, visit, faults } = await inLanguage("de");
  // A word alone may be the same in both.
  const english = [...placesSaid(), ...hintsSaid(), ...answersSaid()].filter((words) => / .* /.test(words));
  const strange: string[] = [];
  for (const screen of SCREENS) {
    await show(page, visit, screen);
    await unfold(page);
    expect(await page.evaluate(() => document.documentElement.lang)).toBe("de");
    for (const name of await namesOn(page)) {
      const found = english.find((words) => name.toLowerCase().includes(words.toLowerCase()));
      if (found !== undefined) strange.push(`${screen}: ${name}`);
    }
    strange.push(...(await tooWide(page)));
    await page.reload();
  }
  expect(strange).toEqual([]);
  expect(faults).toEqual([]);
});

test.each(["x-long", "x-rtl"])(
  "%s: a worked case fits the phone, its drawing has near on the left, digits stay in their places",
  async (tag) => {
    const { page, hand, visit } = await inLanguage(tag);
    const leftOf = async (what: Locator): Promise<number> => (await what.boundingBox())?.x ?? Number.NaN;
    await show(page, visit, "step 7");
    await page.locator(".questions button").nth(1).click();
    const digit = (sign: string) => page.locator(".number-keys button", { hasText: sign }).first();
    expect(await leftOf(digit("1"))).toBeLessThan(await leftOf(digit("3")));
    // The invented visit that is next has a traced back and a read head.
    await show(page, visit, "first");
    await hand.atFirstScreen();
    const invented = await page
      .locator(".visit-row.next")
      .filter({ hasNotText: HORSE })
      .first()
      .getAttribute("href");
    await page.evaluate(
      (to) => {
        location.hash = to;
      },
      `${invented?.replace(/\/\d+$/, "")}/${QUESTION_STEPS}`,
    );
    const sides = page.locator(".section-figure .side-word");
    await sides.first().waitFor();
    expect(await sides.first().textContent()).toContain(tag === "x-rtl" ? "near" : "ñéár");
    expect(await leftOf(sides.first())).toBeGreaterThanOrEqual(0);
    expect(await leftOf(sides.first())).toBeLessThan(await leftOf(sides.last()));
    // The stations stand under their marks, the head to the left, and the slider opens to the right as its rule does.
    const stations = page.locator(".stations button");
    expect(await leftOf(stations.first())).toBeLessThan(await leftOf(stations.last()));
    expect(
      await page.locator(".rule-and-thumb input").evaluate((one) => getComputedStyle(one).direction),
    ).toBe("ltr");
    expect(await tooWide(page)).toEqual([]);
  },
);

test.each([
  ["en", "Heard: one hundred seventy-four millimetres, spread at the tips, on the face named"],
  ["de", "Gehört: einhundertvierundsiebzig Millimeter, Weite an den Ortspitzen, an der genannten Seite"],
])("%s: what a fitter calls is said back in words", async (tag, words) => {
  const { page, hand, visit } = await inLanguage(tag);
  await show(page, visit, "step 7");
  await page.locator('.questions button[data-at="saddle.head.spreadTips"]').click();
  await page.click(".step-keys button");
  await hand.press("174");
  await hand.enter();
  await page.getByRole("status").filter({ hasText: words }).waitFor();
});

test("a table that cannot be fetched keeps nobody from a visit: core's words stay English", async () => {
  const { page, hand } = await phone();
  await page.context().route(/\/assets\/de-.*\.js$/, (route) => route.abort());
  await page.evaluate(async () => {
    // Without the worker that keeps everything ready, as at a first visit of the page.
    for (const worker of await navigator.serviceWorker.getRegistrations()) await worker.unregister();
    localStorage.setItem("language", "de");
  });
  await page.reload();
  await hand.beginVisit(HORSE);
  expect(await page.locator(".steps a").first().textContent()).toMatch(/^Who and where\d+ von \d+$/);
});
