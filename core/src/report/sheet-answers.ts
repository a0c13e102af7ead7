import { abreast, type Block, moved, stacked } from "../engine/drawing/block.ts";
import { line } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { ANSWER, HEADING, SMALL, TEXT } from "./looks.ts";
import type { AnswerWords, SheetData } from "./sheet-data.ts";

const GUTTER = 6;
const GAP = 1.6;
/** A longer list of what was missing runs on as one paragraph. */
const LIST_MOST = 6;

/** Horse, saddle, work in the order of the work: three columns, or one under the other where they are too long for a page. */
export function answers(data: SheetData, width: number, height: number, measure: Measure): readonly Block[] {
  const wide = (width - 2 * GUTTER) / 3;
  const columns = all(data, wide, measure).map((parts) => stacked(parts, GAP));
  const block = abreast(columns.map((one, i) => ({ x: i * (wide + GUTTER), block: one })));
  if (block.height > height) return all(data, width, measure).flat();
  const rules = [1, 2].map((i) => {
    const x = i * (wide + GUTTER) - GUTTER / 2;
    return line("answers, rule", "thin", [
      [x, 0],
      [x, block.height],
    ]);
  });
  return [{ items: [...block.items, ...rules], height: block.height }];
}

function all(data: SheetData, width: number, measure: Measure): readonly (readonly Block[])[] {
  return [
    answer("Horse", data.horse, [], width, measure),
    answer("Saddle", data.saddle, [], width, measure),
    answer("Work", data.work, data.also, width, measure),
  ];
}

function answer(
  of: string,
  said: AnswerWords,
  also: readonly string[],
  width: number,
  measure: Measure,
): readonly Block[] {
  const set = (name: string, text: string, look: typeof TEXT) =>
    paragraph(`${of}, ${name}`, text, look, width, measure);
  const reasons = said.because.map((one) =>
    stacked([set("reason", one.says, TEXT), set("source", one.source, SMALL)]),
  );
  const parts = [
    stacked([set("heading", of, SMALL), set("answer", said.says, ANSWER)], GAP),
    ...also.map((one) => set("also", `Also: ${one}`, TEXT)),
    ...reasons,
    stacked([set("next step, name", "Next step", HEADING), set("next step", said.nextStep, TEXT)]),
    stacked([set("who, name", "Who may do it", HEADING), set("who", said.who, TEXT)]),
  ];
  return parts.filter((block) => block.height > 0);
}

/** The next reading and what was missing, side by side. */
export function stillToRead(data: SheetData, width: number, measure: Measure): Block {
  const half = (width - GUTTER) / 2;
  const list = (heading: string, says: readonly string[]): Block => {
    const set = says.map((said) => paragraph(heading, said, TEXT, half, measure));
    return stacked([paragraph(`${heading}, heading`, heading, HEADING, half, measure), ...set], 0.4);
  };
  const named = data.missing.length > LIST_MOST ? [data.missing.join("; ")] : data.missing;
  const missing = named.length > 0 ? named : ["Nothing that these answers use."];
  const block = abreast([
    { x: 0, block: list("The one reading to take next", [data.next ?? "None would change an answer."]) },
    { x: half + GUTTER, block: list("What was missing", missing) },
  ]);
  const rule = line("still to read, rule", "thin", [
    [0, 0],
    [width, 0],
  ]);
  return { items: [rule, ...moved(block.items, [0, 2])], height: block.height + 3 };
}
