import { describe, expect, test } from "vitest";
import { doubtOf } from "../../core/src/answer/draw-table.ts";
import { movedBy } from "../../core/src/answer/follows.ts";
import { roadOf } from "../../core/src/answer/road.ts";
import { drawAt, settledAt } from "../../core/src/answer/settle.ts";
import { inDraw, type Whole, wholeAt } from "../../core/src/answer/whole.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { AS_FOUND, type Moving } from "../../core/src/reach/move.ts";
import { drawDeviations } from "../../core/src/shape/draw.ts";
import { SEED, surveyOf } from "./examples.ts";

/*
 * A draw takes the back to second order about the places where the cells lie at the means, and starts from a
 * neighbour's pose. Here the same draws are built the long way: the whole back made anew and read at every step, each
 * setting settled from nothing. What this cannot see: a fault in the forms that both are made of.
 */
const road = roadOf(surveyOf("09-alter-in-the-saddle"), 0, SEED);
const settled = settledAt(
  road,
  road.settings.find(({ changeMm }) => changeMm === 6),
);
if (settled === undefined) throw new Error("nothing was settled");
const { forms } = settled.ready;

const DRAWN = 20;
/** From somewhere within the thousand, not their beginning. */
const FROM = 480;
const table = drawAt(settled, SEED, FROM, FROM + DRAWN);

const wholly = (index: number, moving: Moving): Whole => {
  const found = wholeAt(inDraw(forms, drawDeviations(forms.uncertain, SEED, index)), moving, {
    mesh: MESHES.draw,
  });
  if (found === undefined) throw new Error("no whole");
  return found;
};
const today = Array.from({ length: DRAWN }, (_, i) => wholly(FROM + i, AS_FOUND));
const drawnAt = (key: string, i: number): number => table.values[key]?.[i] ?? Number.NaN;

/** What the second order may leave out, as parts of the doubt that these draws tell: at most, and on the whole (rms). */
const WORST_PART = 1 / 10;
const USUAL_PART = 1 / 30;

const FIGURES = ["clearanceMm", "besideMm", "seatDeg", "frontRiseMm", "rearRiseMm"] as const;

describe("twenty draws built in full agree with the draws", () => {
  const many = drawAt(settled, SEED, 0, 300);
  describe.each(settled.changed.map(({ setting, drawn }) => [setting.id, drawn.moving] as const))(
    "%s",
    (name, moving) => {
      const full = today.map((before, i) => movedBy(before, wholly(FROM + i, moving)));
      test("the tree is the same, and rests in the same draws", () => {
        for (const [i, moved] of full.entries()) {
          expect(drawnAt(`${name} rests`, i)).toBe(moved.seatDeg === undefined ? 0 : 1);
          for (const station of ["front", "mid", "rear"] as const)
            expect(drawnAt(`moved ${name} ${station}`, i)).toBeCloseTo(
              moved.channelMm[station] ?? Number.NaN,
              9,
            );
        }
      });
      test.each(FIGURES)("%s", (figure) => {
        const strays = full.flatMap((moved, i) => {
          const value = moved[figure];
          return value === undefined ? [] : [Math.abs(drawnAt(`moved ${name} ${figure}`, i) - value)];
        });
        const doubt = doubtOf(many, `moved ${name} ${figure}`) ?? Number.NaN;
        const worst = Math.max(...strays) / doubt;
        const usual = Math.sqrt(strays.reduce((sum, one) => sum + one * one, 0) / strays.length) / doubt;
        console.log(
          `${name}, ${figure}: U ${doubt.toFixed(3)}, worst ${worst.toFixed(4)} of it, rms ${usual.toFixed(4)}`,
        );
        expect(strays.length).toBeGreaterThan(DRAWN / 2);
        expect(worst).toBeLessThan(WORST_PART);
        expect(usual).toBeLessThan(USUAL_PART);
      });
    },
  );
});
