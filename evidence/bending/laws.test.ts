import {
  bendingStiffness,
  bendTo,
  readSection,
  release,
  type Section,
  unbent,
} from "@treewright/core/engine/bending/index.ts";
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  bentThrough,
  curvatures,
  type Drawn,
  drawnSections,
  RUNS,
  SEED,
  sectionOf,
} from "./random-section.ts";

const law = (name: string, holds: (drawn: Drawn, curvature: number) => void): void =>
  test(name, () => {
    fc.assert(fc.property(drawnSections, curvatures, holds), {
      seed: SEED,
      numRuns: RUNS,
      endOnFailure: true,
    });
  });

const momentAfter = (section: Section, path: readonly number[]): number =>
  readSection(section, bentThrough(section, path)).momentNmm;

/** Kept curvature after passes, each let go before the next. */
function keptAfter(section: Section, passes: readonly number[]): number {
  return passes.reduce((state, to) => release(section, bendTo(section, state, to)), unbent(section))
    .curvaturePerMm;
}

const symmetric = (drawn: Drawn): Drawn => ({ ...drawn, crushing: false });
/** Steps along a path are finite: two ways to one place agree to this part. */
const SAME = 2e-3;
/**
 * A fibre remembers its turns exactly. A section does as near as its neutral line stays: bonded layers that yield alike
 * both ways to 0.5 %; where joints slip or wood is crushed some fibres turn while the section does not: 3 %.
 */
const remembers = ({ jointN, crushing }: Drawn): number =>
  jointN === Number.POSITIVE_INFINITY && !crushing ? 0.005 : 0.03;

law(
  "after a turn back the path comes to the old curve at the old turning point, and goes on along it",
  (drawn, k) => {
    const section = sectionOf(drawn);
    const once = momentAfter(section, [k]);
    expect(Math.abs(momentAfter(section, [k, 0.5 * k, k]) - once)).toBeLessThan(remembers(drawn) * once);
    const further = momentAfter(section, [1.3 * k]);
    expect(Math.abs(momentAfter(section, [k, 0.5 * k, 1.3 * k]) - further)).toBeLessThan(
      remembers(drawn) * further,
    );
  },
);

law("one layer remembers its turns to round-off", (drawn, k) => {
  const { layers, ...rest } = sectionOf(drawn);
  const section = { ...rest, layers: layers.filter(({ name }) => name === "under") };
  const once = momentAfter(section, [k]);
  expect(Math.abs(momentAfter(section, [k, -0.7 * k, k]) - once)).toBeLessThan(1e-9 * once);
  expect(Math.abs(momentAfter(section, [k, -k]) + once)).toBeLessThan(1e-9 * once);
});

law("equal cycles close", (drawn, k) => {
  const section = sectionOf(symmetric(drawn));
  const once = momentAfter(section, [k]);
  const within = remembers(symmetric(drawn)) * once;
  expect(Math.abs(momentAfter(section, [k, -k]) + once)).toBeLessThan(within);
  expect(Math.abs(momentAfter(section, [k, -k, k]) - once)).toBeLessThan(within);
});

law("nothing goes back along the virgin curve once it has kept something", (drawn, k) => {
  const section = sectionOf(drawn);
  if (keptAfter(section, [k]) < 0.02 * k) return;
  expect(momentAfter(section, [k, 0.7 * k])).toBeLessThan(0.999 * momentAfter(section, [0.7 * k]));
});

law(
  "a later pass that goes further keeps what one pass would; closing after opening does not",
  (drawn, k) => {
    const section = sectionOf(drawn);
    const virgin = keptAfter(section, [1.3 * k]);
    expect(Math.abs(keptAfter(section, [k, 1.3 * k]) - virgin)).toBeLessThan(SAME * 1.3 * k);
    // Far past yield, and once joints have slipped back, a section forgets its first bend; before that it must not.
    const a = (1.5 * drawn.yieldMPa) / (205_000 * 0.25 * (drawn.coreMm + drawn.overMm));
    const bonded = sectionOf({ ...symmetric(drawn), composite: 0.5, jointN: Number.POSITIVE_INFINITY });
    const apart = keptAfter(bonded, [a, -0.2 * a]) - keptAfter(bonded, [-0.2 * a]);
    expect(Math.abs(apart)).toBeGreaterThan(SAME * a);
  },
);

