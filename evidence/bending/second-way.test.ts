import { bendTo, readSection, unbent } from "@treewright/core/engine/bending/index.ts";
import fc from "fast-check";
import { expect, test } from "vitest";
import { momentsPlainly } from "./plainly.ts";
import { curvatures, drawnSections, SEED, sectionOf } from "./random-section.ts";

/** The two programs share neither strips nor steps: half of one part in a hundred of the greatest moment. */
const ALIKE = 0.005;

function largestApart(composite: number | undefined, path: readonly number[], drawn: object): number {
  const base = drawn as Parameters<typeof sectionOf>[0];
  const section = sectionOf(
    { ...base, composite: composite ?? base.composite, crushing: false, jointN: Number.POSITIVE_INFINITY },
    48,
  );
  let state = unbent(section);
  const ours = path.map((curvature) => {
    state = bendTo(section, state, curvature);
    return readSection(section, state).momentNmm;
  });
  const theirs = momentsPlainly(section, path, 60, 40);
  const scale = Math.max(...theirs.map(Math.abs));
  return Math.max(...ours.map((moment, i) => Math.abs(moment - (theirs[i] ?? Number.NaN)) / scale));
}

const paths = fc
  .array(fc.tuple(curvatures, fc.boolean()), { minLength: 2, maxLength: 5 })
  .map((ends) => ends.map(([size, back]) => (back ? -size : size)));

test("a path of turns gives the moments of turning points and doubled branches, worked by another program", () => {
  fc.assert(
    fc.property(drawnSections, paths, (drawn, path) => {
      expect(largestApart(undefined, path, drawn)).toBeLessThan(ALIKE);
    }),
    { seed: SEED, numRuns: 25, endOnFailure: true },
  );
});

test("the comparison sees a composite factor 5 % off", () => {
  const drawn = {
    composite: 0.5,
    coreMm: 10,
    overMm: 2.5,
    underMm: 3,
    yieldMPa: 260,
    hardeningMPa: 1000,
    jointN: Number.POSITIVE_INFINITY,
    crushing: false,
  };
  const section = sectionOf(drawn, 48);
  const moment = (composite: number) => {
    const other = { ...section, composite };
    return readSection(other, bendTo(other, unbent(other), 3e-4)).momentNmm;
  };
  const [theirs = 0] = momentsPlainly(section, [3e-4], 60, 40);
  expect(Math.abs(moment(0.5) - theirs) / theirs).toBeLessThan(ALIKE);
  expect(Math.abs(moment(0.525) - theirs) / theirs).toBeGreaterThan(ALIKE);
});
