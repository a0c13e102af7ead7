import { describe, expect, test } from "vitest";
import { insertsStand } from "../../core/src/reach/inserts.ts";
import { settingsOf } from "../../core/src/reach/settings.ts";
import { caseSchema } from "../../core/src/survey/case.ts";
import { HEAD } from "../shape/model-saddle.ts";

/** Removable inserts: settings are the positions, read as fitted, left and right always the same. Today's head: 205 mm. */
const POSITIONS = [
  { name: "a", spreadTips: 198, halfAngle: 43 },
  { name: "b", spreadTips: 205, halfAngle: 45 },
  { name: "c", spreadTips: 212, halfAngle: 47 },
];
const surveyOf = (inserts: object, head: object = {}) =>
  caseSchema.parse({
    format: "treewright-case",
    version: 3,
    title: "invented",
    visit: { date: "2031-04-02" },
    saddle: {
      name: "invented",
      head: { ...HEAD, halfAngleNear: 45, halfAngleOff: 45, ...head },
      build: {
        arch: "wood",
        metal: "plates",
        exchange: "insert",
        movedBy: "exchange",
        toldBy: "seen-through-access",
      },
      inserts: { positions: POSITIONS, near: 2, off: 2, ...inserts },
    },
    horses: [{ name: "invented" }],
  });
const settings = (inserts: object = {}, head: object = {}) => settingsOf(surveyOf(inserts, head), 205);
const positions = (inserts: object = {}, head: object = {}) =>
  settings(inserts, head).filter(({ way }) => way === "exchange");

describe("how they stand", () => {
  test.each([
    [{}, { how: "alike", position: 1 }],
    [
      { near: 3, off: 3 },
      { how: "alike", position: 2 },
    ],
    [{ near: 1 }, { how: "unlike" }],
    [{ off: "not-looked" }, { how: "not-known" }],
    [{ near: "cannot-be-seen" }, { how: "not-known" }],
    [{ near: 4, off: 4 }, { how: "not-known" }],
    [{ near: 4, off: 5 }, { how: "unlike" }],
  ])("%j: %j", (inserts, stand) => expect(insertsStand(surveyOf(inserts).saddle.inserts)).toEqual(stand));
});

describe("the settings", () => {
  test("every position but the one they stand in", () => {
    expect(
      positions().map(({ id, position, changeMm, spreadMm }) => [id, position, changeMm, spreadMm]),
    ).toEqual([
      ["position 1", 0, -7, 198],
      ["position 3", 2, 7, 212],
    ]);
    expect(positions().every(({ shutBy, plate }) => shutBy.length === 0 && plate === undefined)).toBe(true);
  });
  test("each turns the halves by its own angle", () => {
    expect(positions()[1]?.halfTurnRad).toBeCloseTo((2 * Math.PI) / 180, 12);
    const unread = POSITIONS.map(({ halfAngle: _, ...rest }) => rest);
    expect(positions({ positions: unread })[1]?.halfTurnRad).toBeUndefined();
  });
  test("where they stand unlike, every position is one", () => {
    expect(positions({ near: 1 }).map(({ position }) => position)).toEqual([0, 1, 2]);
  });
  test("on the outside face the walls are taken off, as of the head itself", () => {
    const outside = positions({}, { face: "outside", thickness: 10 });
    const walls = 2 * (10 / Math.cos((47 * Math.PI) / 180) - 10 / Math.cos((45 * Math.PI) / 180));
    expect(outside[1]?.changeMm).toBeCloseTo(7 - walls, 6);
    const unread = POSITIONS.map(({ halfAngle: _, ...rest }) => rest);
    expect(positions({ positions: unread }, { face: "outside", thickness: 10 })).toEqual([]);
  });
  test("what no position makes is looked at as well, and says so", () => {
    const shut = (inserts: object) =>
      new Set(
        settings(inserts)
          .filter(({ way }) => way === "imagined")
          .map(({ shutBy }) => shutBy[0]),
      );
    expect([...shut({})]).toEqual(["no-such-position"]);
    expect([...shut({ positions: [] })]).toEqual(["position-not-read"]);
    expect([...shut({ positions: [...POSITIONS, { name: "d" }] })]).toEqual(["position-not-read"]);
  });
});