law("let go, no moment is left", (drawn, k) => {
  const section = sectionOf(drawn);
  const free = release(section, bendTo(section, unbent(section), k));
  const scale = bendingStiffness(section, section.composite) * k;
  expect(Math.abs(readSection(section, free).momentNmm)).toBeLessThan(1e-6 * scale);
});

law("composite 0: no layer pulls at another, and the moments add up", (drawn, k) => {
  const section = sectionOf({ ...drawn, composite: 0 });
  const together = readSection(section, bentThrough(section, [k]));
  for (const { forceN } of together.layers) expect(Math.abs(forceN)).toBeLessThan(1e-3);
  const apart = section.layers.reduce(
    (sum, layer) => sum + momentAfter({ ...section, layers: [{ ...layer, middleMm: 0 }] }, [k]),
    0,
  );
  expect(Math.abs(together.momentNmm - apart)).toBeLessThan(SAME * apart);
});

law("composite 1 and bonded: plane sections stay plane", (drawn, k) => {
  const bonded = { ...drawn, composite: 1, jointN: Number.POSITIVE_INFINITY };
  const section = sectionOf(bonded);
  const [over, core, under] = readSection(section, bentThrough(section, [k, 0.3 * k])).layers;
  expect(over?.strain[1]).toBeCloseTo(core?.strain[0] ?? Number.NaN, 12);
  expect(core?.strain[1]).toBeCloseTo(under?.strain[0] ?? Number.NaN, 12);
});

law("no plate bears more than its joints pass, and joints that pass less slip more", (drawn, k) => {
  const slipWith = (jointN: number) => {
    const section = sectionOf({ ...drawn, jointN });
    const { layers } = readSection(section, bentThrough(section, [k, -0.5 * k]));
    for (const { forceN, name } of layers)
      if (name !== "core") expect(Math.abs(forceN)).toBeLessThanOrEqual(jointN * (1 + 1e-9) + 1e-4);
    return Math.max(...layers.map(({ slip }) => slip));
  };
  expect(slipWith(4000)).toBeGreaterThanOrEqual(slipWith(8000));
});

law("worn joints: the composite factor only falls, and the same pass then keeps no more", (drawn, k) => {
  const fresh = { ...drawn, composite: 0.2 + 0.5 * drawn.composite, jointN: 5000 };
  const wear = { composite: 0.5 * fresh.composite, slipStrain: 0.002 };
  const section = { ...sectionOf(fresh), wear };
  const first = release(section, bendTo(section, unbent(section), k));
  const second = release(section, bendTo(section, first, 1.2 * k));
  expect(first.composite).toBeLessThanOrEqual(fresh.composite);
  expect(second.composite).toBeLessThanOrEqual(first.composite);
  expect(second.composite).toBeGreaterThanOrEqual(wear.composite);
});

law(
  "twice as large in all lengths, half the curvature: four times the force, eight times the moment",
  (drawn, k) => {
    const section = sectionOf({ ...drawn, jointN: Number.POSITIVE_INFINITY });
    const larger = {
      ...section,
      layers: section.layers.map((layer) => ({
        ...layer,
        widthMm: 2 * layer.widthMm,
        thicknessMm: 2 * layer.thicknessMm,
        middleMm: 2 * layer.middleMm,
      })),
    };
    const moment = momentAfter(section, [k]);
    expect(Math.abs(momentAfter(larger, [k / 2]) / 8 - moment)).toBeLessThan(1e-6 * moment);
  },
);

law("closing is opening seen from the other face", (drawn, k) => {
  const section = sectionOf(drawn);
  const turned = {
    ...section,
    layers: section.layers.map((layer) => ({ ...layer, middleMm: -layer.middleMm })),
  };
  const [ours, theirs] = [keptAfter(section, [k, -0.6 * k]), keptAfter(turned, [-k, 0.6 * k])];
  expect(Math.abs(ours + theirs)).toBeLessThan(1e-6 * k);
});

law("a moment 5 % off would be seen by each of these", (drawn, k) => {
  const once = momentAfter(sectionOf(drawn), [k]);
  expect(Math.abs(1.05 * once - once)).toBeGreaterThan(SAME * once);
});
