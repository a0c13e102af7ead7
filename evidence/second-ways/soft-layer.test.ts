import { expect, test } from "vitest";
import { THIRDS } from "../../core/src/terms/places.ts";
import { COARSE, COLUMNS, deckHash, frozenOf, frozenThirds, mapApart, ROWS, thirdsN } from "./compare.ts";
import { solveAt } from "./finite-elements.ts";
import { blocksOf } from "./on-nodes.ts";
import { onHorse, SOFT_LAYERS, SQUARE } from "./soft-layer.ts";
import { onSprings } from "./springs.ts";

// A bed of springs against 3D finite elements of the same soft layer. What this cannot see: whether a horse's back is
// such a layer. Skin, fascia and muscle in layers, and nu near 0.5, are outside both.

const HORSES = SOFT_LAYERS.filter((one) => one !== SQUARE);

test("the frozen elements belong to the deck that is written today", () => {
  for (const given of SOFT_LAYERS) {
    const frozen = frozenOf(given.id);
    expect(deckHash(given, frozen)).toBe(frozen.deckSha256);
    expect(deckHash(given, { ...frozen, heaveMm: 1.05 * frozen.heaveMm })).not.toBe(frozen.deckSha256);
  }
});

test("the map inside the contact is within 6 % (rms of blocks of 5 cm2)", () => {
  for (const given of HORSES) {
    const { rms, most } = mapApart(given, frozenOf(given.id));
    console.log(`${given.id}: map apart by ${percent(rms)} rms, ${percent(most)} at most`);
    expect(rms).toBeLessThan(0.06);
  }
});

test("no third is further off than 4 %, and each would be if it were 10 % more", () => {
  for (const given of SOFT_LAYERS) {
    const elements = frozenThirds(given);
    const springs = Object.entries(thirdsN(onSprings(given).forces));
    const off = springs.map(([third, force]) => force / (elements[third] ?? Number.NaN) - 1);
    console.log(
      `${given.id}: ${springs.map(([third], at) => `${third} ${percent(off[at] ?? 0)}`).join(", ")}`,
    );
    for (const one of off) {
      expect(Math.abs(one)).toBeLessThan(0.04);
      expect(Math.abs((1 + one) * 1.1 - 1)).toBeGreaterThan(0.04);
    }
  }
});

test("under square ends the springs miss the peaks, by less than a factor of two over 5 cm2", () => {
  const springs = blocksOf(onSprings(SQUARE).forces, ROWS, COLUMNS);
  const ratios = frozenOf(SQUARE.id).blocksN.map((force, at) => force / (springs[at] ?? Number.NaN));
  const most = Math.max(...ratios);
  console.log(`square ends: elements ${most.toFixed(2)} times the springs at the corners`);
  expect(most).toBeGreaterThan(1.2);
  expect(most).toBeLessThan(2);
});

test("run anew on coarse bricks at the frozen pose, the elements carry the load and share it in the same thirds", () => {
  const given = onHorse(0.3);
  const found = solveAt(given, frozenOf(given.id), COARSE);
  const springs = thirdsN(onSprings(given).forces);
  const elements = thirdsN(found.forces);
  console.log(
    `${found.elements} elements in ${(found.ms / 1000).toFixed(1)} s: up ${found.upN.toFixed(1)} of ${given.weightN} N; ` +
      THIRDS.map((third) => `${third} ${percent(springs[third] / elements[third] - 1)}`).join(", "),
  );
  expect(Math.abs(found.upN / given.weightN - 1)).toBeLessThan(0.02);
  for (const third of ["front", "middle", "rear"] as const)
    expect(Math.abs(springs[third] / elements[third] - 1)).toBeLessThan(0.04);
});

function percent(part: number): string {
  return `${(100 * part).toFixed(1)} %`;
}
