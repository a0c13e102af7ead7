import type { ContactProblem, Law } from "@treewright/core/engine/contact/problem.ts";
import { type Strip, type StripCells, stripCells } from "@treewright/core/engine/contact/strip-cells.ts";
import { pow } from "@treewright/core/engine/number/index.ts";
import { z } from "zod";
import { reference } from "../published/registry.ts";
import { analyticBack, polynomial } from "./back.ts";

const numbers = z.array(z.number());
const three = z.tuple([z.number(), z.number(), z.number()]);

/** Inputs of a model case as they stand in the registry. */
const caseInputs = z.object({
  back: z.object({
    L: z.number(),
    H: z.number(),
    xd: z.number(),
    tilt: z.number(),
    s: numbers,
    c: numbers,
    k: numbers,
  }),
  panel: z.object({
    L: z.number(),
    yin: z.number(),
    w: numbers,
    kp: z.number(),
    kx: z.number(),
    theta: numbers,
    zc: numbers,
    t: z.tuple([z.number(), z.number()]),
    tq: z.literal(0),
  }),
  head: z.object({ D: z.number(), zcr: z.number(), r: z.number(), n: z.number(), spreadMm: z.number() }),
  load: z.object({
    W: z.number(),
    xL: z.number(),
    yL: z.number(),
    zL: z.number(),
    follow: z.number(),
    xC: z.number(),
    zC: z.number(),
  }),
  law: z.union([
    z.object({ kind: z.literal("k"), k: z.number() }),
    z.object({
      kind: z.literal("series"),
      Ep: z.number(),
      eps: z.number().nullable(),
      Et: z.number(),
      ht: z.number(),
    }),
  ]),
  mu: z.number(),
  girth: z.array(z.object({ P: three, F: three })),
  mesh: z.object({ nx: z.number(), nv: z.number() }),
});
export type CaseInputs = z.infer<typeof caseInputs>;

export function inputsOf(id: string): CaseInputs {
  return caseInputs.parse(reference(id).inputs);
}

/** A model case as a problem. */
export function problemOf(inputs: CaseInputs): ContactProblem {
  const { back, load, mu } = inputs;
  const cells = cellsOf(inputs);
  return {
    cells,
    law: lawOf(inputs, cells),
    surface: analyticBack(back),
    load: {
      weightN: load.W,
      at: { x: load.xL, y: load.yL, z: load.zL },
      turnsWithBody: load.follow === 1,
      pulls: inputs.girth.map(({ P, F }) => ({
        at: { x: P[0], y: P[1], z: P[2] },
        force: { x: F[0], y: F[1], z: F[2] },
      })),
    },
    friction: mu,
    across: { x: 0, y: 1 },
    pivot: { x: load.xC, y: 0, z: load.zC },
    slide: { x: 0, y: 0 },
    compressionLimit: 0.7,
  };
}

function cellsOf({ panel, head, mesh }: CaseInputs): StripCells {
  const along = (coefficients: readonly number[]) => (x: number) => polynomial(coefficients, panel.L)(x)[0];
  const [front, rear] = panel.t;
  const strip: Strip = {
    innerEdge: () => panel.yin,
    width: along(panel.w),
    faceAngle: along(panel.theta),
    height: (x) => along(panel.zc)(x) + 0.5 * panel.kx * (x - panel.L / 2) ** 2,
    thickness: (x) => front + ((rear - front) * x) / panel.L,
  };
  const half = head.spreadMm / 2 / head.D;
  return stripCells({
    length: panel.L,
    nx: mesh.nx,
    nv: mesh.nv,
    low: strip,
    high: strip,
    faceCurvature: panel.kp,
    turnHeight: head.zcr,
    // The host's own power differs in its last bit between engines; the cases must not.
    turn: (x) => half * (head.r + (1 - head.r) * pow(1 - x / panel.L, head.n)),
  });
}

function lawOf({ law }: CaseInputs, { n, thickness }: StripCells): Law {
  const all = (value: number): Float64Array => new Float64Array(n).fill(value);
  if (law.kind === "k") return { kind: "linear", stiffness: all(law.k) };
  return {
    kind: "series",
    upperModulus: all(law.Ep),
    upperThickness: thickness,
    upperLimit: law.eps ?? Number.POSITIVE_INFINITY,
    lowerModulus: all(law.Et),
    lowerThickness: all(law.ht),
  };
}
