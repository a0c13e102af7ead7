import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { SIDES, STATIONS } from "../../core/src/terms/places.ts";
import { termsOf, unevenness } from "../../core/src/work/panel/evenness.ts";
import { type Fill, figuresIn, NO_FILL } from "../../core/src/work/panel/fill.ts";
import { bestLevels } from "../../core/src/work/panel/levels.ts";
import { isAllowed, LEAST_WORK_MM, proposePanel } from "../../core/src/work/panel/propose.ts";
import { edgeFill, fillFrom } from "../../core/src/work/panel/turned.ts";
import { propertySeed } from "../number/seed.ts";
import { draftOf, EVEN, FLAT, hollowCase, hollowNear, panelCase } from "./panel-case.ts";

const seed = propertySeed("panel");

/** Angles, heights and thicknesses of the bearing moved about, and the kind of filling. */
const anySaddle = fc.record({
  turn: fc.array(fc.integer({ min: -7, max: 7 }), { minLength: 3, maxLength: 3 }),
  raise: fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 3, maxLength: 3 }),
  filling: fc.constantFrom("wool", "foam", "unknown"),
  hollow: fc.constantFrom(0, 0.1, 0.18),
  clearance: fc.integer({ min: 40, max: 58 }),
});

test("any saddle: within limits, in steps of a hand, no clearance lost that is not there, and never less even", () => {
  fc.assert(
    fc.property(anySaddle, ({ turn, raise, filling, hollow: part, clearance }) => {
      const file = draftOf(EVEN, (draft) => {
        draft.saddle.panel.filling = filling;
        draft.horses[0].riderUp.clearanceTop = clearance;
        STATIONS.forEach((station, i) => {
          for (const side of SIDES) {
            draft.saddle.bearing[station][side].faceAngle += turn[i] ?? 0;
            draft.saddle.bearing[station][side].underStraightEdge += raise[i] ?? 0;
          }
        });
        hollowNear(draft, part);
      });
      const panel = panelCase(file);
      const { fill, before, after, deep } = proposePanel(panel);
      const mm = figuresIn(fill);
      expect(isAllowed(fill, panel.tree, deep ? 12 : 8, filling === "wool")).toBe(true);
      for (const one of mm) expect(Number.isInteger(2 * one)).toBe(true);
      if (filling !== "wool") expect(Math.min(...mm)).toBeGreaterThanOrEqual(0);
      expect(unevenness(after)).toBeLessThanOrEqual(unevenness(before));
      if (mm.some((one) => one !== 0)) {
        expect(Math.max(...mm.map(Math.abs))).toBeGreaterThanOrEqual(LEAST_WORK_MM);
        expect(unevenness(after)).toBeLessThan(unevenness(before));
        const [was, is] = [panel.searched(NO_FILL).rest, panel.searched(fill).rest];
        if (was?.ok)
          expect(was.crownOverBackMm - (is?.ok ? is.crownOverBackMm : -Infinity)).toBeLessThanOrEqual(
            Math.max(0, panel.read.spareMm),
          );
      }
    }),
    { seed, numRuns: 15 },
  );
});

describe("a second way to the levels: every place of a grid of 2 mm", () => {
  const cases = [
    ["flat", draftOf(FLAT, () => {})],
    ["hollow", hollowCase()],
    [
      "rocks",
      draftOf(EVEN, (file) => {
        for (const side of SIDES) file.saddle.bearing.mid[side].underStraightEdge += 4;
      }),
    ],
  ] as const;
  test.each(cases)("%s: nothing on the grid is more even by more than its cost of fill", (_, file) => {
    const panel = panelCase(file);
    const found = panel.searched(NO_FILL);
    const proposal = proposePanel(panel);
    const edges = edgeFill(found, panel.back, panel.tree, 8, panel.kind.oneSided);
    const of = (fill: Fill) => {
      const tried = panel.searched(fill);
      const lost =
        found.rest?.ok && tried.rest?.ok ? found.rest.crownOverBackMm - tried.rest.crownOverBackMm : Infinity;
      return lost > panel.read.spareMm ? Infinity : unevenness(termsOf(tried, found, panel.read));
    };
    const steps = [-4, -2, 0, 2, 4, 6, 8];
    const grid = steps.flatMap((front) =>
      steps.flatMap((mid) => steps.map((rear) => ({ front, mid, rear }))),
    );
    const allowed = grid
      .map((levels) => fillFrom(edges, levels))
      .filter((fill) => isAllowed(fill, panel.tree, 8, panel.kind.takes));
    const best = Math.min(...allowed.map(of));
    expect(allowed.length).toBeGreaterThan(20);
    expect(of(proposal.fill)).toBeLessThanOrEqual(best + 0.02 * 18);
    expect(of(proposal.fill)).toBeLessThanOrEqual(of(NO_FILL));
  });
  test("the search itself finds the least of a tilted bowl to a millimetre, and keeps inside", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -8, max: 8 }), { minLength: 3, maxLength: 3 }),
        ([a = 0, b = 0, c = 0]) => {
          const bowl = ({ front, mid, rear }: { front: number; mid: number; rear: number }) =>
            (front - a) ** 2 + (mid - b) ** 2 + (rear - c) ** 2 + (front - a) * (mid - b);
          expect(bestLevels(bowl)).toEqual({ front: a, mid: b, rear: c });
          const walled = bestLevels((at) => (Math.max(at.front, at.mid, at.rear) > 3 ? Infinity : bowl(at)));
          expect(Math.max(walled.front, walled.mid, walled.rear)).toBeLessThanOrEqual(3);
        },
      ),
      { seed },
    );
  });
});
