import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { phones, SPREAD } from "./phone.ts";

/*
 * Screens as they are for people who enlarge them, force their colours, ask for less motion, or hear them. Published: WCAG 2.2 (W3C,
 * 2023), by its numbers. What this cannot see: what a person hears from a real screen reader, and barriers that no rule of axe-core
 * looks for; by its makers' word such rules find about half.
 */
const { served, phone, atHead } = phones();

/** Level A and AA of WCAG 2.0 to 2.2, and what axe-core takes for good practice. 2.2 has rules that are off unless asked for. */
const LEVELS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

async function barriers(page: Page, name: string): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(LEVELS).analyze();
  const found: string[] = [];
  for (const { id, impact, nodes } of violations)
    for (const { html, target } of nodes)
      if (id !== "target-size" || !(await liesBeneathDock(page, String(target[0]))))
        found.push(`${name}: ${id} (${impact}): ${html}`);
  return found;
}

/**
 * A row that lies beneath the dock in part, as the page happens to be scrolled: axe-core measures what is in sight of it, WCAG 2.5.8 the
 * target. It is scrolled clear of the dock when it takes the focus (`keyboard.test.ts`).
 */
const liesBeneathDock = (page: Page, css: string): Promise<boolean> =>
  page.evaluate((selector) => {
    const row = document.querySelector(selector)?.closest(".questions button")?.getBoundingClientRect();
    const dock = document.querySelector(".dock")?.getBoundingClientRect();
    return row !== undefined && dock !== undefined && row.top < dock.bottom && row.bottom > dock.top;
  }, css);

/** One step of each kind: words, choices, points, the answers, agreed, hand-over. */
const OF_EACH_KIND = [0, 3, 5, 14, 15, 16];

/** Every screen in turn: each step of a visit or some of them, call-out, data, help with a problem file made, and the first. */
async function everyScreen(
  page: Page,
  look: (name: string) => Promise<void>,
  some?: readonly number[],
): Promise<void> {
  const steps = await page.locator(".steps a").count();
  const visit = page.url().replace(/\/\d+$/, "");
  for (const step of some ?? Array.from({ length: steps }, (_, at) => at)) {
    await page.goto(`${visit}/${step}`);
    await page.waitForSelector(`.steps li:nth-child(${step + 1}) a[aria-current]`);
    await look(`step ${step}`);
  }
  await page.goto(`${visit}/7`);
  await page.getByRole("button", { name: "Call-out" }).click();
  await page.waitForSelector(".aloud");
  await look("call-out");
  await page.goto(`${served().url}#/data`);
  await page.waitForSelector(".person");
  await look("data");
  await page.goto(`${served().url}#/help`);
  await page.getByRole("button", { name: "Make a problem file" }).click();
  await page.waitForSelector(".whole-file");
  await look("help");
  await page.goto(`${served().url}#/`);
  await page.waitForSelector(".begin");
  await look("first");
}

describe("axe-core", () => {
  it.each([
    ["light", undefined],
    ["dark", OF_EACH_KIND],
    ["sun", OF_EACH_KIND],
  ])("finds no barrier on any screen, looked at %s", async (light, some) => {
    const { page, hand } = await phone();
    await page.locator(".looks", { hasText: "Light" }).locator("select").selectOption(light);
    await hand.beginVisit("Curlew");
    const found: string[] = [];
    await everyScreen(page, async (name) => void found.push(...(await barriers(page, name))), some);
    expect(found).toEqual([]);
    await page.context().close();
  });
});

