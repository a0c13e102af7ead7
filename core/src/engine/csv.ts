/*
 * Tables as text. Published: RFC 4180 (2005), lines end with CR LF, every cell in quotes, quotes doubled; RFC 3629 (UTF-8), with its
 * mark in front, without which many programs take another alphabet. A cell that a spreadsheet would work out as a formula is
 * defused as the OWASP Foundation's page "CSV Injection" advises (2024, from memory): quotes around it and an apostrophe before it.
 */

export type Cell = string | number | undefined;

/** Signs that no eye sees; a spreadsheet may pass over them on its way to a formula. */
const UNSEEN = "\\s\\u00ad\\u200b-\\u200f\\u2028-\\u202e\\u2060-\\u2069\\ufeff";
/** = + - @ and their full-width twins, after what cannot be seen; tab and line ends by themselves; with any apostrophes before. */
const FORMULA = new RegExp(`^'*(?:[\\t\\r\\n]|[${UNSEEN}]*[=+\\-@\uff1d\uff0b\uff0d\uff20])`);
/** A plain number is no formula, and stays a number: a reading below zero comes back as it was. */
const PLAIN_NUMBER = /^-?\d+(?:\.\d+)?$/;

/** A text that begins as a formula gets one apostrophe in front, whatever stands there already: so that `undefused` gives it back. */
export const defused = (text: string): string =>
  FORMULA.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;

/** What `defused` was given. */
export const undefused = (cell: string): string =>
  cell.startsWith("'") && FORMULA.test(cell) ? cell.slice(1) : cell;

const MARK = "\ufeff";

/** What a table begins with: the names of its columns. */
export const csvHead = (names: readonly string[]): string => `${MARK}${csvRow(names)}`;

/** One row of cells, with its end. */
export const csvRow = (cells: readonly Cell[]): string =>
  `${cells.map((cell) => `"${shown(cell).replaceAll('"', '""')}"`).join(",")}\r\n`;

function shown(cell: Cell): string {
  if (cell === undefined) return "";
  return typeof cell === "number" ? String(cell) : defused(cell);
}

/** What one table may hold that comes from elsewhere. Working limits, no source: above what a person looks through row by row. */
export const CSV_LIMITS = { letters: 1_000_000, rows: 2000, cells: 60, lettersInCell: 5000 } as const;

export type CsvRead =
  | { readonly ok: true; readonly rows: readonly (readonly string[])[] }
  | { readonly ok: false; readonly where: string; readonly read: string; readonly allowed: string };

const SEPARATORS = [",", ";", "\t"] as const;

/**
 * Rows of a table, cells parted by ";", "," or tab: by the one that stands most often in the first line outside quotes. Empty lines
 * are passed over; the formula's apostrophe is taken off. Refused whole: more than the limits, quotes that do not close, and
 * signs behind a closing quote.
 */
export function readCsv(text: string): CsvRead {
  if (text.length > CSV_LIMITS.letters)
    return refused("the whole table", `${text.length} letters`, `at most ${CSV_LIMITS.letters}`);
  const body = text.startsWith(MARK) ? text.slice(1) : text;
  const separator = separatorOf(body);
  const rows: string[][] = [];
  for (let at = 0; at < body.length; ) {
    const taken = takeRow(body, at, separator, rows.length + 1);
    if ("ok" in taken) return taken;
    at = taken.next;
    if (taken.row.length > 1 || taken.row[0] !== "") rows.push(taken.row);
    if (rows.length > CSV_LIMITS.rows)
      return refused("the whole table", `more than ${CSV_LIMITS.rows} rows`, `at most ${CSV_LIMITS.rows}`);
  }
  return { ok: true, rows };
}

const refused = (where: string, read: string, allowed: string): CsvRead & { readonly ok: false } => ({
  ok: false,
  where,
  read,
  allowed,
});

function separatorOf(body: string): string {
  const [first = ""] = body.replace(/"(?:[^"]|"")*"/g, "").split(/[\r\n]/, 1);
  const counts = SEPARATORS.map((one) => first.split(one).length);
  return SEPARATORS[counts.indexOf(Math.max(...counts))] ?? ",";
}

type Taken = { readonly row: string[]; readonly next: number };

function takeRow(
  body: string,
  from: number,
  separator: string,
  number: number,
): Taken | ReturnType<typeof refused> {
  const row: string[] = [];
  const where = `row ${number}`;
  for (let at = from; ; at += 1) {
    const cell = body[at] === '"' ? takeQuoted(body, at) : takeBare(body, at, separator);
    if (cell === undefined) return refused(where, "a quote that is not closed", "every quote closed");
    if (cell.text.length > CSV_LIMITS.lettersInCell)
      return refused(where, `${cell.text.length} letters in one cell`, `at most ${CSV_LIMITS.lettersInCell}`);
    row.push(undefused(cell.text));
    if (row.length > CSV_LIMITS.cells)
      return refused(where, `more than ${CSV_LIMITS.cells} cells`, `at most ${CSV_LIMITS.cells}`);
    at = cell.next;
    const sign = body[at];
    if (sign === separator) continue;
    if (sign === undefined || sign === "\n") return { row, next: at + 1 };
    if (sign === "\r") return { row, next: at + (body[at + 1] === "\n" ? 2 : 1) };
    return refused(
      where,
      `"${body.slice(at, at + 20)}" behind a closing quote`,
      "a separator or the line's end",
    );
  }
}

interface TakenCell {
  readonly text: string;
  /** Where the cell's last sign was passed. */
  readonly next: number;
}

function takeQuoted(body: string, from: number): TakenCell | undefined {
  for (let at = body.indexOf('"', from + 1); at >= 0; at = body.indexOf('"', at + 2)) {
    if (body[at + 1] !== '"') return { text: body.slice(from + 1, at).replaceAll('""', '"'), next: at + 1 };
  }
  return undefined;
}

function takeBare(body: string, from: number, separator: string): TakenCell {
  let at = from;
  while (at < body.length && body[at] !== separator && body[at] !== "\r" && body[at] !== "\n") at += 1;
  return { text: body.slice(from, at), next: at };
}
