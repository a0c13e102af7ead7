import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "@treewright/core/terms/answers.ts";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fileOf } from "../answer/examples.ts";
import { type ServedPage, servePage } from "../page/served-page.ts";
import { FittersHand } from "./hand.ts";
import { idsOf, play, without } from "./scripted.ts";
import { SCRIPTS } from "./trainer.ts";

/*
 * A trainer's scripts in Chromium, one for each answer: the server is gone and the app begins from cold. What this cannot see: whether
 * a person finds the questions, and a phone. In WebKit: `evidence/webkit/trainer.test.ts`.
 */
let served: ServedPage;
let page: Page;
beforeAll(async () => {
  served = await servePage();
  const online = await served.open("", { width: 820, height: 1180 });
  await online.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const context = online.page.context();
  await online.page.close();
  await served.down();
  page = await context.newPage();
});
afterAll(() => served.close());

describe("a trainer's scripts, without signal from a cold start", () => {
  it("lead to every answer between them", () => {
    const led = new Set(SCRIPTS.flatMap(({ leadsTo }) => leadsTo));
    expect([...led].sort()).toEqual(
      [...new Set([...HORSE_ANSWERS, ...SADDLE_ANSWERS, ...WORK_ANSWERS])].sort(),
    );
  });
  it.each(SCRIPTS)("$example: $leadsTo", async (script) => {
    // Control: what is typed matters. A case of which little is known leads to its answer without it, too.
    const before = idsOf(without(script));
    if (!script.leadsTo.includes("measure-more"))
      expect(script.leadsTo.every((id) => before.includes(id))).toBe(false);
    await page.goto(`${served.url}#/data`);
    const { typed, shown } = await play(new FittersHand(page), script);
    console.log(`${script.example}: ${typed} readings typed`);
    // What stops stands first on the screen, so the three are compared whatever their order.
    expect([...shown].sort()).toEqual([...idsOf(fileOf(script.example))].sort());
    expect(shown).toEqual(expect.arrayContaining([...script.leadsTo]));
  });
});
