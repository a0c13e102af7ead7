import { cos, sin } from "../number/index.ts";
import type { Cells } from "./problem.ts";

/** A value along x, mm in. */
export type AlongX = (x: number) => number;

/** One strip of a pair, in its own side's sense: y away from the middle line counts as positive. */
export interface Strip {
  /** Inner edge from y = 0, mm. */
  readonly innerEdge: AlongX;
  /** Width across, measured along the face, mm. */
  readonly width: AlongX;
  /** Fall of the face from the level, outward, rad. */
  readonly faceAngle: AlongX;
  /** Height of the middle of the face, mm. */
  readonly height: AlongX;
  /** Thickness at x and v / half width (-1 inner edge, 1 outer edge), mm. */
  readonly thickness: (x: number, across: number) => number;
}

export interface StripPair {
  /** Length along x from 0, mm. */
  readonly length: number;
  /** Rows along x (a multiple of 3) and cells across each strip. */
  readonly nx: number;
  readonly nv: number;
  /** Toward y < 0, and toward y > 0. */
  readonly low: Strip;
  readonly high: Strip;
  /** Curvature of each face across, 1/mm; positive: its middle stands out below its edges. */
  readonly faceCurvature: number;
  /** Turn of each half's section at x about (y, z) = (0, turnHeight), rad; positive opens. */
  readonly turn: AlongX;
  readonly turnHeight: number;
}

/** Cells of a pair of strips at the middles of an even mesh, with the thickness over each. */
export interface StripCells extends Cells {
  readonly thickness: Float64Array;
}

/**
 * Cells of a pair of strips: side low first, then by x, then across from the inner edge outward: index
 * ((side * nx) + i) * nv + j. With half width w/2, fall th and v from -w/2 to w/2: y = yin + w/2 cos th +
 * v cos th + b sin th, z = height - v sin th + b cos th, b = curvature v^2 / 2; area dx w / nv. Then each section
 * turns. RangeError for a mesh that cannot be cut in thirds, or a width or thickness not above zero.
 */
export function stripCells(pair: StripPair): StripCells {
  const { nx, nv, length } = pair;
  if (!(Number.isInteger(nx) && nx > 0 && nx % 3 === 0))
    throw new RangeError(`nx: ${nx}, not a multiple of 3`);
  if (!(Number.isInteger(nv) && nv > 0)) throw new RangeError(`nv: ${nv}, not a count above 0`);
  if (!(Number.isFinite(length) && length > 0)) throw new RangeError(`length: ${length} mm is not above 0`);
  const n = 2 * nx * nv;
  const numbers = (): Float64Array => new Float64Array(n);
  const marks = (): Uint8Array => new Uint8Array(n);
  const cells = {
    n,
    x: numbers(),
    y: numbers(),
    z: numbers(),
    area: numbers(),
    thickness: numbers(),
    third: marks(),
    side: marks(),
    inner: marks(),
  };
  for (let side = 0; side < 2; side++) {
    for (let i = 0; i < nx; i++) fillRow(pair, side, i, cells);
  }
  return cells;
}

function fillRow(pair: StripPair, side: number, i: number, cells: StripCells): void {
  const { nx, nv, length, turnHeight } = pair;
  const strip = side === 0 ? pair.low : pair.high;
  const outward = side === 0 ? -1 : 1;
  const x = ((i + 0.5) * length) / nx;
  const width = strip.width(x);
  if (!(Number.isFinite(width) && width > 0))
    throw new RangeError(`width at ${x} mm: ${width} is not above 0`);
  const fall = strip.faceAngle(x);
  const c = cos(fall);
  const s = sin(fall);
  const middle = strip.innerEdge(x) + 0.5 * width * c;
  const height = strip.height(x);
  const turn = pair.turn(x);
  const ct = cos(turn);
  const st = sin(turn);
  for (let j = 0; j < nv; j++) {
    const at = (side * nx + i) * nv + j;
    const across = (2 * j + 1) / nv - 1;
    const v = 0.5 * width * across;
    const bulge = 0.5 * pair.faceCurvature * v * v;
    const y = middle + v * c + bulge * s;
    const below = height - v * s + bulge * c - turnHeight;
    cells.x[at] = x;
    // Opening carries what lies below the turning point outward.
    cells.y[at] = outward * (y * ct - below * st);
    cells.z[at] = turnHeight + y * st + below * ct;
    cells.area[at] = (length / nx) * (width / nv);
    cells.thickness[at] = strip.thickness(x, across);
    cells.third[at] = Math.floor((3 * i) / nx);
    cells.side[at] = side;
    cells.inner[at] = across < 0 ? 1 : 0;
    if (!(cells.thickness[at]! > 0)) throw new RangeError(`thickness at ${x} mm, ${across}: not above 0`);
  }
}
