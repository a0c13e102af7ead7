import {
  type Arch,
  elasticFlexibility,
  glanceFor,
  type Half,
  halfTurnRad,
  openingMm,
  passAt,
  passFor,
  passTo,
  type Section,
  unbentArch,
} from "@treewright/core/engine/bending/index.ts";
import fc from "fast-check";
import { expect, test } from "vitest";
import { steelLayer } from "./one-layer.ts";
import { type Drawn, drawnSections, SEED, sectionOf } from "./random-section.ts";

/** A half circle of radius `radius`, its feet on the line of the forces. */
function halfCircle(section: Section, radius: number, pieces: number): Half {
  const length = (radius * Math.PI) / 2;
  return Array.from({ length: pieces }, (_, i) => ({
    lengthMm: length / pieces,
    leverMm: radius * Math.cos(((i + 0.5) * length) / pieces / radius),
    section,
  }));
}

const archOf = (half: Half): Arch => [half, half];
const drawnArch = (drawn: Drawn): Arch => archOf(halfCircle(sectionOf(drawn, 12), 85, 8));

const law = (name: string, holds: (drawn: Drawn) => void): void =>
  test(name, () => {
    fc.assert(fc.property(drawnSections, holds), { seed: SEED, numRuns: 20, endOnFailure: true });
  });

test("an elastic half circle opens by pi H R^3 / 2 E I under H", () => {
  const half = halfCircle(steelLayer(40, 6, 205_000, 1e9, 8), 100, 200);
  const closed = (Math.PI * 100 * 100 ** 3) / (2 * 205_000 * ((40 * 6 ** 3) / 12));
  const pass = passAt(archOf(half), unbentArch(archOf(half)), 100);
  expect(Math.abs((pass?.heldMm ?? 0) - closed)).toBeLessThan(1e-4 * closed);
  expect(Math.abs(100 * elasticFlexibility(archOf(half)) - closed)).toBeLessThan(1e-4 * closed);
  expect(Math.abs(pass?.freeMm ?? 1)).toBeLessThan(1e-9);
});

law("more travel keeps more, and takes more force", (drawn) => {
  const arch = drawnArch(drawn);
  const passes = [4, 6, 9, 13].map((held) => passTo(arch, unbentArch(arch), held));
  for (const [i, pass] of passes.entries()) {
    const before = passes[i - 1];
    if (pass === undefined || before === undefined) continue;
    expect(pass.freeMm).toBeGreaterThanOrEqual(before.freeMm - 1e-4);
    expect(pass.forceN).toBeGreaterThan(before.forceN);
  }
});

law("what is asked for is kept; a glance is near it", (drawn) => {
  const arch = drawnArch(drawn);
  const start = unbentArch(arch);
  const pass = passFor(arch, start, 5);
  const glance = glanceFor(arch, start, 5);
  if (pass === undefined || glance === undefined) return;
  expect(pass.freeMm).toBeCloseTo(5, 2);
  expect(Math.abs(glance.heldMm - pass.heldMm)).toBeLessThan(0.03 * pass.heldMm);
  expect(Math.abs(glance.forceN - pass.forceN)).toBeLessThan(0.03 * pass.forceN);
});

law(
  "a second pass that keeps more ends where one pass would; setting back takes less than it took",
  (drawn) => {
    const arch = drawnArch({ ...drawn, composite: Math.max(0.2, drawn.composite) });
    const start = unbentArch(arch);
    const [first, once] = [passFor(arch, start, 4), passFor(arch, start, 7)];
    const then = first && passFor(arch, first.free, 7);
    const back = first && passFor(arch, first.free, 0);
    if (!first || !once || !then || !back) return;
    expect(Math.abs(then.heldMm - once.heldMm)).toBeLessThan(0.01 * once.heldMm);
    // Where wood was crushed it is held up by fewer fibres, and nothing general can be said.
    if (!drawn.crushing) expect(Math.abs(back.forceN)).toBeLessThan(first.forceN);
    expect(openingMm(arch, back.free)).toBeCloseTo(0, 2);
  },
);

law(
  "the length that bends and the hinge are results: the turn times the hinge's height is what a tip keeps",
  (drawn) => {
    const arch = drawnArch(drawn);
    const pass = passFor(arch, unbentArch(arch), 6);
    if (pass === undefined) return;
    const hinge = pass.freeMm / 2 / halfTurnRad(arch[0], pass.free[0]);
    expect(hinge).toBeGreaterThan(0.6 * 85);
    expect(hinge).toBeLessThanOrEqual(85 * 1.03);
  },
);

test("an arch that cannot be brought there is refused", () => {
  const weak = steelLayer(40, 3, 205_000, 250, 12);
  const arch = archOf(halfCircle(weak, 85, 8));
  expect(passTo(arch, unbentArch(arch), 400)).toBeUndefined();
});
