import { abreast, type Block, EMPTY, moved, stacked } from "../engine/drawing/block.ts";
import { line } from "../engine/drawing/marks.ts";
import { type Look, paragraph } from "../engine/drawing/paragraph.ts";
import type { Measure } from "../engine/drawing.ts";
import { ANSWER, HEADING, SMALL, TEXT } from "./looks.ts";
import type { AnswerWords, SheetData } from "./sheet-data.ts";

const GUTTER = 6;
const GAP = 1.3;
/** Part of the width that a column may take: the longest answer gets the widest one. */
const SHARES = [0.2, 0.22, 0.24, 0.26, 0.3, 0.34, 0.38, 0.42, 0.46, 0.5, 0.54, 0.58] as const;
/** Names of missing readings that stand in one paragraph. */
const TOGETHER = 12;
const REASON: Look = { ...TEXT, size: 2.9, leading: 3.7 };

/** Horse, saddle, work in the order of the work: three columns, or one under the other where they are too long for a page. */
export function answers(data: SheetData, width: number, height: number, measure: Measure): readonly Block[] {
  const columns = [
    answer("Horse", data.horse, [], measure),
    answer("Saddle", data.saddle, [], measure),
    answer("Work", data.work, data.also, measure),
  ];
  const open = width - 2 * GUTTER;
  const set = columns.map((column) =>
    SHARES.map((share) => ({ share, block: stacked(column(share * open), GAP) })),
  );
  const chosen = lowest(set);
  const starts = [
    0,
    chosen[0].share * open + GUTTER,
    (chosen[0].share + chosen[1].share) * open + 2 * GUTTER,
  ];
  const block = abreast(chosen.map((one, i) => ({ x: starts[i] ?? 0, block: one.block })));
  if (block.height > height) return columns.flatMap((column) => column(width));
  const rules = starts.slice(1).map((x) =>
    line("answers, rule", "thin", [
      [x - GUTTER / 2, 0],
      [x - GUTTER / 2, block.height],
    ]),
  );
  return [{ items: [...block.items, ...rules], height: block.height }];
}

interface Column {
  readonly share: number;
  readonly block: Block;
}

/** The three widths, not wider together than the sheet, whose tallest column is lowest. */
function lowest(set: readonly (readonly Column[])[]): readonly [Column, Column, Column] {
  const none: Column = { share: 1 / 3, block: EMPTY };
  const [first = [], second = [], third = []] = set;
  let best: readonly [Column, Column, Column] = [none, none, none];
  let least = Number.POSITIVE_INFINITY;
  for (const a of first)
    for (const b of second)
      for (const c of third) {
        const high = Math.max(a.block.height, b.block.height, c.block.height);
        if (a.share + b.share + c.share > 1 || high >= least) continue;
        best = [a, b, c];
        least = high;
      }
  return best;
}

/** One answer's parts, for a width. */
function answer(of: string, said: AnswerWords, also: readonly string[], measure: Measure) {
  return (width: number): readonly Block[] => {
    const set = (name: string, text: string, look: Look) =>
      paragraph(`${of}, ${name}`, text, look, width, measure);
    const parts = [
      stacked([set("heading", of, SMALL), set("answer", said.says, ANSWER)], GAP),
      ...also.map((one) => set("also", `Also: ${one}`, REASON)),
      ...bySource(said.because).map(({ says, source }) =>
        stacked([...says.map((one) => set("reason", one, REASON)), set("source", source, SMALL)], 0.7),
      ),
      stacked([set("next step, name", "Next step", HEADING), set("next step", said.nextStep, REASON)]),
      stacked([set("who, name", "Who may do it", HEADING), set("who", said.who, REASON)]),
    ];
    return parts.filter((block) => block.height > 0);
  };
}

/** Reasons that follow each other and have one source name it once. */
function bySource(
  because: AnswerWords["because"],
): readonly { readonly says: readonly string[]; readonly source: string }[] {
  const groups: { says: string[]; source: string }[] = [];
  for (const { says, source } of because) {
    const last = groups.at(-1);
    if (last?.source === source) last.says.push(says);
    else groups.push({ says: [says], source });
  }
  return groups;
}

/** The next reading, and what was missing under it. */
export function stillToRead(data: SheetData, width: number, measure: Measure): readonly Block[] {
  const named = (heading: string, said: string) =>
    abreast([
      {
        x: 0,
        block: paragraph(
          `${heading}, heading`,
          heading,
          { ...HEADING, leading: REASON.leading },
          NAME_WIDE - 3,
          measure,
        ),
      },
      { x: NAME_WIDE, block: paragraph(heading, said, REASON, width - NAME_WIDE, measure) },
    ]);
  const missing = data.missing.length > 0 ? data.missing : ["Nothing that these answers use."];
  const chunks = Array.from({ length: Math.ceil(missing.length / TOGETHER) }, (_, i) =>
    missing.slice(i * TOGETHER, (i + 1) * TOGETHER),
  );
  const rule = line("still to read, rule", "thin", [
    [0, 0],
    [width, 0],
  ]);
  const next = named("To read next", data.next ?? "No single reading would change an answer.");
  return [
    { items: [rule, ...moved(next.items, [0, 1.5])], height: next.height + 2 },
    ...chunks.map((chunk, i) => named(i === 0 ? "What was missing" : "", chunk.join("; "))),
  ];
}

/** Room for a heading that stands beside its words, mm. */
const NAME_WIDE = 34;
