import { drawNormal } from "../../core/src/engine/random.ts";
import type { SurveyedHorse } from "../../core/src/survey/case.ts";
import { horseSchema } from "../../core/src/survey/horse.ts";

/** The back of the reference cases of contact: z = z0 - s (sqrt(y^2 + c^2) - c) - k y^2 / 2, with s, c, k along x. */
const L = 430;
const poly = (c: readonly number[], xi: number) => c.reduceRight((sum, one) => sum * xi + one, 0);

export const crossHeight = (x: number, y: number): number => {
  const [s, c, k] = [poly([1, -1.1, 0.4], x / L), poly([12, 18], x / L), poly([0.0012, 0.0026], x / L)];
  return -s * (Math.sqrt(y * y + c * c) - c) - (k * y * y) / 2;
};

export const midHeight = (x: number): number => 30 * ((x - 230) / 230) ** 2 - 30 - 0.05 * x;
export const STATIONS_X = { front: 0, mid: 200, rear: 390 } as const;

export interface Drawn {
  /** Standard deviation of each typed point across and along, mm. */
  readonly noiseMm?: number;
  readonly seed?: number;
  readonly stepMm?: number;
  readonly repeats?: number;
  readonly temper?: "cold" | "warm" | "not-asked";
  /** Height over y at a station, instead of the reference back. */
  readonly height?: (x: number, y: number) => number;
  readonly reachMm?: number;
}

type Pair = [number, number];

export function tracePoints(x: number, drawn: Drawn, copy: number): Pair[] {
  const { noiseMm = 0, seed = 1, stepMm = 8, height = crossHeight, reachMm = 176 } = drawn;
  const n = Math.round((2 * reachMm) / stepMm);
  return Array.from({ length: n + 1 }, (_, i): Pair => {
    const y = -reachMm + (2 * reachMm * i) / n;
    const miss = (word: string) => noiseMm * drawNormal(seed, i, `${word}.${x}.${copy}`);
    return [y + miss("y"), height(x, y) + miss("z")];
  });
}

export function modelHorse(drawn: Drawn = {}): SurveyedHorse {
  const { repeats = 0, temper = "cold" } = drawn;
  const traces = Object.entries(STATIONS_X).map(([station, x]) => ({
    station,
    behindFront: x,
    temper,
    points: tracePoints(x, drawn, 0),
    repeats: Array.from({ length: repeats }, (_, i) => tracePoints(x, drawn, i + 1)),
  }));
  const profile = {
    points: Array.from({ length: 46 }, (_, i): Pair => [-30 + 10 * i, midHeight(-30 + 10 * i)]),
  };
  return horseSchema.parse({ name: "invented", traces, profile });
}

/** A horse with nothing but a front trace of these points. */
export const frontOnly = (
  points: readonly (readonly [number, number])[],
  repeats: readonly (readonly (readonly [number, number])[])[] = [],
): SurveyedHorse =>
  horseSchema.parse({ name: "invented", traces: [{ station: "front", temper: "cold", points, repeats }] });

/** The same horse seen in a mirror. */
export function mirrored(horse: SurveyedHorse): SurveyedHorse {
  const flip = (points: SurveyedHorse["traces"][number]["points"]) =>
    points.map(([y, z]): Pair => [-y, z]).reverse();
  return {
    ...horse,
    traces: horse.traces.map((trace) => ({
      ...trace,
      points: flip(trace.points),
      repeats: trace.repeats.map(flip),
    })),
  };
}
