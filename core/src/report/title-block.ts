import { moved } from "../engine/drawing/block.ts";
import { box, words } from "../engine/drawing/marks.ts";
import type { At, Item, Measure } from "../engine/drawing.ts";
import { fitted } from "./fitted.ts";
import { SMALL, TEXT } from "./looks.ts";
import type { SheetFacts } from "./sheet-facts.ts";

const ROW = 11;
export const TITLE_BLOCK_HIGH = 2 * ROW;
/** Signs of the input's hash that are printed: enough to find the readings again among one practice's. */
const HASH_SIGNS = 12;

interface Cell {
  readonly name: string;
  readonly said: string;
  readonly width: number;
  readonly figure?: boolean;
}

/** Who, what, when, by whom, from which readings, which sheet of how many. */
export function titleBlock(
  facts: SheetFacts,
  sheet: number,
  of: number,
  at: At,
  width: number,
  measure: Measure,
): readonly Item[] {
  const part = (share: number) => width * share;
  const upper: readonly Cell[] = [
    { name: "case", said: facts.caseTitle, width: part(0.4) },
    { name: "horse", said: facts.horse, width: part(0.3) },
    { name: "saddle", said: facts.saddle, width: part(0.3) },
  ];
  const lower: readonly Cell[] = [
    { name: "date", said: facts.date, width: part(0.16), figure: true },
    { name: "measured and drawn by", said: facts.hand || "not said", width: part(0.24) },
    { name: "engine", said: facts.engineVersion, width: part(0.2), figure: true },
    { name: "readings", said: facts.inputHash.slice(0, HASH_SIGNS), width: part(0.24), figure: true },
    { name: "sheet", said: `${sheet} of ${of}`, width: part(0.16), figure: true },
  ];
  return [upper, lower].flatMap((cells, i) => row(cells, [at[0], at[1] + i * ROW], measure));
}

function row(cells: readonly Cell[], [x, y]: At, measure: Measure): readonly Item[] {
  let left = x;
  return cells.flatMap((cell) => {
    const here = left;
    left += cell.width;
    const look = cell.figure ? { ...TEXT, face: "figure" as const, size: 2.9 } : { ...TEXT, figures: false };
    const said = fitted(`title block, ${cell.name}`, cell.said, look, cell.width - 3, ROW - 4.2, measure);
    return [
      box(`title block, ${cell.name}, cell`, "thin", [here, y], cell.width, ROW),
      words(`title block, ${cell.name}, name`, { ...SMALL, size: 2.1 }, [here + 1.5, y + 2.9], cell.name),
      ...moved(said.items, [here + 1.5, y + 4.2]),
    ];
  });
}
