import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { THIRDS } from "../../core/src/terms/places.ts";
import { BACKS } from "./backs.ts";
import { CLAIMS } from "./claims.ts";
import { LOADS, onBack, WIDTHS } from "./experiment.ts";
import { frozen, PAGE, pageWith } from "./frozen.ts";
import { changeOf, verdictOf } from "./table.ts";

// Figures of an experiment with the model: that they are computed as frozen, and that the directions said beforehand hold
// wherever a saddle rests. Whether a horse does the same, only the published figures beside them can say.

const before = frozen();
/** The saddles are typed with this machine's own cosine, which may differ in its last bit; the rest is exact. */
const NEAR = 1e-6;

describe.each(BACKS.map((shape) => [shape.id, shape] as const))("%s", (id, shape) => {
  const now = onBack(shape);
  test("comes out as frozen, and not 5 % higher", () => {
    for (const load of LOADS) {
      for (const width of WIDTHS) {
        const [was, is] = [before[id]?.[load][width], now[load][width]];
        if (was === undefined || "refused" in was || "refused" in is) {
          expect(is).toEqual(was);
          continue;
        }
        expect(is.headUpDeg ?? 0).toBeCloseTo(was.headUpDeg ?? 0, 5);
        for (const third of THIRDS) {
          const ratio = is.meanKPa[third] / was.meanKPa[third];
          expect(Math.abs(ratio - 1)).toBeLessThan(NEAR);
          expect(Math.abs(1.05 * ratio - 1)).toBeGreaterThan(NEAR);
        }
      }
    }
  });
  test("every direction said beforehand holds where the saddle rests", () => {
    for (const claim of CLAIMS)
      for (const load of LOADS) {
        if (claim.of === "head" && load !== "rest") continue;
        expect([claim.id, load, verdictOf(claim, now, load)]).not.toContain("against");
      }
  });
  test("a tree as it is changes nothing", () => {
    const same = { ...now, rest: { ...now.rest, narrow: now.rest.fitted } };
    expect(changeOf(same, "rest", "narrow", "rear")).toBe(0);
  });
});

test("the page shows these figures and no others", () => {
  const page = readFileSync(PAGE, "utf8");
  expect(pageWith(page, before)).toBe(page);
});
