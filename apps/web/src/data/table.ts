import type { Practice } from "../practice/practice.ts";
import { CSV_LIMITS, type Refusal, type RowIn } from "../records.ts";

/** Bytes that one letter takes in UTF-8 at most (RFC 3629). */
const MOST_BYTES_A_LETTER = 4;

type TextRead = { readonly ok: true; readonly text: string } | ({ readonly ok: false } & Refusal);

/** A table's text. Any other alphabet than UTF-8 is refused: its names would come out wrong, and nobody would notice. */
export async function tableText(file: Blob): Promise<TextRead> {
  const most = CSV_LIMITS.letters * MOST_BYTES_A_LETTER;
  const where = "the whole table";
  if (file.size > most) return { ok: false, where, read: `${file.size} bytes`, allowed: `at most ${most}` };
  try {
    const text = new TextDecoder("utf-8", { fatal: true }).decode(await file.arrayBuffer());
    return { ok: true, text };
  } catch {
    return { ok: false, where, read: "letters that are not UTF-8", allowed: "a table saved as CSV in UTF-8" };
  }
}

/** Each row as a visit of its own, in their order; how many were begun, where the device ran full before the last. */
export async function beginRows(practice: Practice, rows: readonly RowIn[]): Promise<number> {
  let begun = 0;
  try {
    for (const { statements } of rows) {
      await practice.begin(statements);
      begun += 1;
    }
  } catch {
    // The saved line says why.
  }
  return begun;
}
