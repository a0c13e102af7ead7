import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import type { At } from "../../core/src/engine/drawing.ts";
import { tan } from "../../core/src/engine/number/index.ts";
import { RULES } from "../../core/src/judge/rules/all.ts";
import { limitsOf } from "../../core/src/papers/limits.ts";
import { ownerReason } from "../../core/src/papers/owner-reasons.ts";
import { templateDataOf } from "../../core/src/papers/template.ts";
import { PAPER_KINDS } from "../../core/src/papers.ts";
import { LETTER_PAGES } from "../../core/src/report/letter.ts";
import { outsideSpreadMm } from "../../core/src/shape/wanted-head.ts";
import { type Answered, answeredExamples, itemsOf, paperOf, saidOn } from "./examples.ts";

/*
 * The papers of all examples, as their answers make them. What these checks cannot see: whether a sentence is the right
 * one to say to an owner; that takes a reader.
 */

const { measure, paint } = await paperInNode();
const all = answeredExamples();
/** Sheets that a normal case takes; one more where so many limits are not inside. */
const SHEET_PAGES = 2;
const MANY_OPEN = 10;
/** Bench and whole tree on one, the saddle ridden and its assumptions on the next. */
const CALCULATION_PAGES = 3;
const FLAGGED = ["vet-before-riding", "vet-before-altering"];

