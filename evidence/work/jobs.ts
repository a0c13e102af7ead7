import { readFileSync } from "node:fs";
import { drawNormal } from "@treewright/core/engine/random.ts";
import { drawnHead } from "@treewright/core/reach/bend/drawn-head.ts";
import { bendingHead } from "@treewright/core/reach/bend/head-arch.ts";
import type { Deviations } from "@treewright/core/shape/model.ts";
import { readCase } from "@treewright/core/survey/read-case.ts";
import { firstBelief, unpressed } from "@treewright/core/work/belief.ts";
import { curveAt, headCurves } from "@treewright/core/work/curves.ts";
import { nextPass } from "@treewright/core/work/next-pass.ts";
import { propertySeed } from "../number/seed.ts";
import { type PassTold, type TrueHead, tableHead, workThrough } from "./simulate.ts";

/** Another one by SEED=1 npx vitest run evidence/work. */
export const SEED = propertySeed("jobs at the press", 4242);
/** Bare heads, 12 mm wanted: jobs long enough that there are later passes to judge. */
const WANTED_MM = 12;
/** The stop on the wood's stretch, set aside: with it most jobs end after one pass, and nothing is left to cover. */
const NO_STRETCH_STOP = 0.03;

const read = readCase(
  readFileSync(new URL("../../examples/cases/09-alter-in-the-saddle.json", import.meta.url), "utf8"),
);
if (!read.ok) throw new Error("the example cannot be read");
const { saddle } = read.survey;
const curves = headCurves(saddle, 1, SEED)?.curves ?? [];
const belief = firstBelief(curves, false, 0.5, SEED);

/** How true heads differ from what is believed: their ranges moved, as part of each half range, or made wider; and more spring-back. */
export interface Differs {
  readonly moved: number;
  readonly wider: number;
  readonly springBack: number;
}

export const HEAD = bendingHead(saddle);
/** What chance does to head `i` in a pass. */
export const noiseOf = (i: number) => (name: string, pass: number) =>
  drawNormal(SEED + 3, i * 64 + pass, name);

/** Deviations of a head of none of the tables believed. */
export function trueDeviations({ moved, wider }: Differs, i: number): Deviations {
  if (HEAD === undefined) throw new Error("the example's head is not one that is bent");
  const drawn = drawnHead(HEAD, SEED + 1, i);
  const ranges = new Map(HEAD.uncertain.map((one) => [one.id, one]));
  return Object.fromEntries(
    Object.entries(drawn).map(([id, by]) => {
      const range = ranges.get(id);
      const half = range?.kind === "range" && STIFFENS.has(id) ? range.hi - range.mean : 0;
      return [id, wider * by + moved * half];
    }),
  );
}

function fromTable(differs: Differs, i: number): TrueHead | undefined {
  const curve = HEAD && curveAt(HEAD, trueDeviations(differs, i), saddle, 1);
  if (curve === undefined) return undefined;
  const one = unpressed(curve, false, 0, SEED + 2, i);
  const springBack = one.springBack * differs.springBack;
  return tableHead({ ...one, springBack, slackMm: Math.max(0, one.slackMm * differs.wider) }, noiseOf(i));
}

/** What makes a head spring back more where there is more of it. */
const STIFFENS = new Set(["bend.yield.MPa", "bend.wood.crush.MPa", "bend.wood.thickness.mm"]);

/** Jobs worked by the advice, one for each true head. */
export function jobs(
  differs: Differs,
  count: number,
  stretchStop = NO_STRETCH_STOP,
  bentBy: (differs: Differs, i: number) => TrueHead | undefined = fromTable,
): PassTold[][] {
  const first = nextPass(belief, WANTED_MM, { stretchStop });
  return Array.from({ length: count }, (_, i) => {
    const head = bentBy(differs, i);
    if (head === undefined) return [];
    const readers = { seed: SEED + 4, index: i };
    return workThrough(head, belief, WANTED_MM, first, readers, 6, stretchStop);
  }).filter((told) => told.length > 0);
}

export interface Covered {
  readonly jobs: number;
  /** Passes from the second on: all, those within their 90 %, and those that kept more or less. */
  readonly passes: number;
  readonly within: number;
  readonly more: number;
  readonly less: number;
  /** Jobs that ended more than the expanded uncertainty of the spread beyond what was wanted. */
  readonly beyond: number;
  /** Part of the later passes that kept more than the middle foretold. */
  readonly aboveMiddle: number;
  readonly keptMeanMm: number;
  /** Middle width of the interval, pass by pass, mm. */
  readonly widthsMm: readonly number[];
  readonly shown: string;
}

/** Expanded uncertainty of a spread read on a bare head, mm: twice 0.5. */
const U_MM = 1;

export function covered(told: readonly (readonly PassTold[])[]): Covered {
  const later = told.flatMap((job) => job.slice(1));
  const more = later.filter(({ keptMm, foretold }) => keptMm > foretold.keptMm.hi).length;
  const less = later.filter(({ keptMm, foretold }) => keptMm < foretold.keptMm.lo).length;
  const aboveMiddle =
    later.filter(({ keptMm, foretold }) => keptMm > foretold.keptMm.mid).length / later.length;
  const ends = told.map((job) => job.at(-1)?.keptMm ?? 0);
  const beyond = ends.filter((mm) => mm > WANTED_MM + U_MM).length;
  const [passes, within] = [later.length, later.length - more - less];
  const keptMeanMm = ends.reduce((sum, mm) => sum + mm, 0) / ends.length;
  const widthsMm = [0, 1, 2, 3].map((pass) => middle(told.flatMap((job) => job[pass] ?? [])));
  const part = ((100 * within) / passes).toFixed(1);
  const shown = `${told.length} jobs, ${passes} later passes: ${part} % within, ${more} kept more, ${less} less, ${(100 * aboveMiddle).toFixed(0)} % above the middle; ends: mean ${keptMeanMm.toFixed(2)} of ${WANTED_MM} mm, ${beyond} beyond by more than ${U_MM} mm; intervals of passes 1 to 4 ${widthsMm.map((mm) => mm.toFixed(1)).join(", ")} mm wide`;
  return { jobs: told.length, passes, within, more, less, beyond, aboveMiddle, keptMeanMm, widthsMm, shown };
}

function middle(told: readonly PassTold[]): number {
  const widths = told.map(({ foretold: { keptMm } }) => keptMm.hi - keptMm.lo).sort((a, b) => a - b);
  return widths[Math.floor(widths.length / 2)] ?? Number.NaN;
}
