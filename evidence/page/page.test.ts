import { readFileSync } from "node:fs";
import { readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseString } from "dxf";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { CASE_VERSION } from "../../core/src/survey/case.ts";
import { poppler } from "../paper/poppler.ts";
import { type ServedPage, servePage } from "./served-page.ts";

/* What a person does with the page, in a real browser. What it cannot see: a phone, a thumb, the sun, a screen reader's voice. */
let served: ServedPage;
beforeAll(async () => {
  served = await servePage();
});
afterAll(() => served.close());

const example = (name: string) =>
  readFileSync(new URL(`../../examples/cases/${name}`, import.meta.url), "utf8");
const settled = (page: Page) => page.waitForSelector(".answers[aria-busy=false]");
const workAnswer = (page: Page) =>
  page.locator(".answer", { has: page.locator(".over", { hasText: "Work" }) }).getAttribute("data-answer");
const pagesOf = (pdf: Uint8Array) =>
  Number(/Pages:\s+(\d+)/.exec(poppler("pdfinfo", pdf, [], []).toString())?.[1]);
const after = (page: Page) => page.locator(".follows .after").allTextContents();

async function lay(page: Page, name: string): Promise<void> {
  await page.getByLabel("Examples").selectOption(name);
  await page.waitForFunction(
    (title) => document.querySelector(".title-block dd")?.textContent === title,
    JSON.parse(example(name)).title,
  );
  await settled(page);
  expect(await page.getByLabel("Examples").inputValue()).toBe(name);
}

async function goToField(page: Page, path: string): Promise<void> {
  await page.evaluate((place) => {
    location.hash = "";
    location.hash = encodeURIComponent(place);
  }, path);
  await page.waitForFunction((place) => document.activeElement?.id === place, path);
}

test("an example lies open with its three answers and their reasons, and all comes from one origin", async () => {
  const { page, asked, faults } = await served.open();
  await settled(page);
  expect(await page.locator(".answer").count()).toBe(3);
  for (const answer of await page.locator(".answer").all()) {
    expect((await answer.locator("h2").textContent())?.length).toBeGreaterThan(3);
    await answer.getByText(/^Why/).click();
    expect(await answer.locator(".reasons li").count()).toBeGreaterThan(0);
  }
  expect(new Set(asked.map((address) => new URL(address).origin))).toEqual(
    new Set([new URL(served.url).origin]),
  );
  expect(faults).toEqual([]);
  await page.close();
});

test("the head is moved by slider, key and typed figure, and the fit follows", async () => {
  const { page } = await served.open();
  await settled(page);
  const slider = page.getByRole("slider");
  await page.waitForSelector(".follows");
  const today = await after(page);
  const lines = await page.locator(".pressure-figure .drawing").innerHTML();
  await slider.fill("8");
  await expect.poll(() => after(page)).not.toEqual(today);
  await expect.poll(() => page.locator(".pressure-figure .drawing").innerHTML()).not.toBe(lines);
  const opened = await after(page);
  await page.getByRole("button", { name: "Open the head by 1 mm" }).click();
  await expect.poll(() => after(page)).not.toEqual(opened);
  expect(await slider.inputValue()).toBe("9");
  await page.getByLabel("Change, mm").fill("-4,5");
  await page.getByLabel("Change, mm").press("Enter");
  await expect.poll(() => slider.getAttribute("aria-valuetext")).toMatch(/4\.5/);
  await page.getByRole("button", { name: "As today" }).click();
  await expect.poll(() => after(page)).toEqual(today);
  await page.close();
});

