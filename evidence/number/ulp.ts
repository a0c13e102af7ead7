import { readFileSync } from "node:fs";

/** One line of the reference table: the arguments, the true value rounded once, and what that left over, ulp. */
export interface Point {
  readonly arguments: readonly number[];
  readonly expected: number;
  readonly rest: number;
}

const BITS = new DataView(new ArrayBuffer(8));

/** Place of a number in the row of all numbers; zero of either sign is 0, neighbours differ by 1. */
export function placeOf(x: number): bigint {
  BITS.setFloat64(0, Math.abs(x));
  const size = BITS.getBigInt64(0);
  return x < 0 ? -size : size;
}

/** The number `steps` places further. */
export function moved(x: number, steps: number): number {
  const place = placeOf(x) + BigInt(steps);
  BITS.setBigInt64(0, place < 0n ? -place : place);
  return place < 0n ? -BITS.getFloat64(0) : BITS.getFloat64(0);
}

/**
 * Distance of `found` from the true value, in units in the last place. Not a number, an infinity and the
 * sign of zero are either right (0) or wrong (Infinity).
 */
export function ulpsOff(found: number, { expected, rest }: Pick<Point, "expected" | "rest">): number {
  if (Object.is(found, expected)) return Math.abs(rest);
  if (!Number.isFinite(expected) || !Number.isFinite(found)) return Infinity;
  if (found === 0 && expected === 0) return Infinity;
  return Math.abs(Number(placeOf(found) - placeOf(expected)) - rest);
}

/** The reference table by function. */
export function readTable(): ReadonlyMap<string, readonly Point[]> {
  const file = JSON.parse(readFileSync(new URL("./table.json", import.meta.url), "utf8"));
  const { made: _, ...functions } = file as Record<string, string[]>;
  return new Map(Object.entries(functions).map(([name, lines]) => [name, lines.map(readLine)]));
}

function readLine(line: string): Point {
  const fields = line.split(" ").map(Number);
  const [expected, rest] = fields.slice(-2);
  if (expected === undefined || rest === undefined) throw new Error(`a short line in the table: ${line}`);
  return { arguments: fields.slice(0, -2), expected, rest };
}