describe("on paper", () => {
  it.each(["dark", "sun"])("words are dark on light, whatever the screen is: %s", async (light) => {
    const { page } = await phone();
    await page.locator(".looks", { hasText: "Light" }).locator("select").selectOption(light);
    const lightness = () =>
      page.evaluate(() => {
        const { color, backgroundColor } = getComputedStyle(document.documentElement);
        return [color, backgroundColor].map((one) => Math.max(...(one.match(/\d+/g) ?? []).map(Number)));
      });
    const [ink = 0, ground = 255] = await lightness();
    // The control: on the screen itself dark is light on dark.
    expect(ink > ground).toBe(light === "dark");
    await page.emulateMedia({ media: "print" });
    const [printed = 255, paper = 0] = await lightness();
    expect(printed).toBeLessThan(60);
    expect(paper).toBeGreaterThan(240);
    await page.context().close();
  });
});

describe("320 px wide, as 1280 px enlarged to 400 % (1.4.10)", () => {
  it("nothing is moved sideways but the row of steps, drawings and tables", async () => {
    const { page } = await served().open("", { width: 320, height: 256 });
    await page.fill(".begin input", "Curlew");
    await page.click(".begin button");
    await page.waitForSelector(".dock");
    const wide: string[] = [];
    await everyScreen(page, async (name) => {
      const found = await page.evaluate(() => {
        const over = document.documentElement.scrollWidth - innerWidth;
        const free = (one: Element) => one.closest("svg, table, .steps, .only-heard, .sideways") !== null;
        const out = [...document.querySelectorAll("body *")].filter((one) => {
          const box = one.getBoundingClientRect();
          return !free(one) && box.width > 0 && (box.right > innerWidth + 1 || box.left < -1);
        });
        return [
          ...(over > 0 ? [`the page is ${over} px too wide`] : []),
          ...out.slice(0, 4).map((one) => one.outerHTML.slice(0, 120)),
        ];
      });
      wide.push(...found.map((one) => `${name}: ${one}`));
    });
    expect(wide).toEqual([]);
    await page.context().close();
  });
});

describe("forced colours", () => {
  it("every key has a border that is seen, and what is chosen is told by more than colour", async () => {
    const { page, hand } = await phone();
    await page.emulateMedia({ forcedColors: "active" });
    await hand.beginVisit("Curlew");
    const bare: string[] = [];
    await everyScreen(page, async (name) => {
      const found = await page.evaluate(() =>
        // A box to tick is drawn by the browser itself, out of the person's own colours: no border of it is ours.
        [...document.querySelectorAll("button, .key, select, input:not([type='checkbox']), textarea")]
          .filter((one) => !one.matches(".only-heard, [hidden]") && one.getBoundingClientRect().width > 0)
          .filter((one) => {
            const own = getComputedStyle(one);
            const around = getComputedStyle(document.documentElement).backgroundColor;
            const line = own.borderBottomStyle !== "none" && Number.parseFloat(own.borderBottomWidth) >= 1;
            return !line || (own.borderBottomColor === around && own.backgroundColor === around);
          })
          .map((one) => one.outerHTML.slice(0, 120)),
      );
      // Words in the colour of the ground are read only where the plate is taken away that a browser lays behind them.
      const hidden = await page.evaluate(() =>
        [...document.querySelectorAll("body *")]
          .filter((one) =>
            [...one.childNodes].some((part) => part.nodeType === 3 && part.textContent?.trim()),
          )
          .filter((one) => {
            const { color, forcedColorAdjust } = getComputedStyle(one);
            const ground = getComputedStyle(document.documentElement).backgroundColor;
            return color === ground && forcedColorAdjust !== "none";
          })
          .map((one) => `words that are not seen: ${one.outerHTML.slice(0, 120)}`),
      );
      bare.push(...hidden.slice(0, 3).map((one) => `${name}: ${one}`));
      bare.push(...found.slice(0, 3).map((one) => `${name}: ${one}`));
    });
    expect(bare).toEqual([]);

    // The same element chosen and not: something but its colours differs.
    const visit = await begun(page);
    const shape = (css: string) =>
      page
        .locator(css)
        .first()
        .evaluate((one) => {
          const { borderTopWidth, borderInlineStartWidth, borderStyle, fontWeight, textDecorationLine } =
            getComputedStyle(one);
          const { content } = getComputedStyle(one, "::before");
          return [
            borderTopWidth,
            borderInlineStartWidth,
            borderStyle,
            fontWeight,
            textDecorationLine,
            content,
          ].join(" ");
        });
    await page.goto(`${visit}/0`);
    await page.waitForSelector(".questions");
    expect(await shape(".steps a[aria-current]")).not.toBe(await shape(".steps a:not([aria-current])"));
    expect(await shape(".questions button[aria-current]")).not.toBe(
      await shape(".questions button:not([aria-current])"),
    );
    await page.locator('.questions button[data-at="visit.diseaseInYard"]').click();
    await page.locator(".choices button", { hasText: "unknown" }).click();
    await page.locator('.questions button[data-at="visit.diseaseInYard"]').click();
    await page.waitForSelector(".choices button[aria-pressed=true]");
    expect(await shape(".choices button[aria-pressed=true]")).not.toBe(
      await shape(".choices button[aria-pressed=false]"),
    );
    await page.context().close();
  });
});

