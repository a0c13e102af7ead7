import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { focusOf, tabTo } from "./focus.ts";
import { phones } from "./phone.ts";

/*
 * A visit with the keyboard alone: no pointer, no press of a place on the screen, no focus given by the test. WCAG 2.2: 2.1.1, 2.1.2,
 * 2.4.3, 2.4.7, 2.4.11. What this cannot see: a screen reader's own keys, a switch, whether a person finds the way short.
 */
const { served } = phones();

const SIZES = [
  { width: 390, height: 844 },
  { width: 1440, height: 900 },
  { width: 320, height: 256 },
];

/** Keys, and what must hold after each: something has the focus, it is seen, and a line is drawn round it. */
function keyboard(page: Page) {
  const lost: string[] = [];
  const look = (after: string) => (focus: Awaited<ReturnType<typeof focusOf>>) => {
    if (focus.on === "" || !focus.isSeen || focus.linePx < 2)
      lost.push(`after ${after}: ${JSON.stringify(focus)}`);
  };
  return {
    lost,
    press: async (key: string) => {
      await page.keyboard.press(key);
    },
    look: async (after: string) => look(after)(await focusOf(page)),
    to: (css: string, words = "") => tabTo(page, css, words, look(`Tab on the way to ${css} ${words}`)),
  };
}

const isInWindow = (one: Element): boolean => {
  const { top, bottom } = one.getBoundingClientRect();
  return top >= 0 && bottom <= innerHeight;
};

const atPath = (page: Page, path: string) => page.waitForSelector(`.dock[data-at="${path}"]`);

test.each(SIZES)("begins, fills several steps and finishes a visit at $width × $height", async (size) => {
  const { page, faults } = await served().open("", size);
  await page.waitForSelector(".begin");
  const keys = keyboard(page);
  await keys.to(".begin input");
  await page.keyboard.type("Turnstone");
  await keys.press("Enter");

  // Words: Enter keeps one and goes on to the next.
  await atPath(page, "visit.place");
  await keys.look("a visit was begun");
  await page.keyboard.type("Low Marsh");
  await keys.press("Enter");
  await atPath(page, "visit.owner");
  await keys.look("words were entered");
  for (const next of ["visit.asked", "visit.groundSlope"]) {
    await keys.press("Enter");
    await atPath(page, next);
    await keys.look(`going on to ${next}`);
  }
  // A reading that is refused keeps the focus in its field; then one that is taken.
  await page.keyboard.type("900");
  await keys.press("Enter");
  await page.locator(".dock .problem").waitFor();
  await keys.look("a reading was refused");
  for (let at = 0; at < 3; at++) await keys.press("Backspace");
  await page.keyboard.type("1.5");
  await keys.press("Enter");
  // A choice: its first key has the focus, Tab goes along, Enter chooses.
  await atPath(page, "visit.diseaseInYard");
  await keys.look("a choice was come to");
  await keys.to(".choices button", "unknown");
  if (size.height > 480)
    expect(await page.locator(".questions button[aria-current]").evaluate(isInWindow), "its row").toBe(true);
  await keys.press("Enter");
  await atPath(page, "practice.name");
  await keys.look("a choice was made");

  // Back to what was said by its row, and cleared: the key that was pressed is gone then.
  await keys.to(".steps a", "Who and where");
  await keys.to('.questions button[data-at="visit.place"]');
  await keys.press("Enter");
  await atPath(page, "visit.place");
  await keys.look("a row was taken");
  await keys.to(".dock .small");
  await keys.press("Enter");
  await page.waitForSelector('.questions button[data-at="visit.place"][data-said="no"]');
  await keys.look("a place was cleared");

  // Another step, by the number keys themselves; then call-out, its end, and undo.
  await keys.to(".steps a", "Head and points");
  await keys.press("Enter");
  await page.waitForSelector('.steps a[aria-current]:has-text("Head and points")');
  await keys.look("a step was entered");
  await keys.to('.questions button[data-at="saddle.head.spreadTips"]');
  await keys.press("Enter");
  await atPath(page, "saddle.head.spreadTips");
  for (const sign of ["1", "7", "4"]) {
    await keys.to(".number-keys button", sign);
    await keys.press("Enter");
    await keys.look(`key ${sign}`);
  }
  await keys.to(".enter");
  await keys.press("Enter");
  await page.waitForSelector('.questions button[data-at="saddle.head.spreadTips"][data-said="yes"]');
  await keys.look("a reading was entered by its key");
  for (const words of ["Call-out", "End the call-out"]) {
    await keys.to(".step-keys button", words);
    await keys.press("Space");
    await keys.look(words);
  }
  await keys.to(".step-keys button", "Undo");
  await keys.press("Enter");
  await page.waitForSelector('.questions button[data-at="saddle.head.spreadTips"][data-said="no"]');
  await keys.look("undo");

  await keys.to(".steps a", "Agreed");
  await keys.press("Enter");
  await page.waitForSelector(".end-step");
  await keys.look("the agreed step was entered");
  await keys.to(".end-step textarea");
  await page.keyboard.type("Nothing is pressed today");
  await keys.to(".steps a", "Hand-over");
  await keys.press("Enter");
  await page.waitForSelector(".end-step .main");
  await keys.to(".end-step .main");
  await keys.press("Enter");
  await page.waitForSelector(".begin");
  await keys.look("the visit was finished");
  await page.locator(".visit-list .visit-row", { hasText: "Turnstone" }).waitFor();
  expect(keys.lost).toEqual([]);
  expect(faults).toEqual([]);
  await page.context().close();
});

test.each([
  ["your data", "Your data"],
  ["help", "Help"],
])("%s is come to and left by the keyboard", async (_, words) => {
  const { page } = await served().open("", SIZES[0]);
  await page.waitForSelector(".begin");
  const keys = keyboard(page);
  await keys.to(".app-links a", words);
  await keys.press("Enter");
  await page.locator("h1", { hasText: words }).waitFor();
  await keys.look(`${words} was come to`);
  if (words === "Help") {
    await keys.to("button", "Make a problem file");
    await keys.press("Enter");
    await page.waitForSelector(".whole-file");
    await keys.look("the file was made");
    await keys.to("button", "Save this file");
  } else {
    // A name is asked about twice; the dialogue takes the focus and gives it back.
    await keys.to(".person button");
    await keys.press("Enter");
    await keys.look("the dialogue opened");
    await keys.press("Escape");
    await keys.look("the dialogue was left");
  }
  await page.keyboard.press("Shift+Tab");
  await keys.to("a", "All visits").catch(() => undefined);
  expect(keys.lost).toEqual([]);
  await page.context().close();
});
