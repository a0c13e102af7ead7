import { readFileSync } from "node:fs";
import { AxeBuilder } from "@axe-core/playwright";
import { answer } from "@treewright/core/answer.ts";
import { CARD_MM } from "@treewright/core/engine/drawing/screen-scale.ts";
import { templateDataOf } from "@treewright/core/papers/template.ts";
import { widthOverAllMm } from "@treewright/core/report/screen-parts.ts";
import { readCase } from "@treewright/core/survey/read-case.ts";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type ServedPage, servePage } from "../page/served-page.ts";
import { FittersHand } from "./hand.ts";

/*
 * The wanted head at true size, in Chromium. What this cannot see: a real screen, a card, an eye, glass; a browser of
 * another family, which may zoom a page without a word of it.
 */
let served: ServedPage;
beforeAll(async () => {
  served = await servePage();
});
afterAll(() => served.close());

const DESK = { width: 1440, height: 900 };
const PHONE = { width: 390, height: 844 };
/** CSS pixels per mm of a screen with 96 to the inch, and of a phone. */
const PX_PER_MM = { desk: 96 / 25.4, phone: 6 };
/** The invented visit that is looked at. */
const CASE = "examples/cases/25-old-plate-kept.json";
const HORSE = "Avocet";

/** Width of the template as core has it, mm. */
function templateWidthMm(): number {
  const read = readCase(readFileSync(CASE, "utf8"));
  if (!read.ok) throw new Error("the example is a case");
  const first = answer(read.survey, { horse: 0, seed: 1 }).next().value;
  const data = templateDataOf(read.survey, first);
  if (data === undefined) throw new Error("the example has a wanted head");
  return widthOverAllMm(data.wanted);
}

async function atMatch(size: { width: number; height: number }) {
  const { page, faults } = await served.open("", size);
  const hand = new FittersHand(page);
  await hand.atFirstScreen();
  await page.locator(".visit-list .visit-row", { hasText: HORSE }).click();
  await page.waitForSelector(".steps a");
  await hand.goTo("What to do");
  await page.getByRole("link", { name: "Hold the template" }).click();
  await page.waitForSelector(".stage");
  return { page, faults, hand };
}

async function typeSide(page: Page, px: number) {
  await page.getByLabel("Between the lines").fill(px.toFixed(1));
  await page.keyboard.press("Enter");
  await page.keyboard.press("Enter");
}

async function matchAt(page: Page, pxPerMm: number, shortWrong = 1) {
  await typeSide(page, pxPerMm * CARD_MM.long);
  await page.getByRole("button", { name: "Short side fits" }).waitFor();
  await typeSide(page, pxPerMm * CARD_MM.short * shortWrong);
}

/** How wide a line is drawn on the screen, CSS pixels, its own pen not counted. */
const drawnPx = (page: Page, series: string): Promise<number> =>
  page
    .locator(`.true-size [data-series="${series}"]`)
    .first()
    .evaluate((line) => {
      const path = line as unknown as SVGGraphicsElement;
      return path.getBBox().width * (path.getScreenCTM()?.a ?? 0);
    });

const kept = (page: Page) => page.evaluate(() => localStorage.getItem("treewright-screen-scale"));

