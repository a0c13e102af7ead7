import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { revealed } from "@treewright/core/records/personal.ts";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import { readCaseValue } from "@treewright/core/survey/read-case.ts";
import { visitDraft } from "@treewright/core/survey/recorded/draft.ts";
import { afterAll, beforeAll, expect, test } from "vitest";
import { surveyOf } from "../answer/examples.ts";
import { type ServedPage, servePage } from "../page/served-page.ts";
import { FittersHand } from "./hand.ts";
import { copiedOut, recordsIn } from "./phone.ts";
import { typeAll } from "./scripted.ts";

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

test("a visit typed question by question is the case of its file", async () => {
  const { page } = await served.open("", { width: 820, height: 1180 });
  const hand = new FittersHand(page);
  await hand.atFirstScreen();
  await hand.beginVisit("Dunlin");
  const taken = await typeAll(hand, EXAMPLE, () => true);
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
