import { describe, expect, it } from "vitest";
import { TRADE_DE } from "../../apps/web/src/catalogue/de/index.ts";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import { letterDataOf } from "../../core/src/papers/letter.ts";
import { LETTER_PAGES, letterOf } from "../../core/src/report/letter.ts";
import { LetterRefused, refuseOwnerWords } from "../../core/src/report/owner-words.ts";
import { ENGLISH } from "../../core/src/report/tongue.ts";
import { firstAnswer, RIDES, surveyOf } from "../answer/examples.ts";

/* The owner's letter in German. What this cannot see: whether it is good German; no German fitter has read it. */
const paper = await paperInNode();
const GERMAN = { tag: "de", say: TRADE_DE.said };
const ENGLISH_WORDS = /\b(the|and|is|of|with|not|has|been|you)\b/gi;

describe.each(RIDES)("$name, horse $horse", ({ name, horse }) => {
  const survey = surveyOf(name);
  const first = firstAnswer(survey, horse);
  const words = (tongue: typeof ENGLISH) => {
    const { practice, owner, asked, facts, ...says } = letterDataOf(survey, first, tongue);
    const all = JSON.stringify([says, facts.cautions, facts.stop]);
    return all.replaceAll(first.horse, "HORSE");
  };
  it("has no English sentence left, and as many figures as the English one", () => {
    expect(words(GERMAN).match(ENGLISH_WORDS)).toBeNull();
    expect(words(ENGLISH).match(ENGLISH_WORDS)?.length).toBeGreaterThan(30);
    const figures = (text: string) => (text.match(/\d+/g) ?? []).sort();
    expect(figures(words(GERMAN))).toEqual(figures(words(ENGLISH)));
  });
  it("fits its two pages, and tells its language", () => {
    const document = letterOf(letterDataOf(survey, first, GERMAN), paper.measure, GERMAN);
    expect(document.pages.length).toBeLessThanOrEqual(LETTER_PAGES);
    expect(document.language).toBe("de");
  });
});

it.each([
  "Danach ist er sicher.",
  "Der Kopf wird auf 90 Grad Celsius erwärmt.",
  "HORSE hat Rückenschmerzen.",
])("refuses an owner's words in German: %s", (said) => {
  expect(() => refuseOwnerWords("the work", said, [])).toThrow(LetterRefused);
});