test.each(all.map((one) => [one.name, one] as const))("%s: papers without a slip", async (_, one) => {
  for (const kind of PAPER_KINDS) {
    const document = paperOf(kind, one, measure);
    const flagged = FLAGGED.includes(one.answer.answers.horse.id);
    const withoutFit = kind === "letter" || kind === "sheet";
    if (document === undefined) {
      expect([withoutFit, flagged || kind === "calculation"]).toEqual([false, true]);
      continue;
    }
    if (!withoutFit) expect(flagged).toBe(false);
    const said = saidOn(document);
    expect(said).not.toMatch(/undefined|NaN|Infinity|\[object|HORSE|\b1000000\b|\b1e\+?6\b/);
    if (kind === "letter") expect(document.pages.length).toBeLessThanOrEqual(LETTER_PAGES);
    if (kind === "sheet") expect(document.pages.length).toBeLessThanOrEqual(sheetPages(one));
    if (kind === "calculation") expect(document.pages.length).toBeLessThanOrEqual(CALCULATION_PAGES);
    // Every sign has its glyph: painting refuses one that is missing.
    expect((await paint(document)).length).toBeGreaterThan(1000);
  }
});

test.each(all.map((one) => [one.name, one] as const))(
  "%s: the letter answers what an owner asks",
  (_, one) => {
    const document = paperOf("letter", one, measure);
    if (document === undefined) throw new Error("no letter");
    const said = saidOn(document);
    const { horse, saddle, work, permitted } = one.answer.answers;
    for (const heading of [
      "The question",
      "May you ride?",
      "What will be done",
      "What will not",
      "When we meet next",
    ])
      expect(said).toContain(heading);
    expect(said).toContain("Nothing is begun before you have agreed to it.");
    expect(said).toContain(one.answer.horse);
    // Nobody is told to ride where a stop stands on the same paper, or a gate is shut.
    const may = said.includes("No reason was seen today not to ride");
    expect([may && !permitted.includes("ride"), may && said.includes("STOP")]).toEqual([false, false]);
    const not = said.slice(said.indexOf("What will not"), said.indexOf("When we meet next"));
    expect(not).toMatch(NOT[work.id] ?? /./);
    if (saddle.id.startsWith("out-")) expect(not).toContain("Nobody rides in this saddle");
    if (horse.id.startsWith("vet-")) expect(said).toContain("vet");
  },
);

function sheetPages({ answer: { answers, panel, plates } }: Answered): number {
  const { open } = limitsOf(answers.limitsToday, answers.limitsAfter);
  // What the maker's people are asked for takes room too.
  const makers = answers.work.id === "heat-by-maker";
  const more = [open.length > MANY_OPEN, panel?.work !== undefined, plates !== undefined, makers];
  return SHEET_PAGES + more.filter(Boolean).length;
}

/** What must stand in "What will not", by the work answer. */
const NOT: { readonly [work: string]: RegExp } = {
  "not-now": /nothing is done to the saddle .*the panel included, before the vet/i,
  "leave-as-found": /Nothing is done to the saddle, the panel included, before/,
  nothing: /The head stays as it is\./,
  "set-up": /The head stays as it is\./,
  panel: /The head stays as it is\./,
  "alter-dressed": /not moved further than agreed.*never moved by heat.*never on one side alone/,
  "set-back": /not moved further than agreed.*never moved by heat.*never on one side alone/,
  "other-saddle": /This head is not altered\./,
  spent: /This head is not altered\./,
  "measure-more": /Nothing is altered until/,
};

test("a letter goes to the owner by name where it is known", () => {
  const [one] = all;
  if (one === undefined) throw new Error("no example");
  const named = { ...one, survey: { ...one.survey, visit: { ...one.survey.visit, owner: "Ms Vey" } } };
  const document = paperOf("letter", named, measure);
  expect(document && saidOn(document)).toContain("Dear Ms Vey,");
});

test("every rule that is no limit has its sentence for an owner", () => {
  for (const { id } of RULES) expect([id, ownerReason(id)]).toEqual([id, expect.any(String)]);
});

test.each(all.map((one) => [one.name, one] as const))(
  "%s: a saddle that does not come to rest is said so, with its share",
  (_, one) => {
    const document = paperOf("sheet", one, measure);
    const said = document ? saidOn(document) : "";
    const { today, draws } = one.answer;
    if (today?.rest === undefined) return;
    expect(said).toContain(
      today.rest.ok
        ? `Today: it comes to rest (least stiffness ${today.rest.smallestEigenvalue.toFixed(0)} N/mm; ${Math.abs(today.rest.unbalancedXN).toFixed(0)} N`
        : "Today: In the calculation it does not",
    );
    const hardest = one.answer.placement?.today?.hardest;
    if (hardest) expect(said).toContain(`carries ${hardest.meanKPa.toFixed(1)} kPa at most`);
    expect(said).toContain(
      `${Math.round((draws.resting.today ?? Number.NaN) * draws.count)} of ${draws.count}`,
    );
    expect(said).toContain(`${draws.count} draws of ${draws.of}`);
  },
);

test.each(all.map((one) => [one.name, one] as const))(
  "%s: the spread on the sheet is as long as it says",
  (_, one) => {
    const document = paperOf("sheet", one, measure);
    if (document === undefined) throw new Error("no sheet");
    const items = itemsOf(document);
    const figure = items.find((item) => item.name === "spread, front, figure");
    const line = items.find((item) => item.name === "spread, front");
    const scale = items.find((item) => item.kind === "text" && /^front, 1 : \d+$/.test(item.words));
    if (figure?.kind !== "text" || line?.kind !== "line" || scale?.kind !== "text") return;
    const [a, b] = line.points;
    const drawn = ((b?.[0] ?? 0) - (a?.[0] ?? 0)) * Number(scale.words.split(" ").at(-1));
    const off = Math.abs(drawn / Number.parseFloat(figure.words) - 1);
    expect(off).toBeLessThan(0.01);
  },
);

/*
 * The template's outline against the wanted head by another way: its tips by the spread of that face, its arms as
 * straight lines at the half-angle, near the mirror of off.
 */
test.each(all.map((one) => [one.name, one] as const))("%s: the template is the wanted head", (_, one) => {
  const data = templateDataOf(one.survey, one.answer);
  const { wanted } = one.answer;
  if (data === undefined || wanted === undefined) return;
  const spread =
    data.face === "inside" ? wanted.head.spreadMm : outsideSpreadMm(wanted.head, wanted.today.thicknessMm);
  const tip = data.wanted.off.at(-1) ?? [0, 0];
  const above = data.wanted.off.at(-2) ?? [0, 0];
  expect(2 * tip[0]).toBeCloseTo(spread, 6);
  expect(data.spread.value).toBeCloseTo(spread, 6);
  expect((tip[0] - above[0]) / (above[1] - tip[1])).toBeCloseTo(tan(wanted.head.halfAngleRad), 6);
  const mirrored = data.wanted.off.map(([y, z]): At => [-y, z]);
  data.wanted.near.forEach(([y, z], i) => {
    expect(y).toBeCloseTo(mirrored[i]?.[0] ?? Number.NaN, 9);
    expect(z).toBeCloseTo(mirrored[i]?.[1] ?? Number.NaN, 9);
  });
  const document = paperOf("template", one, measure);
  if (document === undefined) throw new Error("no template");
  const said = saidOn(document);
  for (const word of [
    data.face,
    "front, at the tree points",
    one.survey.visit.date,
    one.answer.horse,
    "near side (left)",
    "off side (right)",
  ])
    expect(said).toContain(word);
  document.pages.forEach((page, i) => {
    const words = page.items.flatMap((item) => (item.kind === "text" ? [item.words] : []));
    const labels = words.filter((word) => word.includes(`sheet ${i + 1} of ${document.pages.length}`));
    expect(labels).toHaveLength(document.pages.length === 1 ? 0 : 1);
  });
});
