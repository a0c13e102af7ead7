import type { Half, Head, Tree } from "../../core/src/shape/model.ts";

const DEGREE = Math.PI / 180;

/** Face along x, mm and rad, as a quadratic in xi = x / length. */
export interface Rail {
  readonly innerEdge: number;
  readonly width: number;
  readonly fallDeg: readonly [number, number, number];
  /** Height of the face's middle: straight line from front to rear, and how far the rail hangs below it half way, mm. */
  readonly front: number;
  readonly rear: number;
  readonly sag: number;
}

export const RAIL: Rail = {
  innerEdge: 38,
  width: 108,
  fallDeg: [48, -22, 8],
  front: -66,
  rear: -72,
  sag: 18,
};
export const LENGTH = 420;

/** How far the rail hangs below the straight line between its ends, mm. */
export const sagAt = (rail: Rail, x: number): number => (4 * rail.sag * x * (LENGTH - x)) / LENGTH ** 2;
export const chordAt = (rail: Rail, x: number): number =>
  rail.front + ((rail.rear - rail.front) * x) / LENGTH;

function halfOf(rail: Rail): Half {
  const thickness = { inner: 23, middle: 26, outer: 24 };
  return {
    innerEdgeMm: () => rail.innerEdge,
    widthMm: () => rail.width,
    faceAngleRad: (x) => {
      const xi = x / LENGTH;
      return DEGREE * (rail.fallDeg[0] + rail.fallDeg[1] * xi + rail.fallDeg[2] * xi * xi);
    },
    heightMm: (x) => chordAt(rail, x) - sagAt(rail, x),
    thicknessMm: { front: thickness, mid: thickness, rear: thickness },
  };
}

/** A tree in closed form: arms of 95 mm down at 45 degrees unless told otherwise. */
export function straightTree(head: Partial<Head> = {}, near: Rail = RAIL, off: Rail = near): Tree {
  const whole: Head = {
    spreadMm: 205,
    spreadUpperMm: 110,
    upperBelowCrownMm: 35,
    depthMm: 95,
    crownRadiusMm: 32,
    thicknessMm: 10,
    halfAngleRad: { near: 45 * DEGREE, off: 45 * DEGREE },
    ...head,
  };
  const tipHeightMm = -70;
  return {
    lengthMm: LENGTH,
    stationsMm: { front: 0, mid: 200, rear: 380 },
    halves: { near: halfOf(near), off: halfOf(off) },
    head: whole,
    crownHeightMm: tipHeightMm + whole.depthMm,
    tipHeightMm,
    straps: { near: { xMm: 90 }, off: { xMm: 90 } },
    channelMm: { front: 75, mid: 76, rear: 80 },
    deepestSeatMm: 200,
  };
}
