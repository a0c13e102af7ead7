import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import { letterOf } from "../../core/src/report/letter.ts";
import { sheetOf } from "../../core/src/report/sheet.ts";
import { templateOf } from "../../core/src/report/template.ts";
import { serveEntry } from "../page/served-entry.ts";
import { letter, sheet, template } from "./samples.ts";

/*
 * The bundle that a page would load, in a real browser: the same bytes as in Node, from one origin.
 * What this cannot see: a browser that is not of Chromium's family.
 */

test("Chromium paints the same bytes as Node, and asks only its own origin", async () => {
  const entry = fileURLToPath(new URL("./browser-entry.ts", import.meta.url));
  const { origin, close } = await serveEntry(entry);
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });
  try {
    const page = await browser.newPage();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.goto(origin);
    await page.waitForFunction("typeof paintAll === 'function'");
    expect(asked.some((url) => url.endsWith(".woff"))).toBe(false);
    const painted = await page.evaluate<Record<string, number[]>>("paintAll()");
    const paper = await paperInNode();
    const here = {
      template: templateOf(template(232), paper.measure),
      letter: letterOf(letter(), paper.measure),
      sheet: sheetOf(sheet(), paper.measure),
    };
    for (const [kind, document] of Object.entries(here)) {
      const bytes = Buffer.from(await paper.paint(document));
      console.log(`${kind}: ${bytes.length} bytes in Node, ${painted[kind]?.length} in Chromium`);
      expect(Buffer.compare(Buffer.from(painted[kind] ?? []), bytes)).toBe(0);
    }
    for (const url of asked) expect(url.startsWith(origin) || url.startsWith("data:")).toBe(true);
  } finally {
    await browser.close();
    await close();
  }
});
