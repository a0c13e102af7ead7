import type { Candidate, CaseToJudge, MeasuredLimit } from "@treewright/core/judge/input.ts";
import { limitRule } from "@treewright/core/judge/limits/all.ts";
import { harmed, untold } from "@treewright/core/judge/remedy/others.ts";
import { hasRoomToMove } from "@treewright/core/judge/remedy/place.ts";
import { LOAD_MOST, loadPart, riderFaults, riderNotAsked } from "@treewright/core/judge/remedy/rider.ts";
import { girthLengthKg } from "@treewright/core/shape/weight.ts";
import { describe, expect, test } from "vitest";
import { type Changes, candidate, faces, figure, full, surveyWith } from "./case.ts";

/* Parts of the choice of a remedy by themselves, in closed form. */

const RIDER: Changes = {
  "rider.massDressed": 70,
  "rider.tackMass": 10,
  "horses[0].mass": 500,
  "rider.seatTooSmall": "no",
  "rider.stirrupHolesNear": 8,
  "rider.stirrupHolesOff": 8,
};
function knownWith(changes: Changes) {
  const survey = surveyWith({ ...RIDER, ...changes });
  const [horse] = survey.horses;
  if (!horse) throw new Error("a horse");
  return { survey, horse };
}

describe("the rider", () => {
  test("load is rider and tack over the horse, and not told where one of the three was not read", () => {
    expect(loadPart(knownWith({}))).toBeCloseTo(80 / 500, 12);
    for (const path of ["rider.massDressed", "rider.tackMass", "horses[0].mass"])
      expect(
        loadPart(knownWith({ "horses[0].body.girth": "unknown", [path]: "unknown" })),
        path,
      ).toBeUndefined();
  });
  test("a horse that was not weighed is as heavy as the tape says", () => {
    const taped = {
      "horses[0].mass": "not-looked",
      "horses[0].body.neck": "not-looked",
      "horses[0].body.girth": "200 cm",
      "horses[0].body.length": "160 cm",
      "rider.massDressed": 0.2 * girthLengthKg(200, 160) - 10,
    };
    expect(loadPart(knownWith(taped))).toBeCloseTo(0.2, 9);
    expect(riderFaults(knownWith({ ...taped, "rider.massDressed": 100 }))).toEqual(["fit-rider-heavy"]);
    expect(riderFaults(knownWith({ ...taped, "rider.massDressed": 95 }))).toEqual([]);
  });
  test.each<[Changes, string[]]>([
    [{}, []],
    [{ "rider.massDressed": 500 * LOAD_MOST - 10 }, []],
    [{ "rider.massDressed": 500 * LOAD_MOST - 9 }, ["fit-rider-heavy"]],
    [{ "rider.massDressed": "unknown" }, []],
    [{ "rider.seatTooSmall": "yes" }, ["fit-rider-first"]],
    [{ "rider.seatTooSmall": "unknown" }, []],
    [{ "rider.stirrupHolesOff": 9 }, ["fit-rider-first"]],
    [{ "rider.stirrupHolesNear": 9 }, ["fit-rider-first"]],
    [{ "rider.stirrupHolesNear": "unknown", "rider.stirrupHolesOff": 9 }, []],
    [{ "rider.stirrupHolesNear": 9, "rider.stirrupHolesOff": "unknown" }, []],
    [{ "rider.massDressed": 150, "rider.stirrupHolesOff": 9 }, ["fit-rider-heavy", "fit-rider-first"]],
  ])("%j gives %j", (changes, rules) => expect(riderFaults(knownWith(changes))).toEqual(rules));
  test.each<[Changes, string[]]>([
    [{}, []],
    [{ "rider.seatTooSmall": "yes" }, []],
    [{ "rider.seatTooSmall": "unknown" }, ["rider.seatTooSmall"]],
    [{ "rider.seatTooSmall": "not-asked" }, ["rider.seatTooSmall"]],
    [{ "rider.stirrupHolesNear": "not-looked" }, ["rider.stirrupHolesNear"]],
    [{ "rider.stirrupHolesOff": "not-looked" }, ["rider.stirrupHolesOff"]],
  ])("%j leaves %j to ask", (changes, paths) => expect(riderNotAsked(knownWith(changes))).toEqual(paths));
});

describe("room to move along the back", () => {
  const least = (rule: string) => limitRule(rule).inside[0];
  const at = (rule: string, spare: number): MeasuredLimit => figure(rule, "near", least(rule) + spare);
  const [BLADE, EDGE] = ["point-behind-blade", "panel-rear-edge"] as const;
  test.each<[front: number[], rear: number[], boolean | undefined]>([
    [[-10], [10], true],
    [[-10], [9], false],
    [[10], [-10], true],
    [[9], [-10], false],
    [[0], [0], true],
    [[-5, -10], [10], true],
    [[-10, -5], [9], false],
    [[20, -10], [9], false],
    [[], [10], undefined],
    [[-10], [], undefined],
  ])("front %j and rear %j to spare: %s", (front, rear, room) => {
    const limits = [...front.map((mm) => at(BLADE, mm)), ...rear.map((mm) => at(EDGE, mm))];
    expect(hasRoomToMove(limits)).toBe(room);
  });
  test("one side that was not read leaves it open", () => {
    const unread = { ...at(BLADE, 0), value: undefined, u: undefined };
    expect(hasRoomToMove([unread, at(BLADE, 5), at(EDGE, 20)])).toBeUndefined();
    expect(hasRoomToMove([at(BLADE, 5), { ...at(EDGE, 20), value: undefined }])).toBeUndefined();
  });
});

describe("other horses of the saddle", () => {
  const twoHorses = (onlyThisHorse: string): CaseToJudge => ({
    survey: surveyWith({
      horses: [
        { ...full.horses[0], onlyThisHorse },
        { ...full.horses[0], name: "second" },
      ],
    }),
    horseIndex: 0,
    computedToday: [],
    candidates: [],
    largerSide: undefined,
    fillMm: { near: 0, off: 0 },
    notAtRest: undefined,
    lacking: [],
  });
  const withOther = (after: readonly MeasuredLimit[]): Candidate => ({
    ...candidate(8, "press", 3),
    others: [{ horseIndex: 1, after }],
  });
  test("one that a change would put outside is named, unless this horse is signed for alone", () => {
    const tight = withOther(faces(30));
    expect(harmed(tight, twoHorses("no"))).toEqual([1]);
    expect(harmed(tight, twoHorses("not-asked"))).toEqual([1]);
    expect(harmed(tight, twoHorses("yes"))).toEqual([]);
    expect(harmed(withOther(faces(0)), twoHorses("no"))).toEqual([]);
    expect(harmed(candidate(8, "press", 3), twoHorses("no"))).toEqual([]);
  });
  test("one that was not calculated, or not read, leaves the harm untold", () => {
    expect(untold(candidate(8, "press", 3), twoHorses("no"))).toEqual([{ horseIndex: 1, missing: [] }]);
    expect(untold(candidate(8, "press", 3), twoHorses("yes"))).toEqual([]);
    const unread = faces(0).map((one) => ({ ...one, value: undefined, u: undefined, missing: ["x"] }));
    const [one] = untold(withOther(unread), twoHorses("no"));
    expect(one?.horseIndex).toBe(1);
    expect(one?.missing).toContain("x");
  });
});
