import { describe, expect, test } from "vitest";
import { type DrawTable, doubtOf, movedDoubt } from "../../core/src/answer/draw-table.ts";
import { horseSides } from "../../core/src/answer/figures.ts";
import { carried, type Moved, type MovedDoubt } from "../../core/src/answer/follows.ts";
import { formsOf } from "../../core/src/answer/forms.ts";
import { roadOf } from "../../core/src/answer/road.ts";
import { doubtsOf, settledAt } from "../../core/src/answer/settle.ts";
import type { MeasuredLimit } from "../../core/src/judge/input.ts";
import { templateSpread } from "../../core/src/judge/measure/template.ts";
import type { Section } from "../../core/src/shape/model.ts";
import { SEED, surveyOf } from "./examples.ts";

/** Readings carried over to a setting, and how sure they are there. What the head does to a horse is not seen here. */
const MOVED: Moved = {
  clearanceMm: -9,
  besideMm: -4,
  seatDeg: -1.4,
  channelMm: { front: 3, mid: 2, rear: 1 },
  spreadMm: 6,
  halfTurnDeg: 2.5,
  frontRiseMm: -8,
  rearRiseMm: 2,
};
const DOUBT: MovedDoubt = {
  clearanceMm: 4,
  besideMm: 3,
  seatDeg: 0.4,
  channelMm: { front: 0.5, mid: 0.4, rear: 0.3 },
  spreadMm: 1.5,
  halfTurnDeg: 0.6,
  frontRiseMm: 3,
  rearRiseMm: 2,
};
const limit = (rule: string, at: string, value: number, station?: "front"): MeasuredLimit => ({
  rule,
  at,
  value,
  u: 3,
  missing: [],
  station,
});

describe("a reading carried over is the reading plus the difference, as sure as both together", () => {
  test.each([
    ["clearance-girthed", "", undefined, 50 - 9, 5],
    ["clearance-rider-up", "", undefined, 50 - 9, 5],
    ["clearance-half-seat", "", undefined, 50 - 9, 5],
    ["clearance-side", "girthed, near", undefined, 50 - 4, Math.sqrt(18)],
    ["seat-slope", "", undefined, 50 - 1.4, Math.sqrt(9.16)],
    ["channel-width", "front", "front", 53, Math.sqrt(9.25)],
    ["channel-over-ridge", "front", "front", 53, Math.sqrt(9.25)],
    ["spread-wanted", "template", undefined, 56, Math.sqrt(11.25)],
  ] as const)("%s %s", (rule, at, station, value, u) => {
    const [after] = carried([limit(rule, at, 50, station)], MOVED, DOUBT);
    expect(after?.value).toBeCloseTo(value, 12);
    expect(after?.u).toBeCloseTo(u, 12);
  });
  test("what the head does not move is left out; an untold difference leaves no value, an untold doubt no U", () => {
    expect(carried([limit("girth-groove", "", 20)], MOVED, DOUBT)).toEqual([]);
    expect(carried([limit("spread-wanted", "computed, cold", 2)], MOVED, DOUBT)).toEqual([]);
    const [untold] = carried([limit("seat-slope", "", 1)], { ...MOVED, seatDeg: undefined }, DOUBT);
    expect([untold?.value, untold?.u]).toEqual([undefined, undefined]);
    const [unsure] = carried([limit("seat-slope", "", 1)], MOVED, { ...DOUBT, seatDeg: undefined });
    expect([unsure?.value?.toFixed(6), unsure?.u]).toEqual(["-0.400000", undefined]);
  });
});

describe("the doubt of what follows", () => {
  const values = Array.from({ length: 1001 }, (_, i) => i / 100);
  const table: DrawTable = {
    from: 0,
    to: 1001,
    values: { "moved press +6 mm clearanceMm": values, "moved press +6 mm front": values },
  };
  test("is half of the central 95 % of the draws, grown with the change", () => {
    expect(movedDoubt(table, "press +6 mm", 1).clearanceMm).toBeCloseTo(4.75, 9);
    expect(movedDoubt(table, "press +6 mm", 0.6).channelMm.front).toBeCloseTo(0.6 * 4.75, 9);
    expect(movedDoubt(table, "press +6 mm", 1).seatDeg).toBeUndefined();
  });
  test("takes in what the coarser mesh of the draws may hide", () => {
    const road = roadOf(surveyOf("09-alter-in-the-saddle"), 0, SEED);
    const settled = settledAt(
      road,
      road.settings.find(({ changeMm }) => changeMm === 6),
    );
    const [changed] = settled?.changed ?? [];
    if (changed === undefined) throw new Error("nothing was settled");
    const mesh = changed.meshDoubt?.clearanceMm ?? Number.NaN;
    expect(mesh).toBeGreaterThan(0);
    expect(doubtsOf(changed, table).moved.clearanceMm).toBeCloseTo(4.75 + mesh, 9);
  });
  test("wants twenty draws at least", () => {
    const of = (n: number) => doubtOf({ from: 0, to: n, values: { one: values.slice(0, n) } }, "one");
    expect(of(19)).toBeUndefined();
    expect(of(20)).toBeGreaterThan(0);
    expect(doubtOf({ from: 0, to: 40, values: { one: Array(40).fill(Number.NaN) } }, "one")).toBeUndefined();
  });
});

/** Near less off, 60 to 90 mm below the top: a roof whose sides fall 1 and 0.8 for each mm out. */
test("a horse's sides: near less off, in width and in angle, where the trade looks", () => {
  const asked: number[][] = [];
  const fall = { near: 1, off: 0.8 };
  const section: Section = {
    xMm: 0,
    widthOwnMm: 0,
    widthSharedMm: 0,
    faceAngleRad: (side, from, to) => {
      asked.push([from, to]);
      return Math.atan(fall[side]);
    },
    halfWidthMm: (side, depth) => depth / fall[side],
    uncertain: [],
    outline: [],
  };
  const forms = { ...formsOf(surveyOf("07-half-empty"), 0), fronts: { cold: section, warm: undefined } };
  const [angle, width] = horseSides(forms, {});
  expect(asked).toEqual([
    [60, 90],
    [75, 112.5],
  ]);
  expect(angle?.value).toBeCloseTo(45 - (Math.atan(0.8) * 180) / Math.PI, 9);
  expect(width?.value).toBeCloseTo(75 - 93.75, 9);
});

/** Feelers are square to the point, so each counts 1 / cos(half-angle) across; own parts by squares, 1 mm for how it is held. */
test("a template's spread is as sure as two feelers and the hand that holds it", () => {
  const survey = surveyOf("09-alter-in-the-saddle");
  const [horse] = survey.horses;
  if (horse === undefined) throw new Error("no horse");
  const found = templateSpread(survey.saddle, horse, "horses[0]");
  const across = 1 / Math.cos((40.5 * Math.PI) / 180);
  expect(found.value).toBeCloseTo(2 * -3 * across, 9);
  // A feeler reads to 0.5 mm and shares nothing (assumption, in the instrument records).
  expect(found.u).toBeCloseTo(1.96 * Math.sqrt(2 * (0.5 * across) ** 2 + 1), 9);
});
