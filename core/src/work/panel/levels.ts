import type { ByStation } from "../../terms/places.ts";

/** First and later steps of the search, mm. A hand raises a whole station by whole millimetres. */
const STEPS_MM = [4, 2, 1] as const;
const SIGNS = [-1, 0, 1] as const;
/** Every way to raise, leave or lower the three stations together, but to leave all. */
const WAYS: readonly ByStation<number>[] = SIGNS.flatMap((front) =>
  SIGNS.flatMap((mid) => SIGNS.map((rear) => ({ front, mid, rear }))),
).filter(({ front, mid, rear }) => front !== 0 || mid !== 0 || rear !== 0);
export const LEVEL: ByStation<number> = { front: 0, mid: 0, rear: 0 };

/**
 * Levels of front, mid and rear, whole mm, at which `cost` is least: from level, step by step to the cheapest neighbour, coarse steps
 * first (a pattern search; Hooke and Jeeves 1961, from memory). `cost` is infinite outside the limits. It finds a place
 * from which no step is better; a brute force over the coarse grid stands in the evidence.
 */
export function bestLevels(cost: (levels: ByStation<number>) => number): ByStation<number> {
  const known = new Map<string, number>();
  const costOf = (levels: ByStation<number>): number => {
    const key = `${levels.front} ${levels.mid} ${levels.rear}`;
    const found = known.get(key) ?? cost(levels);
    known.set(key, found);
    return found;
  };
  let best = LEVEL;
  for (const step of STEPS_MM) {
    for (let next: ByStation<number> | undefined = best; next !== undefined; ) {
      best = next;
      next = better(best, step, costOf);
    }
  }
  return best;
}

/** The cheapest neighbour, where one is cheaper. Ties keep the first, so that nothing depends on chance. */
function better(
  from: ByStation<number>,
  step: number,
  costOf: (levels: ByStation<number>) => number,
): ByStation<number> | undefined {
  let least = costOf(from);
  let found: ByStation<number> | undefined;
  for (const way of WAYS) {
    const to = {
      front: from.front + step * way.front,
      mid: from.mid + step * way.mid,
      rear: from.rear + step * way.rear,
    };
    const cost = costOf(to);
    if (cost < least) [least, found] = [cost, to];
  }
  return found;
}
