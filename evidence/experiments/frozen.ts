import { readFileSync } from "node:fs";
import { z } from "zod";
import { allBacks, type OnBack } from "./experiment.ts";
import { publishedTable, tableOf } from "./table.ts";

const means = z.object({ front: z.number(), middle: z.number(), rear: z.number() });
const found = z.union([
  z.strictObject({ refused: z.string() }),
  z.strictObject({ meanKPa: means, headUpDeg: z.number().optional() }),
]);
const widths = z.strictObject({ fitted: found, narrow: found, wide: found, veryWide: found });
const all = z.record(z.string(), z.strictObject({ rest: widths, walk: widths, trot: widths }));

export const FROZEN_FILE = new URL("./results.json", import.meta.url);
export const PAGE = new URL("../../docs/explanation/how-we-know.md", import.meta.url);

/** What was found when it was last frozen. */
export const frozen = (): { readonly [id: string]: OnBack } =>
  // zod's optional field may be undefined in its type; in the file it is there or not.
  JSON.parse(JSON.stringify(all.parse(JSON.parse(readFileSync(FROZEN_FILE, "utf8")))));

const digits = (_: string, value: unknown): unknown =>
  typeof value === "number" ? Number(value.toPrecision(9)) : value;

export const frozenText = (): string => `${JSON.stringify(allBacks(), digits, 1)}\n`;

/** The page with its two tables anew. */
export function pageWith(page: string, found: { readonly [id: string]: OnBack }): string {
  const put = (text: string, name: string, table: string): string => {
    const [open, close] = [`<!-- table: ${name} -->`, `<!-- end: ${name} -->`];
    const [from, to] = [text.indexOf(open), text.indexOf(close)];
    if (from < 0 || to < from) throw new Error(`the page has no place for the table ${name}`);
    return `${text.slice(0, from + open.length)}\n\n${table}\n\n${text.slice(to)}`;
  };
  return put(put(page, "twelve backs", tableOf(found)), "published widths", publishedTable());
}