async function begun(page: Page): Promise<string> {
  await page.goto(`${served().url}#/`);
  const row = page.locator(".visit-row.next", { hasText: "Curlew" });
  const address = await row.getAttribute("href");
  return `${served().url}${address}`;
}

describe("names and roles, as the browser tells them to a screen reader (4.1.2)", () => {
  it("of the question being taken and its number keys", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    const told = await page.locator(".dock").ariaSnapshot();
    expect(told).toContain(`region "${SPREAD}?"`);
    expect(told).toContain('textbox "Type the reading in the unit it was read in."');
    const names = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "0"];
    const signs = [
      "Delete the last sign",
      "Minus",
      "Point",
      "in",
      "cm",
      "/",
      "unknown",
      "not looked",
      "Next",
    ];
    for (const name of [...names, ...signs]) expect(told).toContain(`button "${name}"`);
    await hand.type("900");
    await hand.enter();
    await page.locator(".dock .problem").waitFor();
    expect(await page.locator(".dock").ariaSnapshot()).toMatch(
      /alert: "Read \\"900\\". Allowed: 90 to 360 mm\."/,
    );
    await page.context().close();
  });
  it("of a choice, its group and what is chosen; of the steps and the row that is taken", async () => {
    const { page, hand } = await phone();
    await hand.beginVisit("Curlew");
    await hand.take("Contagious disease in the yard");
    const told = await page.locator(".dock").ariaSnapshot();
    expect(told).toMatch(/group "Contagious disease in the yard\?"/);
    await page.locator(".choices button", { hasText: "unknown" }).click();
    await hand.take("Contagious disease in the yard");
    expect(await page.locator(".dock").ariaSnapshot()).toContain('button "unknown" [pressed]');
    expect(await page.locator(".steps").ariaSnapshot()).toContain('navigation "Steps of the visit"');
    expect(await page.locator(".steps a[aria-current=step]").count()).toBe(1);
    expect(await page.locator(".questions [aria-current=true]").count()).toBe(1);
    await page.context().close();
  });
});

describe("less motion", () => {
  it("nothing moves by itself where it is asked for", async () => {
    const { page, hand } = await phone();
    await page.emulateMedia({ reducedMotion: "reduce" });
    await hand.beginVisit("Curlew");
    const moving: string[] = [];
    await everyScreen(
      page,
      async (name) => {
        const found = await page.evaluate(() =>
          [...document.querySelectorAll("*")]
            .filter((one) => {
              const { animationName, transitionDuration, scrollBehavior } = getComputedStyle(one);
              return animationName !== "none" || transitionDuration !== "0s" || scrollBehavior === "smooth";
            })
            .map((one) => one.outerHTML.slice(0, 80)),
        );
        moving.push(...found.map((one) => `${name}: ${one}`));
      },
      OF_EACH_KIND,
    );
    expect(moving).toEqual([]);
    await page.context().close();
  });
});
