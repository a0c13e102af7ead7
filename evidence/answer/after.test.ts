import { describe, expect, test } from "vitest";
import { doubtOf } from "../../core/src/answer/draw-table.ts";
import { drawRange } from "../../core/src/answer/draws.ts";
import { feelersAfter, templateFaces } from "../../core/src/answer/feelers.ts";
import { movedBy } from "../../core/src/answer/follows.ts";
import { formsOf } from "../../core/src/answer/forms.ts";
import { inDraw, wholeAt } from "../../core/src/answer/whole.ts";
import { MESHES } from "../../core/src/fit/panel-cells.ts";
import { leverOfHead } from "../../core/src/reach/frame/head-move.ts";
import { exchanged, type Moving, opened } from "../../core/src/reach/move.ts";
import { caseSchema } from "../../core/src/survey/case.ts";
import { HEAD } from "../shape/model-saddle.ts";

/*
 * What a moved head takes with it, against the same head turned about its hinge point by point. That a real head
 * turns so cannot be seen here.
 */
const DEGREE = Math.PI / 180;
type Place = readonly [number, number];

function forms(plate: object = {}, template: object = {}) {
  const survey = caseSchema.parse({
    format: "treewright-case",
    version: 3,
    title: "invented",
    visit: { date: "2031-04-02" },
    saddle: { name: "invented", head: { ...HEAD, halfAngleOff: 45 } },
    horses: [{ name: "invented", template }],
    platesAtHand: [{ spreadTips: 215, halfAngle: 47, asFitted: "yes", ...plate }],
  });
  return { survey, forms: formsOf(survey, 0) };
}

const at = (one: ReturnType<typeof forms>["forms"], moving: ReturnType<typeof opened>) => {
  const whole = wholeAt(inDraw(one, {}), moving, { mesh: MESHES.draw });
  if (whole === undefined) throw new Error("no head");
  return whole;
};

/** Turned by `rad` about a hinge, its height told over the line of the tips; opening carries what lies below outward. */
const turned = ([y, z]: Place, rad: number, [hingeY, hingeZ]: Place): Place => [
  hingeY + (y - hingeY) * Math.cos(rad) - (z - hingeZ) * Math.sin(rad),
  hingeZ + (y - hingeY) * Math.sin(rad) + (z - hingeZ) * Math.cos(rad),
];
/** Distance of a place from the line through `from` at an angle to the upright, square to it; positive inside. */
const inside = ([y, z]: Place, [fromY, fromZ]: Place, rad: number) =>
  (fromY - y) * Math.cos(rad) - (z - fromZ) * Math.sin(rad);

/** Half the wall over the inside: the line that the hinge lies on. */
const WALL_MIDDLE_MM = HEAD.thickness / 2;
/** Where a hinge 25 mm off the crown lies along the middle of the wall. */
function hingeOf(one: ReturnType<typeof forms>["forms"]): Place {
  const head = one.head?.at({});
  if (head === undefined) throw new Error("no head");
  const { downMm, outMm } = leverOfHead(head, 25);
  return [HEAD.spreadTips / 2 - outMm, downMm];
}

