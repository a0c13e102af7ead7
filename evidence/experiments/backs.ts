/**
 * Twelve shapes of back for the experiment on the width of the tree, fixed before anything was computed with them. The
 * shapes are of the trade's own vocabulary; their parameters are assumptions, chosen about the reference back so that
 * its width at 150 mm of depth stays near the one published measurement (312 +/- 24 mm at T10, conference abstract,
 * Hartpury 2023, read). No parameter may be changed to make a result agree: a thirteenth back would be a new experiment.
 *
 * The form is that of the reference cases, z = z0 - s (sqrt(y2 + c2) - c) - k y2 / 2 with z0 = -H (1 - ((x - xd) / xd)2) -
 * tilt x, s, c, k polynomials in x / L. A side that is `wider` by 1.08 reaches each depth 8 % further out.
 */
export interface BackShape {
  readonly id: string;
  readonly says: string;
  /** Why these figures. */
  readonly why: string;
  /** Length of the bearing, mm. */
  readonly lengthMm: number;
  /** Depth of the profile's hollow at xd = 0.535 of the length, mm; negative: an arch. */
  readonly hollowMm: number;
  /** Fall of the midline toward the tail. */
  readonly tilt: number;
  readonly s: readonly number[];
  readonly c: readonly number[];
  readonly k: readonly number[];
  readonly wider: { readonly near: number; readonly off: number };
}

const EVEN = { near: 1, off: 1 } as const;

/** The reference back of the model cases: the others are told by what differs from it. */
const REFERENCE = {
  lengthMm: 430,
  hollowMm: 30,
  tilt: 0.05,
  s: [1, -1.1, 0.4],
  c: [12, 18],
  k: [0.0012, 0.0026],
  wider: EVEN,
} as const;

export const BACKS: readonly BackShape[] = [
  {
    ...REFERENCE,
    id: "flat-broad",
    says: "flat-withered and broad",
    why: "sides fall by a fifth less than the reference at the withers, a rounder top, less hollow",
    hollowMm: 24,
    s: [0.8, -0.8, 0.28],
    c: [18, 18],
    k: [0.0012, 0.0024],
  },
  {
    ...REFERENCE,
    id: "high-narrow",
    says: "high-withered and narrow",
    why: "sides a third steeper at the withers, a sharp top, more hollow behind them",
    hollowMm: 38,
    tilt: 0.07,
    s: [1.35, -1.6, 0.6],
    c: [7, 20],
    k: [0.001, 0.0028],
  },
  {
    ...REFERENCE,
    id: "roached",
    says: "roached",
    why: "the profile arches up by 8 mm where the others are hollow",
    hollowMm: -8,
    tilt: 0.03,
  },
  {
    ...REFERENCE,
    id: "swayed",
    says: "swayed",
    why: "the hollow half as deep again and a little more",
    hollowMm: 48,
  },
  {
    ...REFERENCE,
    id: "uphill",
    says: "uphill",
    why: "withers 30 mm higher over the bearing than the reference",
    tilt: 0.12,
  },
  {
    ...REFERENCE,
    id: "downhill",
    says: "downhill, croup-high",
    why: "the midline rises toward the tail by 6 mm in 100",
    tilt: -0.06,
  },
  {
    ...REFERENCE,
    id: "round-pony",
    says: "round pony, hardly a wither",
    why: "the side bends evenly from a broad top instead of falling straight; little hollow",
    hollowMm: 15,
    tilt: 0.03,
    s: [0.5, -0.3, 0.08],
    c: [30, 10],
    k: [0.0045, 0.0005],
  },
  {
    ...REFERENCE,
    id: "wasted",
    says: "wasted behind the shoulder",
    why: "the side at the front hollows (bend of the other sign) and is as full as the reference at the rear",
    s: [1.25, -1.5, 0.55],
    c: [10, 20],
    k: [-0.0012, 0.005],
  },
  {
    ...REFERENCE,
    id: "draught",
    says: "broad draught type",
    why: "flat, broad top; sides fall by a third less at the withers",
    hollowMm: 22,
    tilt: 0.02,
    s: [0.7, -0.7, 0.25],
    c: [30, 20],
    k: [0.001, 0.0022],
  },
  {
    ...REFERENCE,
    id: "short",
    says: "short-backed",
    why: "the reference drawn together to 380 mm of bearing; half of what saddles differ by (17 to 18 inch seats)",
    lengthMm: 380,
    hollowMm: 26,
  },
  {
    ...REFERENCE,
    id: "larger-near",
    says: "uneven, larger on the near side",
    why: "near side 8 % wider: 6 mm at the points, about twice what a flexible curve can tell",
    wider: { near: 1.08, off: 1 },
  },
  {
    ...REFERENCE,
    id: "larger-off",
    says: "uneven, larger on the off side, withers a little higher",
    why: "off side 6 % wider, on a back that is steeper than the reference, so that it is no mirror of the one before",
    s: [1.1, -1.2, 0.42],
    wider: { near: 1, off: 1.06 },
  },
];

const along = (coefficients: readonly number[], xi: number): number =>
  coefficients.reduceRight((sum, one) => sum * xi + one, 0);

/** Height of a cross-section at y under the midline, mm. */
export function crossMm(back: BackShape, x: number, y: number): number {
  const xi = x / back.lengthMm;
  const [s, c, k] = [along(back.s, xi), along(back.c, xi), along(back.k, xi)];
  const v = y / (y < 0 ? back.wider.near : back.wider.off);
  return -s * (Math.sqrt(v * v + c * c) - c) - (k * v * v) / 2;
}

/** Where the hollow lies, as part of the bearing's length: 230 of 430 mm, as in the reference cases. */
const DEEPEST_PART = 230 / 430;

/** Height of the midline at x, 0 at the front station, mm. */
export function midlineMm({ lengthMm, hollowMm, tilt }: BackShape, x: number): number {
  const deepest = DEEPEST_PART * lengthMm;
  return -hollowMm * (1 - ((x - deepest) / deepest) ** 2) - tilt * x;
}
