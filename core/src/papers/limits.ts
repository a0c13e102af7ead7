import type { JudgedLimit } from "../judge/judgement.ts";
import { limitRule } from "../judge/limits/all.ts";
import { rangeSays } from "../judge/limits/range-words.ts";
import type { InsideRow, Judged, LimitRow, SheetLimits } from "../report/sheet-data.ts";
import { SIDES, STATIONS } from "../terms/places.ts";
import { limitName } from "./limit-names.ts";

interface Pair {
  readonly today: JudgedLimit;
  readonly after: JudgedLimit | undefined;
}

/** Every limit in the order of the work: what is not inside in full, what is inside by short names, what was not read by name only. */
export function limitsOf(today: readonly JudgedLimit[], after: readonly JudgedLimit[]): SheetLimits {
  const keyOf = ({ rule, at }: JudgedLimit) => `${rule} ${at}`;
  const later = new Map(after.map((limit) => [keyOf(limit), limit]));
  const pairs = today.map((limit): Pair => ({ today: limit, after: later.get(keyOf(limit)) }));
  const read = pairs.filter((pair) => isRead(pair.today) || isRead(pair.after));
  return {
    open: read.filter((pair) => !isInside(pair)).map(row),
    inside: insideRows(read.filter(isInside).map((pair) => pair.today)),
    notRead: [
      ...new Set(
        pairs
          .filter((pair) => !read.includes(pair))
          .map(({ today: { rule, at } }) => limitName(rule, placeOf(at))),
      ),
    ],
    notReadCount: pairs.length - read.length,
  };
}

const isRead = (limit: JudgedLimit | undefined): boolean => limit?.value !== undefined;
const isInside = ({ today, after }: Pair): boolean =>
  today.outcome === "inside" && (after?.outcome ?? "inside") === "inside";

function row({ today, after }: Pair): LimitRow {
  const rule = limitRule(today.rule);
  return {
    rule: `${limitName(today.rule, today.at)}: ${rangeSays(rule.inside, rule.unit)}`,
    unit: rule.unit,
    today: judged(today),
    after: after && judged(after),
  };
}

function judged({ value, u, outcome }: JudgedLimit): Judged {
  return value === undefined ? { figure: undefined, outcome: "not-read" } : { figure: { value, u }, outcome };
}

/** Near and off of one place share a row, and so do the stations of what has no sides. */
function insideRows(limits: readonly JudgedLimit[]): readonly InsideRow[] {
  const rows = new Map<string, JudgedLimit[]>();
  for (const limit of limits) {
    const name = limitName(limit.rule, placeOf(limit.at));
    rows.set(name, [...(rows.get(name) ?? []), limit]);
  }
  return [...rows].map(([name, of]) => ({
    name: `${name}${partsSay(of.map(({ at }) => partOf(at) ?? ""))}`,
    unit: limitRule(of[0]?.rule ?? "").unit,
    figures: of.flatMap(({ value, u }) => (value === undefined ? [] : [{ value, u }])),
  }));
}

/** Two sides and three stations need no names: the table says their order. */
function partsSay(parts: readonly string[]): string {
  const said = parts.join(" / ");
  return said === "" || said === SIDES.join(" / ") || said === STATIONS.join(" / ") ? "" : ` (${said})`;
}

/** The side a limit is of, else its station. */
function partOf(at: string): string | undefined {
  const parts = at.split(", ");
  return SIDES.find((side) => parts.includes(side)) ?? STATIONS.find((station) => parts.includes(station));
}

/** A limit's place without that. */
function placeOf(at: string): string {
  const part = partOf(at);
  return at
    .split(", ")
    .filter((one) => one !== part)
    .join(", ");
}