describe.each([4, 12, -10])("a head opened by %i mm at its tips", (changeMm) => {
  const one = forms({}, { nearTop: 1, nearMiddle: 0.5, nearTip: 0, offTop: 4, offMiddle: 2, offTip: -2 });
  const [today, after] = [at(one.forms, opened(0)), at(one.forms, opened(changeMm))];
  const hinge = hingeOf(one.forms);
  const turnRad = Math.atan(changeMm / 2 / hinge[1]);
  test("hinges 25 mm off its crown, between it and the tips", () => {
    expect(hinge[0]).toBeGreaterThan(15);
    expect(hinge[0]).toBeLessThan(25);
    expect(hinge[1]).toBeGreaterThan(0.8 * HEAD.depth);
    expect(hinge[1]).toBeLessThan(HEAD.depth + WALL_MIDDLE_MM);
  });

  test("gives the room beside the withers that a point-by-point turn gives", () => {
    const seat = { ok: true, headUpRad: 0, rollRad: 0, heaveMm: 0, frontRiseMm: 0, rearRiseMm: 0 } as const;
    const more = { ...seat, centreXMm: 0, smallestEigenvalue: 1, unbalancedXN: 0 };
    const fallMm = 7;
    const moved = movedBy(
      { ...today, rest: { ...more, crownOverBackMm: 50 } },
      { ...after, rest: { ...more, crownOverBackMm: 50 - fallMm } },
    );
    // The wall half way down, and a place of the withers' side 15 mm inside it.
    const wall: Place = [HEAD.spreadTips / 2 - HEAD.depth / 2, HEAD.depth / 2];
    const withers: Place = [wall[0] - 15 * Math.cos(45 * DEGREE), wall[1] - 15 * Math.sin(45 * DEGREE)];
    const [y, z] = turned(wall, turnRad, hinge);
    const gap = inside(withers, [y, z - fallMm], 45 * DEGREE + turnRad);
    // What is left is of second order in the turn.
    expect(Math.abs((moved.besideMm ?? Number.NaN) - (gap - 15))).toBeLessThan(0.3);
  });

  test("changes its feelers as a turned point's distances from the same template change", () => {
    const horse = one.survey.horses[0];
    if (horse === undefined) throw new Error("no horse");
    const found = feelersAfter(horse, today.head, after.head, 0);
    const along = (HEAD.depth - 35) / Math.cos(45 * DEGREE);
    for (const [side, read] of [
      ["near", [0, 0.5, 1]],
      ["off", [-2, 2, 4]],
    ] as const) {
      // Places of the template from tip to top, each as far inside today's point as its feeler reads.
      const gaps = read.map((feeler, i) => {
        const up = (along * i) / 2;
        const point: Place = [HEAD.spreadTips / 2 - up * Math.sin(45 * DEGREE), up * Math.cos(45 * DEGREE)];
        const template: Place = [
          point[0] - feeler * Math.cos(45 * DEGREE),
          point[1] - feeler * Math.sin(45 * DEGREE),
        ];
        const tip = turned([HEAD.spreadTips / 2, 0], turnRad, hinge);
        return inside(template, tip, 45 * DEGREE + turnRad);
      });
      const uneven = found.find((one) => one.rule === "feeler" && one.side === side)?.value ?? Number.NaN;
      expect(Math.abs(uneven - (Math.max(...gaps) - Math.min(...gaps)))).toBeLessThan(0.05);
      const [before, face] = [templateFaces(horse, today.head), found].map(
        (all) => all.find((one) => one.rule === "face-front" && one.side === side)?.value ?? Number.NaN,
      );
      expect((before ?? 0) - (face ?? 0)).toBeCloseTo(turnRad / DEGREE, 9);
    }
  });
});

/** A new plate is new from its crown on, whether its half-angle was read or not. */
describe("a plate in the place of today's", () => {
  const turnDeg = (plate: object) => {
    const { forms: one } = forms(plate);
    const [belief] = one.plates;
    if (belief === undefined) throw new Error("no plate");
    return at(one, exchanged(belief)).head.halfAngleRad.near / DEGREE - 45;
  };
  test("turns by its own angle", () => expect(turnDeg({})).toBeCloseTo(2, 9));
  test("or, that not read, about the crown", () => {
    expect(turnDeg({ halfAngle: "not-looked" })).toBeCloseTo(
      Math.atan(5 / (HEAD.depth + WALL_MIDDLE_MM)) / DEGREE,
      9,
    );
  });
});

const drawn = (one: ReturnType<typeof forms>["forms"], moving: Moving, count: number) =>
  drawRange(one, { start: undefined }, [{ name: "it", moving, start: undefined }], 3, 0, count);

/** 1.96 times the sum of squares: 2 mm own each (calliper, dressed), 2 mm for a loose plate; the calliper's shared part cancels. */
describe("a plate is as sure as it was read", () => {
  const U = (plate: object) => {
    const { forms: one } = forms(plate);
    const [belief] = one.plates;
    if (belief === undefined) throw new Error("no plate");
    const table = drawn(one, exchanged(belief), 4000);
    return { spread: doubtOf(table, "moved it spreadMm"), turn: doubtOf(table, "moved it halfTurnDeg") };
  };
  const by = (own: number, shared: number) => ({ own, shared });
  test.each([
    ["as fitted", { asFitted: "yes" }, 0],
    ["loose", { asFitted: "no" }, 2],
    ["nobody said how", { asFitted: "not-asked" }, 2],
  ])("%s", (_, plate, loose) => {
    const one = forms(plate);
    const read = one.survey.platesAtHand[0]?.spreadTips;
    const head = one.survey.saddle.head.spreadTips;
    if (read === undefined || "absent" in read || "absent" in head) throw new Error("not read");
    const [a, b] = [by(read.own, read.shared), by(head.own, head.shared)];
    const expected = 1.96 * Math.sqrt(a.own ** 2 + b.own ** 2 + (a.shared - b.shared) ** 2 + loose ** 2);
    const ratio = (U(plate).spread ?? Number.NaN) / expected;
    expect(ratio).toBeGreaterThan(0.95);
    expect(ratio).toBeLessThan(1.05);
  });
  test("its turn by its own protractor reading and the mean of the head's two", () => {
    const expected = 1.96 * Math.sqrt(1 + 1 / 2);
    const ratio = (U({}).turn ?? Number.NaN) / expected;
    expect(ratio).toBeGreaterThan(0.95);
    expect(ratio).toBeLessThan(1.05);
  });
  test("a press is set to its change, and that has no doubt before it is measured", () => {
    const { forms: one } = forms();
    const table = drawn(one, opened(6), 100);
    expect(doubtOf(table, "moved it spreadMm")).toBeLessThan(1e-9);
  });
});
