import { describe, expect, test } from "vitest";
import { drawUniform } from "../random.ts";
import { BY_EYE_MM, CARD_MM, type Matched, screenScale, sideRangePx } from "./screen-scale.ts";

/*
 * What these checks cannot see: how well a hand in a yard really puts a line to an edge. That bound is a working limit.
 */
const SEED = Number(process.env.SEED ?? 20_260);
const DRAWS = 4000;
const drawn = (i: number, what: string, from: number, to: number): number =>
  from + (to - from) * drawUniform(SEED, i, what);

/** A card on a screen of this scale, each of its four lines off by so many mm. */
function matchedWith(pxPerMm: number, off: (line: string) => number): Matched {
  const side = (name: "long" | "short") =>
    (CARD_MM[name] + off(`${name} from`) + off(`${name} to`)) * pxPerMm;
  return screenScale(side("long"), side("short"));
}

function scaleOf(matched: Matched) {
  if (!matched.ok) throw new Error(`seed ${SEED}: ${JSON.stringify(matched)}`);
  return matched.scale;
}

describe("the scale of a screen", () => {
  test("lines on the very edges give the screen's own scale, on any screen", () => {
    for (let i = 0; i < 200; i++) {
      const pxPerMm = drawn(i, "scale", 1.01, 15.9);
      expect(scaleOf(matchedWith(pxPerMm, () => 0)).pxPerMm).toBeCloseTo(pxPerMm, 10);
    }
  });

  test("at 96 to the inch: 323.5 by 204 px is 3.78 px/mm, known to 0.8 %", () => {
    // By hand: a line ± 0.5 mm by eye and ± 0.066 by half a step; sqrt((2 (0.25 + 0.00438) + 0.0169) / 3) = 0.4186 mm;
    // 1.96 * 0.4186 / sqrt(85.6^2 + 53.98^2) = 0.811 %.
    const scale = scaleOf(screenScale(323.5, 204));
    expect(scale.pxPerMm).toBeCloseTo(3.779, 3);
    expect(scale.uPart).toBeCloseTo(0.00811, 5);
  });

  test("the true scale lies within its doubt in about 95 of 100 matches, and a good match is hardly ever refused", () => {
    let taken = 0;
    let within = 0;
    for (let i = 0; i < DRAWS; i++) {
      const pxPerMm = drawn(i, "scale", 2, 8);
      const matched = matchedWith(pxPerMm, (line) => drawn(i, line, -BY_EYE_MM, BY_EYE_MM));
      if (!matched.ok) continue;
      taken += 1;
      if (Math.abs(matched.scale.pxPerMm / pxPerMm - 1) <= matched.scale.uPart) within += 1;
    }
    // Four even errors are nearly normal: 95 % ± 2 % leaves five standard errors of 4000 draws.
    expect(taken / DRAWS, `seed ${SEED}`).toBeGreaterThan(0.93);
    expect(taken / DRAWS, `seed ${SEED}`).toBeLessThan(0.99);
    expect(within / taken, `seed ${SEED}`).toBeGreaterThan(0.93);
    expect(within / taken, `seed ${SEED}`).toBeLessThan(0.99);
  });

  test("a side that is wrong by 3 % is refused on any screen, with both readings", () => {
    for (let i = 0; i < 200; i++) {
      const pxPerMm = drawn(i, "scale", 1.2, 15);
      const wrong = drawn(i, "way", 0, 1) < 0.5 ? 0.97 : 1.03;
      const matched = screenScale(CARD_MM.long * pxPerMm, CARD_MM.short * pxPerMm * wrong);
      if (matched.ok) throw new Error(`seed ${SEED}, draw ${i}: a wrong match was taken`);
      expect(matched.why).toBe("sides-differ");
      expect(matched.short.pxPerMm).toBeCloseTo(pxPerMm * wrong, 10);
      expect(matched.apart).toBeGreaterThan(matched.allowed);
    }
  });

  test("a larger drawing in the same proportion has the larger scale, and never a larger doubt in parts", () => {
    for (let i = 0; i < 200; i++) {
      const pxPerMm = drawn(i, "scale", 1.1, 7);
      const times = drawn(i, "times", 1, 2);
      const small = scaleOf(screenScale(CARD_MM.long * pxPerMm, CARD_MM.short * pxPerMm));
      const large = scaleOf(screenScale(CARD_MM.long * pxPerMm * times, CARD_MM.short * pxPerMm * times));
      expect(large.pxPerMm / small.pxPerMm).toBeCloseTo(times, 10);
      expect(large.uPart).toBeLessThanOrEqual(small.uPart);
    }
  });

  test("a scale that no screen has is refused, and so is what is no length", () => {
    for (const [long, short] of [
      [40, 25],
      [2000, 1261],
      [0, 0],
      [Number.NaN, 204],
      [-323.5, -204],
    ] as const)
      expect(screenScale(long, short)).toMatchObject({ ok: false, why: "no-such-screen" });
    expect(sideRangePx("long").least).toBeCloseTo(85.6, 10);
  });
});
