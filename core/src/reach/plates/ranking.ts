import { spreadOf } from "../../engine/quantile.ts";

/** How far one plate's head lies from what is wanted: at the best estimate, and in each draw. mm on one side, signed. */
export interface Offered<Id> {
  readonly id: Id;
  readonly apartMm: number;
  /** The same draws for every plate, so that what they share cancels between them. */
  readonly drawn: readonly number[];
}

export interface Ranked<Id> {
  readonly id: Id;
  readonly apartMm: number;
  /** Half of the central 95 % of the draws. */
  readonly uMm: number;
  /** Part of the draws in which none lies nearer. */
  readonly nearestPart: number;
  /** Part of the draws in which the first of the ranking lies nearer than this one; undefined for the first. */
  readonly firstNearerPart: number | undefined;
  /** Whether it can be told that the first lies nearer: in 975 of 1000 draws at the least. */
  readonly toldFromFirst: boolean;
}

/** One side of the central 95 %. */
const TOLD_PART = 0.975;

/** Nearest first. Neither a label nor the place in the list counts; what lies equally near stays in the order given. */
export function rankedPlates<Id>(offered: readonly Offered<Id>[]): readonly Ranked<Id>[] {
  const sorted = [...offered].sort((a, b) => Math.abs(a.apartMm) - Math.abs(b.apartMm));
  const first = sorted[0];
  const least = leastOf(offered);
  return sorted.map((one) => {
    const firstNearerPart = first === undefined || one === first ? undefined : nearerPart(first, one);
    return {
      id: one.id,
      apartMm: one.apartMm,
      uMm: spreadOf(one.drawn),
      nearestPart: partOf(one.drawn, (mm, i) => Math.abs(mm) <= (least[i] ?? 0)),
      firstNearerPart,
      toldFromFirst: firstNearerPart !== undefined && firstNearerPart >= TOLD_PART,
    };
  });
}

function leastOf(offered: readonly Offered<unknown>[]): readonly number[] {
  const count = offered[0]?.drawn.length ?? 0;
  return Array.from({ length: count }, (_, i) =>
    Math.min(...offered.map(({ drawn }) => Math.abs(drawn[i] ?? Number.POSITIVE_INFINITY))),
  );
}

const nearerPart = (a: Offered<unknown>, b: Offered<unknown>): number =>
  partOf(a.drawn, (mm, i) => Math.abs(mm) < Math.abs(b.drawn[i] ?? 0));

function partOf(drawn: readonly number[], holds: (mm: number, i: number) => boolean): number {
  return drawn.length === 0 ? 0 : drawn.filter(holds).length / drawn.length;
}

/** For a saddle with several horses a plate counts by the horse it serves worst, in every draw. */
export function worstOf<Id>(id: Id, horses: readonly Offered<unknown>[]): Offered<Id> {
  const far = (all: readonly number[]) =>
    all.reduce((most, mm) => (Math.abs(mm) > Math.abs(most) ? mm : most), 0);
  const count = horses[0]?.drawn.length ?? 0;
  return {
    id,
    apartMm: far(horses.map(({ apartMm }) => apartMm)),
    drawn: Array.from({ length: count }, (_, i) => far(horses.map(({ drawn }) => drawn[i] ?? 0))),
  };
}
