import { cos } from "../engine/number/index.ts";
import type { SampleSurface } from "../engine/surface.ts";
import type { Tree } from "../shape/model.ts";
import { SIDES } from "../terms/places.ts";

/** What a hand would find of a saddle laid on without load, were nothing soft; mm. A help beside the readings, never instead of them. */
export interface Unloaded {
  /** Largest gap under the panels between two places where they touch. */
  readonly bridgeMm: number;
  /** Lift of the free end while the other end is pressed down. */
  readonly rockMm: number;
}

/** Places along the bearing at which the gap is taken. */
const PLACES = 41;

interface Gap {
  readonly x: number;
  readonly mm: number;
}

/** Gap between the middle of the panels' faces and the back along the bearing, mean of both sides, up to a straight line. */
export function unloadedOf(tree: Tree, surface: SampleSurface, placementMm: number): Unloaded {
  const gaps = gapsAlong(tree, surface, placementMm);
  const hull = lowerHull(gaps);
  const bridgeMm = Math.max(0, ...gaps.map((gap) => gap.mm - heightOn(hull, gap.x)));
  return { bridgeMm, rockMm: rockOver(hull) };
}

function gapsAlong(tree: Tree, surface: SampleSurface, placementMm: number): readonly Gap[] {
  const n = 2 * PLACES;
  const numbers = () => new Float64Array(n);
  const [x, y, z] = [numbers(), numbers(), numbers()];
  const back = { z: numbers(), zx: numbers(), zy: numbers(), zxx: numbers(), zxy: numbers(), zyy: numbers() };
  SIDES.forEach((side, sideIndex) => {
    const half = tree.halves[side];
    for (let i = 0; i < PLACES; i++) {
      const at = sideIndex * PLACES + i;
      const along = (tree.lengthMm * i) / (PLACES - 1);
      const out = half.innerEdgeMm(along) + (half.widthMm(along) / 2) * cos(half.faceAngleRad(along));
      x[at] = along + placementMm;
      y[at] = side === "near" ? -out : out;
      z[at] = half.heightMm(along);
    }
  });
  surface(n, x, y, back);
  const gap = (at: number) => z[at]! - back.z[at]!;
  return Array.from({ length: PLACES }, (_, i) => ({
    x: x[i]! - placementMm,
    mm: (gap(i) + gap(PLACES + i)) / 2,
  }));
}

/** What a hard straight body could touch from above: the lower convex hull (Andrew's monotone chain, 1979). */
function lowerHull(gaps: readonly Gap[]): readonly Gap[] {
  const hull: Gap[] = [];
  for (const gap of gaps) {
    while (hull.length > 1 && !turnsUp(hull.at(-2), hull.at(-1), gap)) hull.pop();
    hull.push(gap);
  }
  return hull;
}

function turnsUp(a: Gap | undefined, b: Gap | undefined, c: Gap): boolean {
  if (a === undefined || b === undefined) return true;
  return (b.x - a.x) * (c.mm - a.mm) > (b.mm - a.mm) * (c.x - a.x);
}

function heightOn(hull: readonly Gap[], x: number): number {
  const next = Math.max(
    1,
    hull.findIndex((gap) => gap.x >= x),
  );
  return onLine(hull[next - 1], hull[next], x);
}

function onLine(a: Gap | undefined, b: Gap | undefined, x: number): number {
  if (a === undefined || b === undefined) return 0;
  return a.mm + ((b.mm - a.mm) * (x - a.x)) / (b.x - a.x);
}

/** With the front pressed down the body lies along the first edge of the hull, with the rear along the last. */
function rockOver(hull: readonly Gap[]): number {
  const [first, last] = [hull[0], hull.at(-1)];
  if (first === undefined || last === undefined || hull.length < 3) return 0;
  const rearLift = last.mm - onLine(first, hull[1], last.x);
  const frontLift = first.mm - onLine(hull.at(-2), last, first.x);
  return Math.max(rearLift, frontLift);
}
