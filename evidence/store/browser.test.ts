import { fileURLToPath } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { serveEntry } from "../page/served-entry.ts";
import { CONTRACT } from "./contract.ts";

/*
 * The browser's own data base, in a real browser. What this cannot see: a browser that is not of Chromium's family, and a dead
 * battery: that every transaction asks to be strict is seen here, that it is kept by the machine is counted elsewhere.
 */
let browser: Browser;
let page: Page;
let served: { origin: string; close(): Promise<void> };

beforeAll(async () => {
  served = await serveEntry(fileURLToPath(new URL("./browser-entry.ts", import.meta.url)));
  browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });
  page = await browser.newPage();
  await page.goto(served.origin);
  await page.waitForFunction("typeof runClause === 'function'");
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

test.each(CONTRACT.map(({ says }, at) => [says, at] as const))(
  "the browser's data base %s",
  async (_, at) => {
    expect(await page.evaluate(`runClause(${at})`)).toBe("");
  },
);

test("every transaction that wrote asked to be strict", async () => {
  const asked = await page.evaluate<string[]>("durabilities()");
  expect(asked.length).toBeGreaterThan(10);
  expect(new Set(asked)).toEqual(new Set(["strict"]));
});

test("what a newer version wrote is left alone", async () => {
  expect(await page.evaluate("newer()")).toBe("newer");
});
