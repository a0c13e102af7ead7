import { crossings } from "../../core/src/engine/curve/crossings.ts";
import { type Curve, curvatureAt, curvatureOf } from "../../core/src/engine/curve/curve.ts";
import { farthestMiss } from "../../core/src/engine/curve/hausdorff.ts";
import type { Point } from "../../core/src/engine/curve/point.ts";
import { move, rigidFit } from "../../core/src/engine/curve/rigid.ts";
import { smoothCurve } from "../../core/src/engine/curve/smooth-curve.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";

/** A curve through exact points, so that the spline's own curvature is what is compared. */
function through(f: (t: number) => Point, from: number, to: number, n = 2000): Curve {
  return smoothCurve(
    Array.from({ length: n + 1 }, (_, i) => f(from + ((to - from) * i) / n)),
    0,
  );
}

function curvatureWhere(curve: Curve, of: "y" | "z", level: number): number {
  const [s] = crossings(curve, of, level);
  if (s === undefined) throw new Error(`the curve does not reach ${level}`);
  return Math.abs(curvatureAt(curve, s));
}

const ellipse = through((t) => [3 * Math.cos(t), 2 * Math.sin(t)], -1, 3);
const parabola = through((t) => [t, (t * t) / 2], -1, 2);
const catenary = through((t) => [t, Math.cosh(t)], -1, 2);

/** Radius from chord 100 and sag 20: a circle through the three points, found by the spline of its own arc. */
function radiusOfSag(): number {
  const radius = (50 * 50 + 20 * 20) / (2 * 20);
  const half = Math.asin(50 / radius);
  const arc = through((t) => [radius * Math.sin(t), radius * Math.cos(t)], -half, half);
  return 1 / curvatureWhere(arc, "y", 0);
}

const X: Point[] = [
  [0, 0],
  [1, 0],
  [0, 2],
];
const Y: Point[] = [
  [0, 0],
  [-1, 0],
  [0, 2],
];

function similarity() {
  const { cos, sin, scale } = rigidFit(X, Y);
  const mean = (points: readonly Point[], k: 0 | 1) =>
    points.reduce((sum, one) => sum + one[k], 0) / points.length;
  const t = [
    mean(Y, 0) - scale * (cos * mean(X, 0) - sin * mean(X, 1)),
    mean(Y, 1) - scale * (sin * mean(X, 0) + cos * mean(X, 1)),
  ] as const;
  const square = X.reduce((sum, [a, b], i) => {
    const [c, d] = Y[i] ?? [0, 0];
    const [e, f] = [scale * (cos * a - sin * b) + t[0] - c, scale * (sin * a + cos * b) + t[1] - d];
    return sum + e * e + f * f;
  }, 0);
  return {
    R: [
      [cos, -sin],
      [sin, cos],
    ],
    c: scale,
    t: [...t],
    mean_sq_error: square / X.length,
  };
}

function rigid() {
  const { cos, sin, shift, meanSquare } = rigidFit(X, Y);
  return {
    R: [
      [cos, -sin],
      [sin, cos],
    ],
    t: [...shift],
    mean_sq_error: meanSquare,
  };
}

/** The case turns about z: seen from above a turn and a shift of the plane, seen edge on a shift of the heights alone. */
function thirty() {
  const P: Point[] = [
    [0, 0],
    [1, 0],
    [0, 2],
    [0, 0],
    [1, 1],
  ];
  const turn = Math.PI / 6;
  const Q = P.map((point) => move({ cos: Math.cos(turn), sin: Math.sin(turn), shift: [10, -5] }, point));
  const heights = [0, 0, 0, 3, 1].map((z): Point => [z, 0]);
  const raised = rigidFit(
    heights,
    heights.map(([z]): Point => [z + 2, 0]),
  );
  const { cos, sin, shift, meanSquare } = rigidFit(P, Q);
  return {
    angle_deg: (Math.atan2(sin, cos) * 180) / Math.PI,
    "t.0": shift[0],
    "t.1": shift[1],
    "t.2": raised.shift[0],
    rmsd: Math.sqrt(meanSquare),
  };
}

const U: Point[] = [
  [1, 0],
  [0, 1],
  [-1, 0],
  [0, -1],
];
const V: Point[] = [
  [2, 0],
  [0, 2],
  [-2, 0],
  [0, -4],
];

export const checks: readonly Check[] = [
  {
    name: "curvature of plane curves of known form, off splines through their points",
    run: () => {
      published("curvature-set", {
        ellipse: [curvatureWhere(ellipse, "z", 0), curvatureWhere(ellipse, "y", 0)],
        parabola: [curvatureWhere(parabola, "y", 0), curvatureWhere(parabola, "y", 1)],
        catenary: [curvatureWhere(catenary, "y", 0), curvatureWhere(catenary, "y", 1)],
        sagitta_R: radiusOfSag(),
      });
      // A helix on a cylinder of radius 3 with pitch 4: its plane shadow is a circle, slowed by the climb.
      const shadow = curvatureOf([3, 0, -3], [0, 3, 0]);
      published("curvature-set/helix_kappa_tau", [(shadow * 9) / 25, (shadow * 3 * 4) / 25]);
    },
  },
  {
    name: "similarity of three points, reflection forbidden",
    run: () => published("umeyama-1991", similarity()),
  },
  { name: "rigid fit of the same points", run: () => published("kabsch-rigid", rigid()) },
  { name: "rigid fit of a copy turned by 30 degrees", run: () => published("kabsch-30deg", thirty()) },
  {
    name: "farthest miss of two sets of points",
    run: () => {
      const [there, back] = [farthestMiss(U, V), farthestMiss(V, U)];
      published("hausdorff-scipy", { h_uv: there, h_vu: back, H: Math.max(there, back) });
    },
  },
];
