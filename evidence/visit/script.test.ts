import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { revealed } from "@treewright/core/records/personal.ts";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import { getAt, stepsOf } from "@treewright/core/survey/path.ts";
import { isAsked, type Question, questions } from "@treewright/core/survey/questions.ts";
import { readCaseValue } from "@treewright/core/survey/read-case.ts";
import { visitDraft } from "@treewright/core/survey/recorded/draft.ts";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { fileOf, surveyOf } from "../answer/examples.ts";
import { type ServedPage, servePage } from "../page/served-page.ts";
import { FittersHand } from "./hand.ts";
import { copiedOut, recordsIn } from "./phone.ts";

/*
 * A whole visit typed at the screens, question by question, is the case that its file tells: the same survey, so the same answers.
 * What this cannot see: whether a person finds the questions.
 */
let served: ServedPage;
beforeAll(async () => {
  served = await servePage();
});
afterAll(() => served.close());

const EXAMPLE = "09-alter-in-the-saddle";
/** What a visit does not ask: marks of the file. */
const NOT_TYPED = { title: "", invented: false };

function typedAs(value: unknown): string {
  if (Array.isArray(value)) return value.map((point: unknown) => [point].flat().join(" ")).join("; ");
  return String(value);
}

async function answerAt(page: Page, { words }: Question, value: string): Promise<void> {
  if (words)
    await page
      .locator(".choices")
      .getByRole("button", { name: value.replaceAll("-", " "), exact: true })
      .click();
  else {
    await page.fill("#taken", value);
    await page.keyboard.press("Enter");
  }
}

test("a visit typed question by question is the case of its file", async () => {
  const { page } = await served.open("", { width: 820, height: 1180 });
  const hand = new FittersHand(page);
  await hand.atFirstScreen();
  await hand.beginVisit("Dunlin");
  const file = fileOf(EXAMPLE);
  const asked = questions(1).filter(
    (one) => getAt(file, stepsOf(one.path)) !== undefined && isAsked(one, file),
  );
  let taken = 0;
  for (const question of asked) {
    const value = typedAs(getAt(file, stepsOf(question.path)));
    if (value === "") continue;
    await hand.goTo(question.section);
    await page.locator(`.questions button[data-at="${question.path}"]`).click();
    await page.waitForSelector(`.dock[data-at="${question.path}"]`);
    await answerAt(page, question, value);
    // After the last question of a step the next step is there.
    await page.waitForFunction((at) => {
      const row = document.querySelector(`.questions button[data-at="${at}"]`);
      return row === null || row.getAttribute("data-said") === "yes";
    }, question.path);
    taken += 1;
  }
  console.log(`${taken} readings typed`);
  expect(taken).toBeGreaterThan(150);
  const subject = /visit\/([0-9a-f-]+)/.exec(page.url())?.[1];
  await page.goto(`${served.url}#/data`);
  const read = readRecords((await recordsIn(await copiedOut(page))).split("\n"));
  if (!read.ok) throw new Error("the records are read");
  const { entries, people } = read.records;
  const own = entries.filter((one) => one.subject === subject);
  // biome-ignore lint/suspicious/noExplicitAny: a commitment out of an entry
  const draft = visitDraft(standingOf(own, GRAPH_KINDS), (one: any) => revealed(one, people), "2031-04-12");
  const survey = readCaseValue(draft.file);
  if (!survey.ok) throw new Error(JSON.stringify(survey.problems));
  expect({ ...survey.survey, ...NOT_TYPED }).toEqual({ ...surveyOf(EXAMPLE), ...NOT_TYPED });
  await page.context().close();
});