test("a typed reading is taken and the answers follow; a wrong one is told beside its field and changes nothing", async () => {
  const { page } = await served.open();
  await settled(page);
  const before = await workAnswer(page);
  await goToField(page, "horses[0].girthed.clearanceTop");
  const box = page.locator("[data-reading='horses[0].girthed.clearanceTop']");
  await box.fill("9000");
  await box.press("Enter");
  const problem = page.locator(".reading.refused .problem");
  await problem.waitFor();
  expect(await problem.textContent()).toMatch(/9000.*Allowed: 0 to 160 mm/);
  expect(await workAnswer(page)).toBe(before);
  await goToField(page, "horses[0].moving.uneven");
  await page.locator("[data-reading='horses[0].moving.uneven']").selectOption("yes");
  await page.waitForSelector(".answer.stop[data-answer='vet-before-riding']");
  await settled(page);
  expect(await workAnswer(page)).toBe("not-now");
  expect(await page.locator(".drawing, .follows").count()).toBe(0);
  expect(await page.locator(".bench.shut").textContent()).toMatch(/vet/);
  await page.close();
});

test("answers for an older case never stand over newer readings", async () => {
  const { page } = await served.open();
  await settled(page);
  const hash = () => page.locator("[data-hash]").getAttribute("data-hash");
  const first = await hash();
  await goToField(page, "horses[0].girthed.clearanceTop");
  const box = page.locator("[data-reading='horses[0].girthed.clearanceTop']");
  const wanted = await box.inputValue();
  for (const typed of ["51", "52", "53", "54", wanted]) {
    await box.fill(typed);
    await box.blur();
  }
  await settled(page);
  expect(await hash()).toBe(first);
  await page.close();
});

test("a file comes back as it went in, sign for sign, but for what was typed", async () => {
  const { page } = await served.open();
  await settled(page);
  const odd = example("05-readings-in-inches.json").replace(/\n {2}"title"/, '\n\n     "title"');
  const place = join(tmpdir(), `treewright-${process.pid}.json`);
  await writeFile(place, odd);
  await page.locator("input[type=file]").setInputFiles(place);
  await page.waitForFunction(
    (title) => document.querySelector(".title-block dd")?.textContent === title,
    JSON.parse(odd).title,
  );
  expect(await saved(page)).toBe(odd);
  await goToField(page, "horses[0].girthed.rock");
  const box = page.locator("[data-reading='horses[0].girthed.rock']");
  await box.fill("0,25 in");
  await box.press("Enter");
  await page.waitForFunction(() =>
    document.querySelector(".saved-line")?.textContent?.startsWith("Not saved"),
  );
  const now = await saved(page);
  expect(JSON.parse(now).horses[0].girthed.rock).toBe("0,25 in");
  const [a, b] = [odd.split("\n"), now.split("\n")];
  expect(b.filter((line) => !a.includes(line)).length).toBeLessThanOrEqual(1);
  await page.close();
});

async function saved(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save" }).click(),
  ]);
  return readFile(await download.path(), "utf8");
}

test("a file of an older version is brought up to date, and the page says that this is not saved yet", async () => {
  const { page } = await served.open();
  await page.waitForSelector(".answer");
  const { horses, ...rest } = JSON.parse(example("09-alter-in-the-saddle.json"));
  const place = join(tmpdir(), `treewright-old-${process.pid}.json`);
  await writeFile(place, JSON.stringify({ ...rest, version: 1, title: "An older file", horse: horses[0] }));
  await page.locator("input[type=file]").setInputFiles(place);
  await page.waitForFunction(
    () => document.querySelector(".title-block dd")?.textContent === "An older file",
  );
  expect(await page.locator(".saved-line").textContent()).toMatch(/^Not saved/);
  const now = JSON.parse(await saved(page));
  expect([now.version, now.horses[0]]).toEqual([CASE_VERSION, horses[0]]);
  await page.close();
});

test("a file that is no case is refused with what was read and what is allowed, and the desk stays as it was", async () => {
  const { page } = await served.open();
  await settled(page);
  const title = await page.locator(".title-block dd").first().textContent();
  const place = join(tmpdir(), `treewright-bad-${process.pid}.json`);
  await writeFile(place, example("09-alter-in-the-saddle.json").replace('"version": 3', '"version": 99'));
  await page.locator("input[type=file]").setInputFiles(place);
  const dialog = page.getByRole("dialog");
  await dialog.waitFor();
  expect(await dialog.textContent()).toMatch(/version.*99.*Allowed/);
  await dialog.getByRole("button", { name: "Back" }).click();
  expect(await page.locator(".title-block dd").first().textContent()).toBe(title);
  await page.close();
});

