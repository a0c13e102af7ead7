import { CASE_BYTES_MAX } from "./case.ts";
import { type Problem, problemsOf, shown } from "./problem.ts";
import { readJson } from "./read-json.ts";
import { STOCK_FORMAT, STOCK_PATH, STOCK_VERSION, type Stock, stockSchema } from "./stock.ts";

export type StockRead =
  | { readonly ok: true; readonly stock: Stock }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Reads the text of a stock file: the whole stock, or every problem found; never a part of it, never an exception. */
export function readStock(text: string): StockRead {
  if (text.length > CASE_BYTES_MAX)
    return refused([
      { where: "the whole file", read: "too much", allowed: `at most ${CASE_BYTES_MAX / 1e6} MB` },
    ]);
  const json = readJson(text);
  if (!json.ok)
    return refused(
      json.faults.map(({ line, column, read, allowed }) => ({
        where: `line ${line}, column ${column}`,
        read,
        allowed,
      })),
    );
  const strange = otherFormat(json.value);
  if (strange) return refused([strange]);
  const parsed = stockSchema.safeParse(json.value);
  return parsed.success
    ? { ok: true, stock: parsed.data }
    : refused(problemsOf(parsed.error.issues, json.value, STOCK_PATH));
}

const refused = (problems: readonly Problem[]): StockRead => ({ ok: false, problems });

function otherFormat(value: unknown): Problem | undefined {
  const { format, version } =
    typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
  if (format !== STOCK_FORMAT)
    return {
      where: "format",
      read: shown(format),
      allowed: `"${STOCK_FORMAT}"; this is not a stock of plates`,
    };
  return version === STOCK_VERSION
    ? undefined
    : { where: "version", read: shown(version), allowed: `the version ${STOCK_VERSION}` };
}
