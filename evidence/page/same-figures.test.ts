import { readdirSync, readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { figuresOf, horsesOf } from "../../apps/web/src/bench/figures-of.ts";
import { BENCH, type ServedPage, servePage } from "./served-page.ts";

/*
 * Every digit of every answer of every invented case: in Node, in one worker of Chromium and in two.
 * Both are engines of one family; what this cannot see is an engine of another, where we lean on IEEE 754.
 */
const CASES = new URL("../../examples/cases/", import.meta.url);

function inNode() {
  return readdirSync(CASES)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .flatMap((name) => {
      const text = readFileSync(new URL(name, CASES), "utf8");
      return horsesOf(text).map((horse) => ({ name, horse, figures: figuresOf(text, horse) }));
    });
}

let served: ServedPage;
beforeAll(async () => {
  served = await servePage();
});
afterAll(() => served.close());

async function inChromium(workers: number): Promise<unknown> {
  const { page, faults } = await served.open(`${BENCH}?figures=${workers}`);
  await page.waitForSelector("[data-done=yes]", { timeout: 240_000 });
  const found: unknown = JSON.parse((await page.textContent("pre")) ?? "");
  expect(faults).toEqual([]);
  await page.close();
  return found;
}

let found: ReturnType<typeof inNode> | undefined;
/** Worked out once, by whichever test comes first. */
const node = () => {
  found ??= inNode();
  return found;
};

test("in Node the examples come to at least eight answers", () => {
  expect(node().length).toBeGreaterThanOrEqual(8);
  expect(new Set(node().map(({ figures }) => figures.answers[2])).size).toBeGreaterThanOrEqual(8);
});

test.each([1, 2])("the same figures in Node and Chromium on all examples, workers: %i", async (workers) => {
  expect(await inChromium(workers)).toEqual(node());
  console.log(
    `${node().length} horses: the same digits in Node and in Chromium ${served.browser.version()}, ${workers} at work`,
  );
});
