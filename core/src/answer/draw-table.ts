import { spreadOf } from "../engine/quantile.ts";
import type { MovedDoubt } from "./follows.ts";

/** Values of every figure in a range of draws; NaN where a draw gave none. Index 0 is draw `from`. */
export interface DrawTable {
  readonly from: number;
  readonly to: number;
  readonly values: { readonly [key: string]: readonly number[] };
}

/** Ranges put together by their index, so that who drew which makes no difference. */
export function joined(tables: readonly DrawTable[]): DrawTable {
  const inOrder = [...tables].sort((a, b) => a.from - b.from);
  const keys = [...new Set(inOrder.flatMap((table) => Object.keys(table.values)))].sort();
  const column = (key: string) =>
    inOrder.flatMap(
      (table) => table.values[key] ?? Array.from({ length: table.to - table.from }, () => Number.NaN),
    );
  return {
    from: inOrder[0]?.from ?? 0,
    to: inOrder.at(-1)?.to ?? 0,
    values: Object.fromEntries(keys.map((key) => [key, column(key)])),
  };
}

/** Half of the central 95 % of a figure's draws; undefined where there are too few to tell. */
export function doubtOf(table: DrawTable, key: string): number | undefined {
  const drawn = (table.values[key] ?? []).filter((value) => !Number.isNaN(value));
  return drawn.length < LEAST_DRAWN ? undefined : spreadOf(drawn);
}
const LEAST_DRAWN = 20;

/** Part of the draws in which the saddle came to rest; undefined where rest was not computed. */
export function restingPart(table: DrawTable, name: string): number | undefined {
  const drawn = table.values[`${name} rests`];
  return drawn && drawn.reduce((sum, one) => sum + (Number.isNaN(one) ? 0 : one), 0) / drawn.length;
}

/** Doubt of what follows from the setting of that name, `scale` times what was drawn. */
export function movedDoubt(table: DrawTable, name: string, scale: number): MovedDoubt {
  const of = (key: string) => {
    const u = doubtOf(table, `moved ${name} ${key}`);
    return u === undefined ? undefined : u * scale;
  };
  return {
    clearanceMm: of("clearanceMm"),
    besideMm: of("besideMm"),
    seatDeg: of("seatDeg"),
    channelMm: { front: of("front"), mid: of("mid"), rear: of("rear") },
    spreadMm: of("spreadMm"),
    halfTurnDeg: of("halfTurnDeg"),
    frontRiseMm: of("frontRiseMm"),
    rearRiseMm: of("rearRiseMm"),
  };
}
