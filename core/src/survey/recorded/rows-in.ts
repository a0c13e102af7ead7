import { readCsv } from "../../engine/csv.ts";
import { emptyCase } from "../answer-question.ts";
import type { CaseFile } from "../case.ts";
import { shown } from "../problem.ts";
import { answerAsStatements, type Statement } from "./statements.ts";

/*
 * A table of horses and owners, such as a spreadsheet writes: each row would begin a visit of that horse, its names typed already. A
 * horse has no record of its own that could stand without a visit, so a visit is the least that a row can become.
 */

/** What a column may be called, in English and German, and the place that it fills. */
const COLUMNS = [
  { name: "horse", also: ["pferd"], at: "horses[0].name" },
  { name: "owner", also: ["besitzer"], at: "visit.owner" },
  { name: "yard", also: ["stall"], at: "visit.place" },
  { name: "rider", also: ["reiter"], at: "rider.name" },
  { name: "saddle", also: ["sattel"], at: "saddle.name" },
  { name: "day", also: ["tag"], at: "visit.date" },
  { name: "asked", also: ["gefragt"], at: "visit.asked" },
] as const;
type Column = (typeof COLUMNS)[number];

/** Names of the columns, in English. */
export const ROW_COLUMNS: readonly string[] = COLUMNS.map(({ name }) => name);

/** What one row would become; or why not. */
export interface RowIn {
  /** Row of the table, the names of the columns being row 1. */
  readonly row: number;
  /** What stands in its known columns, by the column's English name. */
  readonly reads: Readonly<Record<string, string>>;
  readonly statements: readonly Statement[];
  readonly refused: { readonly where: string; readonly read: string; readonly allowed: string } | undefined;
}

export type RowsIn =
  | { readonly ok: true; readonly rows: readonly RowIn[]; readonly notTaken: readonly string[] }
  | { readonly ok: false; readonly where: string; readonly read: string; readonly allowed: string };

/** A horse that is here already, so that a table brought in twice makes nothing twice. */
export interface HorseHere {
  readonly horse: string;
  readonly yard: string;
}

/** Nothing is written: this only says what would be. day: yyyy-mm-dd, for rows that have none of their own. */
export function rowsIn(text: string, here: readonly HorseHere[], day: string): RowsIn {
  const read = readCsv(text);
  if (!read.ok) return read;
  const [names = [], ...rows] = read.rows;
  const columns = names.map(columnOf);
  const twice = columns.find((one, at) => one !== undefined && columns.indexOf(one) < at);
  if (twice) return { ok: false, where: "row 1", read: `"${twice.name}" twice`, allowed: "each column once" };
  if (!columns.some((one) => one?.name === "horse"))
    return {
      ok: false,
      where: "row 1",
      read: shown(names.join(", ")),
      allowed: `the names of the columns, "horse" among them: ${ROW_COLUMNS.join(", ")}`,
    };
  const known = new Set(here.map(keyOf));
  return {
    ok: true,
    rows: rows.map((cells, at) => rowIn(at + 2, cells, columns, known, day)),
    notTaken: names.filter((name, at) => columns[at] === undefined && name.trim() !== ""),
  };
}

function columnOf(name: string): Column | undefined {
  const plain = name.trim().toLowerCase();
  return COLUMNS.find((one) => one.name === plain || one.also.some((other) => other === plain));
}

const keyOf = ({ horse, yard }: HorseHere): string =>
  JSON.stringify([horse.trim().toLowerCase(), yard.trim().toLowerCase()]);

function rowIn(
  row: number,
  cells: readonly string[],
  columns: readonly (Column | undefined)[],
  known: Set<string>,
  day: string,
): RowIn {
  const typed = columns.flatMap((column, at) => {
    const text = (cells[at] ?? "").trim();
    return column === undefined || text === "" ? [] : [{ column, text }];
  });
  const reads = Object.fromEntries(typed.map(({ column, text }) => [column.name, text]));
  const no = (refused: RowIn["refused"]): RowIn => ({ row, reads, statements: [], refused });
  const where = `row ${row}`;
  if (cells.length > columns.length)
    return no({ where, read: `${cells.length} cells`, allowed: `the ${columns.length} that row 1 names` });
  const { horse = "", yard = "" } = reads;
  if (horse === "") return no({ where, read: "no horse", allowed: "the name of a horse" });
  if (known.has(keyOf({ horse, yard })))
    return no({
      where,
      read: `${shown(horse)}, ${yard === "" ? "no yard" : shown(yard)}: here already`,
      allowed: "a horse of another name or yard",
    });
  const said = statementsOf(typed, day);
  if ("refused" in said) return no({ ...said.refused, where: `${where}, ${said.column}` });
  known.add(keyOf({ horse, yard }));
  return { row, reads, statements: said.statements, refused: undefined };
}

type Typed = { readonly column: Column; readonly text: string };
type Said =
  | { readonly statements: readonly Statement[] }
  | { readonly refused: NonNullable<RowIn["refused"]>; readonly column: string };

/** Each cell is taken as if it were typed at its question: by the same schema. */
function statementsOf(typed: readonly Typed[], day: string): Said {
  const statements: Statement[] = [{ at: "visit.date", value: day }];
  let draft: CaseFile = emptyCase("Visit", day);
  for (const { column, text } of typed) {
    const answered = answerAsStatements(draft, column.at, text);
    if (!answered.ok) return { refused: answered.problem, column: column.name };
    draft = answered.draft;
    if (column.at === "visit.date") statements.shift();
    statements.push(...answered.statements);
  }
  return { statements };
}
