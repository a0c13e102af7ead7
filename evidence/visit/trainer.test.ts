import { getAt, putAt, stepsOf } from "@treewright/core/survey/path.ts";
import { isAsked, questions } from "@treewright/core/survey/questions.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "@treewright/core/terms/answers.ts";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { fileOf, firstAnswer, surveyFrom } from "../answer/examples.ts";
import { type ServedPage, servePage } from "../page/served-page.ts";
import { FittersHand, typedAs } from "./hand.ts";
import { SCRIPTS, type Script } from "./trainer.ts";

/*
 * A trainer's scripts, one for each answer: the server is gone and the app begins from cold. A case is chosen from which the readings
 * of the script were left out, they are typed at the screens, and the answer is read where a fitter reads it. What this cannot see:
 * whether a person finds the questions, and a phone.
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

/** The places under which the script types. */
const isUnder = ({ types }: Script, path: string): boolean =>
  types.some((place) => path === place || path.startsWith(`${place}.`) || path.startsWith(`${place}[`));

/** The case without what the script types. */
function without({ example, types }: Script): unknown {
  const bare = types.reduce<unknown>(
    (file, place) => putAt(file, stepsOf(place), undefined),
    fileOf(example),
  );
  const { saddle = { name: "saddle" }, ...rest } = JSON.parse(JSON.stringify(bare));
  return { ...rest, saddle };
}

const idsOf = (file: unknown): readonly string[] => {
  const { horse, saddle, work } = firstAnswer(surveyFrom(file), 0).answers;
  return [horse.id, saddle.id, work.id];
};

async function typeAll(hand: FittersHand, script: Script): Promise<number> {
  const file = fileOf(script.example) as { horses: readonly unknown[] };
  const asked = questions(file.horses.length).filter(
    (one) => isUnder(script, one.path) && getAt(file, stepsOf(one.path)) !== undefined && isAsked(one, file),
  );
  let typed = 0;
  for (const question of asked) {
    const value = typedAs(getAt(file, stepsOf(question.path)));
    if (value === "") continue;
    await hand.answer(question, value);
    typed += 1;
  }
  return typed;
}

describe("a trainer's scripts, without signal from a cold start", () => {
  it("lead to every answer between them", () => {
    const led = new Set(SCRIPTS.flatMap(({ leadsTo }) => leadsTo));
    expect([...led].sort()).toEqual(
      [...new Set([...HORSE_ANSWERS, ...SADDLE_ANSWERS, ...WORK_ANSWERS])].sort(),
    );
  });
  it.each(SCRIPTS)("$example: $leadsTo", async (script) => {
    const bare = without(script);
    // Control: what is typed matters. A case of which little is known leads to its answer without it, too.
    const before = idsOf(bare);
    if (!script.leadsTo.includes("measure-more"))
      expect(script.leadsTo.every((id) => before.includes(id))).toBe(false);
    await page.goto(`${served.url}#/data`);
    const name = `${script.example}.json`;
    const buffer = Buffer.from(JSON.stringify(bare));
    await page
      .locator("input[accept^='.json']")
      .setInputFiles({ name, mimeType: "application/json", buffer });
    await page.waitForSelector(".dock");
    const hand = new FittersHand(page);
    const typed = await typeAll(hand, script);
    await hand.goTo("What to do");
    // The answers of a machine with other work beside it take their time.
    await page.waitForSelector(".answers[aria-busy=false] .answer[data-answer]", { timeout: 120_000 });
    const ids = await page
      .locator(".answer[data-answer]")
      .evaluateAll((all) => all.map((one) => one.getAttribute("data-answer")));
    console.log(`${script.example}: ${typed} readings typed`);
    // What stops stands first on the screen, so the three are compared whatever their order.
    expect([...ids].sort()).toEqual([...idsOf(fileOf(script.example))].sort());
    expect(ids).toEqual(expect.arrayContaining([...script.leadsTo]));
  });
});
