import { describe, expect, test } from "vitest";
import { z } from "zod";
import { roadOf, toJudge } from "../../core/src/answer/road.ts";
import type { MeasuredLimit } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import type { JudgedLimit } from "../../core/src/judge/judgement.ts";
import { getAt, putAt } from "../../core/src/survey/path.ts";
import { fileOf, RIDES, SEED, surveyFrom } from "./examples.ts";
import { mirrored } from "./mirror.ts";

/*
 * A mirrored horse under a mirrored saddle has the mirrored answer. Figures are those at the means: the doubts are drawn
 * by the name of each reading, so those of the two sides are two samples of one thing.
 */
const SIGNED = /^(horse-sides|saddle-(half-angles|point-lengths|diagonals|panel-sides))/;
const otherSide = (at: string): string =>
  at.replace(/\b(near|off)\b/g, (side) => (side === "near" ? "off" : "near"));
type Figure = Pick<JudgedLimit & MeasuredLimit, "rule" | "at" | "value">;
const keyOf = (one: Figure & { readonly temper?: string | undefined }, at: string) =>
  `${one.rule}, ${at}, ${one.temper ?? ""}`;

function expectMirrored(limits: readonly Figure[], mirror: readonly Figure[]): void {
  const other = new Map(mirror.map((one) => [keyOf(one, otherSide(one.at)), one]));
  expect(other.size).toBe(mirror.length);
  expect(mirror).toHaveLength(limits.length);
  for (const limit of limits) {
    const found = other.get(keyOf(limit, limit.at));
    const sign = SIGNED.test(limit.rule) ? -1 : 1;
    const where = keyOf(limit, limit.at);
    if (limit.value === undefined) expect([where, found?.value]).toEqual([where, undefined]);
    else expect(Math.abs(sign * (found?.value ?? Number.NaN) - limit.value), where).toBeLessThan(1e-6);
  }
}

function bothWays(file: unknown, horse: number) {
  return [file, mirrored(file)].map((one) => {
    const input = toJudge(roadOf(surveyFrom(one), horse, SEED));
    return { input, ...judgeCase(input).answers };
  });
}

const traces = z.array(z.looseObject({ points: z.array(z.tuple([z.number(), z.number()])) }));

/** An example with a horse (a little fuller on its near side) and a saddle that are not the same on both sides, within what is still read as square. */
function lopsided(name: string): unknown {
  const horse = "horses.0";
  const changes: readonly (readonly [string, (value: number) => number])[] = [
    ["saddle.head.halfAngleNear", (deg) => deg + 0.5],
    ["saddle.bearing.front.near.faceAngle", (deg) => deg - 1.5],
    ["saddle.bearing.mid.off.faceAngle", (deg) => deg + 1],
    ["saddle.bearing.rear.off.width", (mm) => mm + 3],
    [`${horse}.girthed.clearanceNear`, (mm) => mm + 2],
    [`${horse}.standing.hollowOff`, (mm) => mm + 1],
    [`${horse}.girthed.pointBehindBladeOff`, (mm) => mm + 4],
  ];
  const steps = (path: string) => path.split(".").map((step) => (step === "0" ? 0 : step));
  const changed = changes.reduce((file: unknown, [path, change]) => {
    const before = getAt(file, steps(path));
    return typeof before === "number" ? putAt(file, steps(path), change(before)) : file;
  }, fileOf(name));
  const at = [...steps(horse), "traces"];
  const fuller = traces.parse(getAt(changed, at)).map(({ points, ...trace }) => ({
    ...trace,
    points: points.map(([y, z]) => [y < 0 ? 1.03 * y : y, z]),
  }));
  return putAt(changed, at, fuller);
}

test("a mirror seen in a mirror is the case itself, and a mirror is not", () => {
  for (const name of ["05-readings-in-inches", "09-alter-in-the-saddle"]) {
    expect(mirrored(mirrored(fileOf(name)))).toEqual(fileOf(name));
  }
  expect(mirrored(lopsided("09-alter-in-the-saddle"))).not.toEqual(lopsided("09-alter-in-the-saddle"));
});

describe.each(RIDES)("$name, horse $horse, in a mirror", ({ name, horse }) => {
  const [there, mirror] = bothWays(fileOf(name), horse);
  test("has the same three answers and the same setting", () => {
    expect(mirror?.horse.id).toBe(there?.horse.id);
    expect(mirror?.saddle.id).toBe(there?.saddle.id);
    expect([mirror?.work.id, mirror?.work.also]).toEqual([there?.work.id, there?.work.also]);
    expect(mirror?.setting?.id).toBe(there?.setting?.id);
    expect(mirror?.permitted).toEqual(there?.permitted);
  });
  test("has mirrored figures", () => {
    expectMirrored(there?.limitsToday ?? [], mirror?.limitsToday ?? []);
    expectMirrored(there?.limitsAfter ?? [], mirror?.limitsAfter ?? []);
  });
});

describe.each(["02-bought-without-history", "08-nothing-to-do", "09-alter-in-the-saddle"])(
  "%s, made lopsided",
  (name) => {
    const [there, mirror] = bothWays(lopsided(name), 0);
    test("the figures of every setting mirror, and so do the larger side and the fill", () => {
      expect(there?.input.largerSide).toBe("near");
      expect(mirror?.input.largerSide).toBe("off");
      expect(mirror?.input.fillMm.off).toBeCloseTo(there?.input.fillMm.near ?? Number.NaN, 6);
      expect(mirror?.input.fillMm.near).toBeCloseTo(there?.input.fillMm.off ?? Number.NaN, 6);
      expect(Math.abs((there?.input.fillMm.near ?? 0) - (there?.input.fillMm.off ?? 0))).toBeGreaterThan(0.5);
      for (const [i, candidate] of (there?.input.candidates ?? []).entries())
        expectMirrored(candidate.after, mirror?.input.candidates[i]?.after ?? []);
    });
    test("the answers are the same", () => {
      expect([mirror?.work.id, mirror?.setting?.id]).toEqual([there?.work.id, there?.setting?.id]);
    });
  },
);
