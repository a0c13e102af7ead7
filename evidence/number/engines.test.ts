import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { build } from "vite";
import { expect, test } from "vitest";
import { FROZEN } from "./frozen.ts";

/*
 * The same bits in Chromium as digests.json holds (and digest.test.ts finds in Node). Both are engines of
 * one family; what this cannot see is an engine of another, where we lean on IEEE 754 for + - * / and the
 * square root.
 */

/** The text of one script that leaves the digests in a global of the page. */
async function scriptOf(entry: string): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: "error",
    build: {
      write: false,
      minify: false,
      lib: { entry, formats: ["iife"], name: "evidence", fileName: "evidence" },
    },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (!first || !("output" in first)) throw new Error("nothing was built");
  return first.output[0].code;
}

test("every bit of engine/number and of the draws is the same in Chromium", async () => {
  const script = await scriptOf(fileURLToPath(new URL("./digest.ts", import.meta.url)));
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: script });
    const found = await page.evaluate("evidence.digests()");
    expect(found).toEqual(FROZEN);
    console.log(`in Chromium ${browser.version()}: the bits of Node`);
  } finally {
    await browser.close();
  }
});