test("letter, sheet and template are made on the device as PDF", async () => {
  const { page, asked, faults } = await served.open();
  await settled(page);
  for (const name of ["Letter", "Sheet", "Template"]) {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: `${name} as PDF` }).click(),
    ]);
    const bytes = await readFile(await download.path());
    expect(bytes.subarray(0, 5).toString()).toBe("%PDF-");
    expect(bytes.length).toBeGreaterThan(8_000);
  }
  expect(
    new Set(asked.map((address) => address.replace(/^blob:/, "")).map((address) => new URL(address).origin))
      .size,
  ).toBe(1);
  expect(faults).toEqual([]);
  await page.close();
});

test("the template by its face, by halves and for a cutter, made on the device", async () => {
  const { page, faults } = await served.open();
  await settled(page);
  const made = async (name: string) => {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name, exact: true }).click(),
    ]);
    return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
  };
  const outlines = (text: string) =>
    parseString(text).entities.filter(({ layer, type }) => layer === "cut" && type === "LWPOLYLINE").length;
  const whole = await made("Template as DXF");
  expect(whole.name).toMatch(/-template\.dxf$/);
  expect(outlines(whole.bytes.toString())).toBe(1);
  await page.getByLabel("Made").selectOption("halves");
  const byHalves = (await made("Template as DXF")).bytes.toString();
  expect(outlines(byHalves)).toBe(2);
  expect(pagesOf((await made("Template as PDF")).bytes)).toBe(2);
  await page.getByLabel("Face of the template").selectOption("inside");
  const inside = (await made("Template as SVG")).bytes.toString();
  await page.getByLabel("Face of the template").selectOption("outside");
  const outside = (await made("Template as SVG")).bytes.toString();
  for (const text of [inside, outside]) expect(text).toMatch(/<g id="cut">/);
  expect(outside).not.toBe(inside);
  expect(faults).toEqual([]);
  await page.close();
});

test("each horse of a saddle has answers of its own", async () => {
  const { page } = await served.open();
  await settled(page);
  await lay(page, "16-two-ponies-loose-bar.json");
  const hash = () => page.locator("[data-hash]").getAttribute("data-hash");
  const horses = page.getByLabel("Horse", { exact: true });
  const before = await page.locator("[data-horse]").getAttribute("data-horse");
  await horses.selectOption({ index: 1 });
  await page.waitForFunction(
    (first) => document.querySelector("[data-horse]")?.getAttribute("data-horse") !== first,
    before,
  );
  await settled(page);
  expect(await hash()).toMatch(/^[0-9a-f]+$/);
  await page.close();
});

test("the whole way by keyboard alone", async () => {
  const { page } = await served.open();
  await settled(page);
  const tabTo = async (found: () => Promise<boolean>) => {
    for (let steps = 0; steps < 80; steps += 1) {
      await page.keyboard.press("Tab");
      if (await found()) return;
    }
    throw new Error("not reached by Tab");
  };
  const focused = (css: string) => () =>
    page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, css);
  await tabTo(focused(".stations button:nth-child(2)"));
  await page.keyboard.press("Space");
  expect(await page.locator(".section-figure h3").textContent()).toMatch(/^Mid/);
  await tabTo(focused("input[type=range]"));
  const before = await after(page);
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => after(page)).not.toEqual(before);
  await tabTo(focused(".readings nav button"));
  await tabTo(focused("[data-reading]"));
  const first = await page.evaluate(() => document.activeElement?.id);
  await page.keyboard.press("Enter");
  expect(await page.evaluate(() => document.activeElement?.id)).not.toBe(first);
  expect(
    await page.evaluate(() => getComputedStyle(document.activeElement ?? document.body).outlineStyle),
  ).not.toBe("none");
  await page.close();
});
