import type { ContactProblem, Law } from "@treewright/core/engine/contact/problem.ts";
import { type Strip, stripCells } from "@treewright/core/engine/contact/strip-cells.ts";
import fc from "fast-check";
import { propertySeed } from "../number/seed.ts";
import { analyticBack, type BackInputs } from "./back.ts";

/** Seed of the random cases; another one by the variable SEED. Printed with every run. */
export const SEED = propertySeed("contact", 19_531_101);

/** What a random case is made of; sides 0 (y < 0) and 1 (y > 0) differ. */
export interface Draw {
  readonly back: BackInputs;
  /** Slope added across and twist added to the back, so that it is no mirror of itself. */
  readonly lean: number;
  readonly twist: number;
  readonly spreadMm: number;
  readonly fall: readonly [number, number];
  readonly edge: readonly [number, number];
  readonly weightN: number;
  readonly at: readonly [number, number, number];
  readonly turnsWithBody: boolean;
  readonly strapN: readonly [number, number];
  readonly friction: number;
  readonly slide: readonly [number, number];
  readonly law: "linear" | "series" | "stiffening";
  readonly nx: number;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pair = (min: number, max: number) => fc.tuple(between(min, max), between(min, max));

/** Horse-like cases, most of which come to rest. */
export const draws: fc.Arbitrary<Draw> = fc.record({
  back: fc.record({
    L: fc.constant(430),
    H: between(20, 40),
    xd: between(210, 250),
    tilt: between(0, 0.08),
    s: fc.constantFrom([1, -1.1, 0.4], [0.8, -0.6, 0.1], [0.9, -0.9, 0.4]),
    c: fc.constantFrom([12, 18], [20, 10]),
    k: fc.constantFrom([0.0012, 0.0026], [0.002, 0.001]),
  }),
  lean: between(-0.03, 0.03),
  twist: between(-1e-4, 1e-4),
  spreadMm: between(-15, 15),
  fall: pair(-0.04, 0.04),
  edge: pair(-4, 4),
  weightN: between(300, 900),
  at: fc.tuple(between(195, 225), between(-6, 6), between(0, 320)),
  turnsWithBody: fc.boolean(),
  strapN: pair(0, 90),
  friction: fc.constantFrom(0, 0.15, 0.3),
  slide: pair(-15, 15),
  law: fc.constantFrom("linear", "series", "stiffening"),
  nx: fc.constantFrom(15, 30),
});

export function problemOf(draw: Draw): ContactProblem {
  const strip = (side: 0 | 1): Strip => ({
    innerEdge: () => 37.5 + draw.edge[side],
    width: (x) => 105 + (15 * x) / 430,
    faceAngle: (x) => fallAt(x) + draw.fall[side],
    height: heightAt,
    thickness: (x) => 25 + (10 * x) / 430,
  });
  const half = draw.spreadMm / 2 / 125;
  const cells = stripCells({
    length: 430,
    nx: draw.nx,
    nv: 8,
    low: strip(0),
    high: strip(1),
    faceCurvature: 1 / 300,
    turn: (x) => half * (0.18 + 0.82 * (1 - x / 430) ** 1.5),
    turnHeight: 50,
  });
  const even = analyticBack(draw.back);
  return {
    cells,
    law: lawOf(draw, cells.n, cells.thickness),
    surface: (n, x, y, out) => {
      even(n, x, y, out);
      for (let i = 0; i < n; i++) {
        const [u, v] = [x[i] ?? 0, y[i] ?? 0];
        out.z[i] = (out.z[i] ?? 0) + draw.lean * v + draw.twist * u * v;
        out.zx[i] = (out.zx[i] ?? 0) + draw.twist * v;
        out.zy[i] = (out.zy[i] ?? 0) + draw.lean + draw.twist * u;
        out.zxy[i] = (out.zxy[i] ?? 0) + draw.twist;
      }
    },
    load: {
      weightN: draw.weightN,
      at: { x: draw.at[0], y: draw.at[1], z: draw.at[2] },
      turnsWithBody: draw.turnsWithBody,
      pulls: draw.strapN.map((force, side) => ({
        at: { x: 90, y: side === 0 ? -150 : 150, z: -100 },
        force: { x: 0, y: side === 0 ? -0.3 * force : 0.3 * force, z: -force },
      })),
    },
    friction: draw.friction,
    across: { x: 0, y: 1 },
    pivot: { x: 215, y: 0, z: 0 },
    slide: { x: draw.slide[0], y: draw.slide[1] },
    compressionLimit: 0.7,
  };
}

/** Face angle and height of the base model case, as its polynomials. */
export function fallAt(x: number): number {
  const u = x / 430;
  return 0.826307 - 0.481542 * u + 0.206879 * u * u;
}

export function heightAt(x: number): number {
  const u = x / 430;
  return -65.2579 - 82.6677 * u + 92.8757 * u ** 2 - 11.2116 * u ** 3 + 3.47023 * u ** 4;
}

function lawOf({ law }: Draw, n: number, thickness: Float64Array): Law {
  const all = (value: number): Float64Array => new Float64Array(n).fill(value);
  if (law === "linear") return { kind: "linear", stiffness: Float64Array.from(thickness, (t) => 0.03 / t) };
  return {
    kind: "series",
    upperModulus: all(0.1),
    upperThickness: thickness,
    lowerModulus: all(0.06),
    lowerThickness: all(40),
    upperLimit: law === "series" ? Number.POSITIVE_INFINITY : 0.6,
  };
}
