import { readdirSync, readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startServer } from "../../apps/server/src/main.ts";
import { figuresOf, horsesOf } from "../../apps/web/src/bench/figures-of.ts";
import { BENCH, builtPage } from "../page/served-page.ts";
import { WebKit } from "./webkit.ts";

/* Every digit of every answer of every invented case, in an engine of another family: the same as in Node. */
const CASES = new URL("../../examples/cases/", import.meta.url);

let webkit: WebKit;
let server: Awaited<ReturnType<typeof startServer>>;
beforeAll(async () => {
  server = await startServer({ root: await builtPage(), port: 0 });
  webkit = await WebKit.open();
});
afterAll(async () => {
  await webkit.close();
  await server.close();
});

test("the same figures in Node and in WebKit on all examples", async () => {
  await webkit.goTo(`${server.url}${BENCH}?figures=1`);
  await webkit.sees("document.querySelector('[data-done=yes]')");
  const found: unknown = JSON.parse(await webkit.run("return document.querySelector('pre').textContent"));
  const node = readdirSync(CASES)
    .filter((name) => name.endsWith(".json"))
    .sort()
    .flatMap((name) => {
      const text = readFileSync(new URL(name, CASES), "utf8");
      return horsesOf(text).map((horse) => ({ name, horse, figures: figuresOf(text, horse) }));
    });
  expect(node.length).toBeGreaterThanOrEqual(25);
  expect(found).toEqual(node);
  console.log(`${node.length} horses: the same digits in Node and in WebKit ${webkit.version}`);
});
