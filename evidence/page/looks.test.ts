import AxeBuilder from "@axe-core/playwright";
import { afterAll, beforeAll, expect, test } from "vitest";
import { BENCH, type ServedPage, servePage } from "./served-page.ts";

/* The page in every light and at every width. axe sees about half of what a person with other eyes or hands would. */
let served: ServedPage;
beforeAll(async () => {
  served = await servePage();
});
afterAll(() => served.close());

const LIGHTS = ["light", "dark", "sun"] as const;

async function openAt(width: number) {
  const { page } = await served.open(BENCH, { width, height: 900 });
  await page.waitForSelector(".follows");
  for (const fold of await page.locator("summary").all()) await fold.click();
  return page;
}

test.each([1440, 390])("axe finds no fault at %i px, in light, dark and sun", async (width) => {
  const page = await openAt(width);
  for (const light of LIGHTS) {
    await page.getByLabel("Light").selectOption(light);
    const { violations } = await new AxeBuilder({ page })
      .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
      .analyze();
    expect(
      violations.map(
        ({ id, nodes }) => `${light}, ${id}: ${nodes.map((node) => node.html.slice(0, 120)).join(" | ")}`,
      ),
    ).toEqual([]);
  }
  await page.close();
});

test.each([320, 390, 820, 1440])("nothing runs out of the page at %i px", async (width) => {
  const page = await openAt(width);
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
  ).toBeLessThanOrEqual(0);
  await page.close();
});

test("what can be pressed is at least 48 px high, and letters are at least 16 px", async () => {
  const page = await openAt(390);
  const small = await page.evaluate(() => {
    const pressed = [
      ...document.querySelectorAll<HTMLElement>(
        "button, select, input:not([hidden]), textarea, summary, a.key, a.to-reading",
      ),
    ];
    const low = pressed
      .filter((one) => one.offsetHeight > 0 && one.offsetHeight < 47.5)
      .map((one) => `low: ${one.outerHTML.slice(0, 90)}`);
    const words = [...document.querySelectorAll<HTMLElement>("main *")].filter((one) =>
      [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()),
    );
    const tiny = words.filter(
      (one) => !(one instanceof SVGElement) && Number.parseFloat(getComputedStyle(one).fontSize) < 16,
    );
    return [...low, ...tiny.map((one) => `small: ${one.outerHTML.slice(0, 90)}`)];
  });
  expect(small).toEqual([]);
  await page.close();
});

test("nothing moves where less motion is wanted", async () => {
  const { page } = await served.open();
  await page.emulateMedia({ reducedMotion: "reduce" });
  await page.waitForSelector(".answers[aria-busy=false]");
  expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
  await page.close();
});
