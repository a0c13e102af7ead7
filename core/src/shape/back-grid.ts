import { fitGrid, type Grid } from "../engine/surface.ts";
import { type BySide, type ByStation, SIDES, type Side, STATIONS } from "../terms/places.ts";
import { eachStation, loftWeights } from "./along.ts";
import { loftRow, type Row, readRow, type Sides } from "./loft.ts";
import type { Midline } from "./midline.ts";
import { blend } from "./side-form.ts";

/** The surface reaches this far before the front and behind the rear trace, mm; the panel ends 40 mm behind the rear one. */
const BEFORE_MM = 60;
const BEHIND_MM = 100;
/** Half of the width that the surface covers, mm, and its cells. */
const HALF_WIDTH_MM = 260;
const CELL_X_MM = 12;
const CELL_Y_MM = 6.5;

/** Coefficients of the back as it was read, and of what a unit of each deviation adds to it. */
export interface BackModes {
  readonly grid: Grid;
  readonly base: Float64Array;
  /** Per mm of width, per station and side. */
  readonly width: ByStation<BySide<Float64Array>>;
  /** Per rad of tilt, per station and side. */
  readonly tilt: ByStation<BySide<Float64Array>>;
  /** Per mm of a deeper hollow of the midline. */
  readonly hollow: Float64Array;
}

export function backModes(sides: Sides, xs: ByStation<number>, midline: Midline): BackModes {
  const from = Math.min(0, xs.front) - BEFORE_MM;
  const nx = Math.ceil((xs.rear + BEHIND_MM - from) / CELL_X_MM) + 1;
  const grid: Grid = {
    x0: from,
    dx: CELL_X_MM,
    nx,
    y0: -HALF_WIDTH_MM,
    dy: CELL_Y_MM,
    ny: (2 * HALF_WIDTH_MM) / CELL_Y_MM + 1,
  };
  const blank = () => new Float64Array(nx * grid.ny);
  const pair = (): BySide<Float64Array> => ({ near: blank(), off: blank() });
  const trio = () => ({ front: pair(), mid: pair(), rear: pair() });
  const values = { base: blank(), width: trio(), tilt: trio(), hollow: blank() };
  for (let i = 0; i < nx; i++) fillRow(values, grid, i, sides, xs, midline);
  const fit = (one: Float64Array) => fitGrid(one, nx, grid.ny);
  const fitAll = (one: ByStation<BySide<Float64Array>>) =>
    eachStation((station) => ({ near: fit(one[station].near), off: fit(one[station].off) }));
  return {
    grid,
    base: fit(values.base),
    width: fitAll(values.width),
    tilt: fitAll(values.tilt),
    hollow: fit(values.hollow),
  };
}

type Values = Omit<BackModes, "grid">;

function fillRow(
  values: Values,
  grid: Grid,
  i: number,
  sides: Sides,
  xs: ByStation<number>,
  midline: Midline,
): void {
  const x = grid.x0 + i * grid.dx;
  const weights = loftWeights(xs, x);
  const half = (grid.ny - 1) / 2;
  const at = Float64Array.from({ length: half + 1 }, (_, k) => k * grid.dy);
  const [height, slope] = [new Float64Array(half + 1), new Float64Array(half + 1)];
  const between = Math.min(1, Math.max(0, (x - xs.front) / (xs.rear - xs.front)));
  for (const side of SIDES) {
    const row = loftRow(sides, side, weights);
    readRow(row, at, height, slope);
    for (let k = 0; k <= half; k++) {
      const place = i * grid.ny + half + (side === "near" ? -k : k);
      values.base[place] = midline(x) + height[k]!;
      values.hollow[place] = -4 * between * (1 - between);
      addModes(values, place, side, weights, row, at[k]!, height[k]!, slope[k]!);
    }
  }
}

/** At a fixed place a side that moves out by d rises by -slope x d; one that turns moves out and down. */
function addModes(
  values: Values,
  place: number,
  side: Side,
  weights: ByStation<number>,
  { about }: Row,
  u: number,
  z: number,
  slope: number,
): void {
  const part = blend(u);
  for (const station of STATIONS) {
    values.width[station][side][place] = -weights[station] * part * slope;
    values.tilt[station][side][place] = -weights[station] * part * (u - about.u + slope * (z - about.z));
  }
}
