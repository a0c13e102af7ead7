import { z } from "zod";
import { parseQuantity, unitCalled, usualUnit } from "../engine/quantity/index.ts";
import { checkProfile } from "./check-profile.ts";
import { checkTrace } from "./check-trace.ts";
import type { Point } from "./crossing.ts";
import type { Fault, Unit } from "./outline-fault.ts";

type TypedPoint = [number | string, number | string];
type Check = (points: readonly Point[], unit: Unit) => readonly Fault[];

/** The coordinates people can draw: nothing of a horse's back lies further off (assumption). */
const FURTHEST_MM = 2000;

/** Points typed in a trace's own unit become mm; what is no plausible back is refused through `context`. */
export function traceInMm<T extends { unit: Unit; points: TypedPoint[]; repeats: TypedPoint[][] }>(
  trace: T,
  context: z.RefinementCtx,
): Omit<T, "points" | "repeats"> & { points: readonly Point[]; repeats: readonly (readonly Point[])[] } {
  const points = pointsInMm(trace.points, trace.unit, ["points"], checkTrace, context);
  const repeats = trace.repeats.map((repeat, at) =>
    pointsInMm(repeat, trace.unit, ["repeats", at], checkTrace, context),
  );
  return { ...trace, points, repeats };
}

export function profileInMm<T extends { unit: Unit; points: TypedPoint[] }>(
  profile: T,
  context: z.RefinementCtx,
): Omit<T, "points"> & { points: readonly Point[] } {
  return { ...profile, points: pointsInMm(profile.points, profile.unit, ["points"], checkProfile, context) };
}

function pointsInMm(
  typed: readonly TypedPoint[],
  unit: Unit,
  path: (string | number)[],
  check: Check,
  context: z.RefinementCtx,
): readonly Point[] {
  const refuse = ({ at, allowed, ...said }: Fault) =>
    context.addIssue({
      code: "custom",
      message: allowed,
      path: [...path, ...at],
      params: { ...said, allowed },
    });
  const points = typed.map((point, at) =>
    pointInMm(point, unit, (fault) => refuse({ ...fault, at: [at, ...fault.at] })),
  );
  if (points.some((point) => point === undefined)) return z.NEVER;
  const read = points.filter((point) => point !== undefined);
  const faults = check(read, unit);
  faults.forEach(refuse);
  return faults.length > 0 ? z.NEVER : read;
}

function pointInMm(typed: TypedPoint, unit: Unit, refuse: (fault: Fault) => void): Point | undefined {
  const [across, up] = typed.map((value, at) =>
    coordinate(value, unit, (fault) => refuse({ ...fault, at: [at] })),
  );
  return across === undefined || up === undefined ? undefined : [across, up];
}

function coordinate(typed: number | string, unit: Unit, refuse: (fault: Fault) => void): number | undefined {
  const parsed = parseQuantity(typed, "length", unitCalled(unit, "length") ?? usualUnit("length"));
  if (parsed.ok && Math.abs(parsed.value) <= FURTHEST_MM) return parsed.value;
  const most = Math.floor(FURTHEST_MM / (unitCalled(unit, "length")?.times ?? 1));
  refuse({
    at: [],
    typed,
    allowed:
      parsed.ok || !parsed.asks.startsWith("is that")
        ? `a number from -${most} to ${most} ${unit}`
        : parsed.asks,
  });
  return undefined;
}
