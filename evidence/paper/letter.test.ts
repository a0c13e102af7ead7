import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import { LETTER_PAGES, LetterTooLong, letterOf } from "../../core/src/report/letter.ts";
import { LetterRefused } from "../../core/src/report/owner-words.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../../core/src/terms/answers.ts";
import { wordsOf } from "./poppler.ts";
import { facts, letter } from "./samples.ts";

const paper = await paperInNode();

test("a letter has at most two pages; one that would not go is refused and nothing is dropped", async () => {
  for (let sentences = 1; sentences <= 40; sentences++) {
    const limits = Array.from(
      { length: sentences },
      (_, i) =>
        `Limit ${i + 1} of this judgement, in a sentence that takes about two lines of the letter's width.`,
    );
    const data = letter({ limits });
    try {
      const document = letterOf(data, paper.measure);
      expect(document.pages.length).toBeLessThanOrEqual(LETTER_PAGES);
      const said = document.pages
        .flatMap((page) => page.items.map((item) => (item.kind === "text" ? item.words : "")))
        .join(" ");
      for (let i = 1; i <= sentences; i++) expect(said).toContain(`Limit ${i} `);
    } catch (error) {
      expect(error).toBeInstanceOf(LetterTooLong);
      expect(sentences).toBeGreaterThan(15);
      return;
    }
  }
  throw new Error("no letter was ever too long");
});

test("one word of 1,000 letters is broken and not lost; one of 5,000 is refused", () => {
  expect(() => letterOf(letter({ asked: "a".repeat(5000) }), paper.measure)).toThrow(LetterTooLong);
  const document = letterOf(letter({ asked: "a".repeat(1000) }), paper.measure);
  const set = document.pages
    .flatMap((page) => page.items)
    .flatMap((item) => (item.kind === "text" && /^a+$/.test(item.words) ? [item.words] : []));
  expect(set.join("")).toHaveLength(1000);
  for (const line of set) expect(paper.measure(line, "letter", false, 3.9)).toBeLessThanOrEqual(116);
});

test("lines are about 60 characters long", () => {
  const said =
    "The points lie closer to your horse than they should and so the head is the part to change. ".repeat(6);
  const document = letterOf(letter({ asked: said }), paper.measure);
  const lines = document.pages
    .flatMap((page) => page.items)
    .flatMap((item) => (item.kind === "text" && item.name === "The question" ? [item.words.length] : []));
  for (const length of lines.slice(0, -1)) expect(length).toBeGreaterThan(48);
  for (const length of lines) expect(length).toBeLessThan(72);
});

test("the paper's own words hold no pressure, promise or id", async () => {
  const said = wordsOf(await paper.paint(letterOf(letter(), paper.measure)));
  expect(said).toContain("May you ride?");
  expect(said).not.toMatch(/\bkPa\b|\bsafe/i);
  for (const id of [...HORSE_ANSWERS, ...SADDLE_ANSWERS, ...WORK_ANSWERS].filter((one) => one.includes("-")))
    expect(said).not.toContain(id);
});

const refused = [
  "12 kPa under the points",
  "It is safe to ride",
  "Ride safely",
  "pressed with 4 kN",
  "warmed to 140 °C",
  "at 60 bar",
  "It has back pain",
  "alter-dressed",
];
test.each(
  [...refused, ...HORSE_ANSWERS, ...SADDLE_ANSWERS, ...WORK_ANSWERS].filter(
    (one) => (one.includes("-") && one !== "set-up") || one.includes(" "),
  ),
)("an owner is never told: %s", (sentence) => {
  for (const data of [
    letter({ asked: sentence }),
    letter({ limits: [sentence] }),
    letter({ work: { says: "Nothing.", because: [sentence] } }),
  ]) {
    expect(() => letterOf(data, paper.measure)).toThrow(LetterRefused);
  }
});

test("a horse called Safe Haven gets its letter, and bars of a saddle may be named", () => {
  const data = letter({
    facts: facts({ horse: "Safe Haven" }),
    asked: "You asked about Safe Haven and the stirrup bars.",
  });
  expect(letterOf(data, paper.measure).pages.length).toBe(1);
});

test("a stop stands before every other line, white on a black field", () => {
  const stop = "Do not ride in this saddle.";
  const { pages } = letterOf(letter({ facts: facts({ stop: [stop] }) }), paper.measure);
  const items = pages[0]?.items ?? [];
  const at = items.findIndex((item) => item.kind === "text" && item.words === stop);
  const field = items.findIndex((item) => item.name === "stop, field");
  expect(field).toBeGreaterThan(-1);
  expect(items[at]).toMatchObject({ ink: "paper" });
  expect(items[field]).toMatchObject({ fill: "ink" });
  const greeting = items.findIndex((item) => item.name === "greeting");
  expect(field < at && at < greeting).toBe(true);
});