describe("the wanted head at true size", () => {
  it("is as wide on the screen as the template is in mm, and its bar is 100 mm; the scale is kept", async () => {
    const { page, faults } = await atMatch(DESK);
    await matchAt(page, PX_PER_MM.desk);
    await page.waitForSelector('[data-series="wanted"]');
    // What was typed is rounded to a tenth of a pixel: 0.03 % of the long side.
    expect(Math.abs((await drawnPx(page, "wanted")) / PX_PER_MM.desk - templateWidthMm())).toBeLessThan(0.1);
    expect(Math.abs((await drawnPx(page, "bar")) / PX_PER_MM.desk - 100)).toBeLessThan(0.05);
    expect(await page.locator(".true-size-block").first().textContent()).toMatch(
      /180 mm wide over all.*± 1\.5 mm/,
    );
    await page.reload();
    await page.waitForSelector('[data-series="wanted"]');
    expect(await page.locator(".stage").count()).toBe(0);

    // Where a language runs from right to left, near stays left.
    await page.evaluate(() => localStorage.setItem("language", "x-rtl"));
    await page.reload();
    await page.waitForSelector('[data-series="wanted"]');
    const ends = page.locator(".true-size-block").first().locator(".part-ends span");
    expect(await ends.first().textContent()).toContain("near (left)");
    const [near, off] = await Promise.all([ends.first().boundingBox(), ends.last().boundingBox()]);
    expect(near?.x ?? 0).toBeLessThan(off?.x ?? 0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("is refused where the short side is wrong by 3 %, with what was read and what is allowed", async () => {
    const { page } = await atMatch(DESK);
    for (const wrong of [0.97, 1.03]) {
      await matchAt(page, PX_PER_MM.desk, wrong);
      await page.getByRole("button", { name: "Long side fits" }).waitFor();
      const said = (await page.locator(".match .problem").textContent()) ?? "";
      expect(said).toMatch(/Long side: 323\.5 px read, 3\.7\d+ px per mm/);
      expect(said).toContain(`Short side: ${(CARD_MM.short * PX_PER_MM.desk * wrong).toFixed(1)} px read`);
      expect(said).toMatch(/differ by [23]\.\d %\. Allowed: 1\.8 %/);
      expect(await page.locator(".true-size").count()).toBe(0);
      expect(await kept(page)).toBeNull();
    }
    // What is no side of a card at all is refused at its field, and the lines stay.
    const field = page.getByLabel("Between the lines");
    await field.fill("12");
    await page.keyboard.press("Enter");
    expect(await page.locator(".match-keys .problem").textContent()).toMatch(/Read "12"\. Allowed: 85\.6 to/);
    await matchAt(page, PX_PER_MM.desk);
    await page.waitForSelector(".true-size-block");
    await page.context().close();
  });

  it("is void once the page is zoomed, or on another screen, and says so; one that was turned is the same", async () => {
    const { page } = await atMatch(DESK);
    await matchAt(page, PX_PER_MM.desk);
    await page.waitForSelector('[data-series="wanted"]');
    const cdp = await page.context().newCDPSession(page);
    await cdp.send("Emulation.setPageScaleFactor", { pageScaleFactor: 1.5 });
    await page.getByText("The page was zoomed").waitFor();
    await page.getByText("Zoom back out first").waitFor();
    expect(await page.locator(".true-size, .stage").count()).toBe(0);
    expect(await kept(page)).toBeNull();
    await cdp.send("Emulation.setPageScaleFactor", { pageScaleFactor: 1 });
    await page.waitForSelector(".stage");
    expect(await page.locator(".true-size").count()).toBe(0);

    await matchAt(page, PX_PER_MM.desk);
    await page.waitForSelector('[data-series="wanted"]');
    const as = (deviceScaleFactor: number, screenWidth: number, screenHeight: number) =>
      cdp.send("Emulation.setDeviceMetricsOverride", {
        ...{ width: screenWidth, height: screenHeight, deviceScaleFactor, mobile: false },
        ...{ screenWidth, screenHeight },
      });
    await as(1, 900, 1440);
    await page.waitForFunction(() => innerHeight === 1440);
    expect(await page.locator(".true-size").count()).toBeGreaterThan(0);
    await as(1.25, 900, 1440);
    await page.getByText("This screen, or its zoom").waitFor();
    expect(await page.locator(".true-size").count()).toBe(0);
    expect(await kept(page)).toBeNull();
    await matchAt(page, PX_PER_MM.desk);
    await page.waitForSelector('[data-series="wanted"]');
    await as(1.25, 900, 1600);
    await page.getByText("This screen, or its zoom").waitFor();
    await page.context().close();
  });

  it("comes part by part on a phone, each named, near before off and left", async () => {
    const { page } = await atMatch(PHONE);
    await matchAt(page, PX_PER_MM.phone);
    await page.waitForSelector('[data-series="wanted"]');
    const block = page.locator(".true-size-block").first();
    const next = block.getByRole("button", { name: "Next part" });
    const names: string[] = [];
    for (;;) {
      names.push((await block.locator(".part-name").textContent()) ?? "");
      const width = await block
        .locator(".true-size-room svg")
        .evaluate((one) => one.getBoundingClientRect().width);
      expect(width).toBeLessThanOrEqual(PHONE.width);
      if (await next.isDisabled()) break;
      await next.click();
    }
    const halves = names.map((name) => name.slice(0, name.indexOf(",")));
    expect([...new Set(halves)]).toEqual(["Near (left) half", "Off (right) half"]);
    expect(names.map((name) => /part (\d) of (\d)/.exec(name)?.[1])).toEqual(
      names.map((_, at) => String(at + 1)),
    );
    const ends = await block.locator(".part-ends span").allTextContents();
    expect(ends).toEqual(["to the middle", "seen from behind", "off (right)"]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await page.context().close();
  });
});

describe("hands and other eyes", () => {
  it("a keyboard alone matches the card and reaches every part", async () => {
    const { page } = await atMatch(DESK);
    for (const side of ["long", "short"] as const) {
      const wanted = Math.round(CARD_MM[side] * PX_PER_MM.desk * 2) / 2;
      await page.waitForFunction(
        (words) => document.querySelector(".match-keys .main")?.textContent?.startsWith(words),
        side === "long" ? "Long" : "Short",
      );
      await tabTo(page, side === "long" ? "Right line" : "Lower line");
      const apart = async () => Number(await page.getByLabel("Between the lines").inputValue());
      for (let steps = 0; (await apart()) !== wanted && steps < 400; steps++)
        await page.keyboard.press((await apart()) < wanted ? "ArrowRight" : "ArrowLeft");
      await tabTo(page, side === "long" ? "Long side fits" : "Short side fits");
      await page.keyboard.press("Enter");
    }
    await page.waitForSelector('[data-series="wanted"]');
    await page.context().close();
  });

  it("a line is dragged and nudged; axe finds no fault in light and dark; what is pressed is 48 px high", async () => {
    const { page } = await atMatch(PHONE);
    const line = page.getByRole("slider", { name: "Lower line" });
    await page.locator(".stage").evaluate((stage) => stage.scrollIntoView());
    const box = await line.boundingBox();
    if (!box) throw new Error("the line is drawn");
    const before = Number(await line.getAttribute("aria-valuenow"));
    await page.mouse.move(box.x + 60, box.y + 20);
    await page.mouse.down();
    await page.mouse.move(box.x + 60, box.y + 57, { steps: 3 });
    await page.mouse.up();
    expect(Number(await line.getAttribute("aria-valuenow"))).toBe(before + 37);
    await page.getByRole("button", { name: "Lower line, up" }).click();
    expect(Number(await line.getAttribute("aria-valuenow"))).toBe(before + 36.5);
    const look = async (at: string) => {
      for (const light of ["light", "dark"]) {
        await page.evaluate((one) => {
          document.documentElement.dataset.look = one;
        }, light);
        const { violations } = await new AxeBuilder({ page }).analyze();
        expect(
          violations.map(({ id, nodes }) => `${at}, ${light}, ${id}: ${nodes[0]?.html.slice(0, 160)}`),
        ).toEqual([]);
      }
      const low = await page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("main button, main input, main a.key, [role=slider]")]
          .filter((one) => Math.max(one.offsetHeight, one.offsetWidth) < 47.5 || one.offsetHeight < 47.5)
          .map((one) => one.outerHTML.slice(0, 90)),
      );
      expect(low).toEqual([]);
    };
    await look("match");
    await matchAt(page, PX_PER_MM.phone);
    await page.waitForSelector('[data-series="wanted"]');
    await look("drawn");
    await page.context().close();
  });
});

/** Goes by the tab key until what has this name has the focus. */
async function tabTo(page: Page, name: string) {
  for (let steps = 0; steps < 60; steps++) {
    const now = await page.evaluate(() => {
      const one = document.activeElement;
      return one?.getAttribute("aria-label") ?? one?.textContent ?? "";
    });
    if (now === name) return;
    await page.keyboard.press("Tab");
  }
  throw new Error(`${name} is not reached by the tab key`);
}
