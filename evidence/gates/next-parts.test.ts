import { describe, expect, it } from "vitest";
import type { LimitRule } from "../../core/src/judge/judgement.ts";
import { limitRule } from "../../core/src/judge/limits/all.ts";
import { bandOf, bandsIn, OPEN } from "../../core/src/judge/limits/bands.ts";
import { judgeLimit } from "../../core/src/judge/limits/judge-limit.ts";
import { closing } from "../../core/src/judge/limits/pressed.ts";
import { rangeSays } from "../../core/src/judge/limits/range-words.ts";
import { counterparts } from "../../core/src/judge/next/counterparts.ts";
import { missingUnder } from "../../core/src/judge/next/missing.ts";
import { missingTraces, readingSays, traceSays } from "../../core/src/judge/next/traces.ts";
import { figure, surveyWith } from "./case.ts";

/* Parts of the next reading and of the limits by themselves, in closed form. */

describe("what a reading's counterparts were read at", () => {
  const plate = (label: string, holes: unknown) => ({ label, mounting: { holes } });
  const survey = surveyWith({
    "saddle.mounting.holes": 3,
    "saddle.mounting.edge": "square",
    "saddle.mounting.thickness": "not-looked",
    platesAtHand: [plate("a", 4), plate("b", { read: [5, 5], by: "count" }), plate("c", "not-looked")],
    "horses[0].girthed.bridgeNear": 7,
    "horses[0].girthed.bridgeOff": "unknown",
  });
  it.each<[string, readonly string[]]>([
    ["horses[0].girthed.bridgeOff", ["7"]],
    ["horses[0].girthed.bridgeNear", []],
    ["horses[0].girthed.rock", []],
    ["saddle.mounting.holes", ["4"]],
    ["platesAtHand[0].mounting.holes", ["3"]],
    ["platesAtHand[11].mounting.holes", ["3"]],
    ["platesAtHand[2].mounting.thickness", []],
    // A word is no reading, wherever it stands.
    ["platesAtHand[0].mounting.edge", []],
    ["saddle.mounting.edge", []],
  ])("%s: %j", (path, typed) => expect(counterparts(survey, path).map(String)).toEqual(typed));
});

describe("what is missing under a place", () => {
  const missing = (changes: Record<string, unknown>, ...places: string[]) =>
    missingUnder(surveyWith(changes), places).map(({ path }) => path);
  it("a reading not looked at, and a word that says that nobody knows; never what cannot be seen", () => {
    expect(missing({ "horses[0].girthed.rock": "not-looked" }, "horses[0].girthed.rock")).toEqual([
      "horses[0].girthed.rock",
    ]);
    expect(missing({ "horses[0].girthed.rock": 2 }, "horses[0].girthed.rock")).toEqual([]);
    const seen = (word: string) => missing({ "saddle.build.arch": word }, "saddle.build.arch");
    expect(seen("unknown")).toEqual(["saddle.build.arch"]);
    expect(seen("wood")).toEqual([]);
    const height = { "horses[0].girthed.clearanceTop": "cannot-be-seen" };
    expect(missing(height, "horses[0].girthed.clearanceTop")).toEqual([]);
  });
  it("a place has what stands under it, not what only begins with its letters", () => {
    const changes = { "horses[0].girthed.rock": "not-looked" };
    expect(missing(changes, "horses[0].girthed")).toContain("horses[0].girthed.rock");
    expect(missing(changes, "horses[0].girt")).not.toContain("horses[0].girthed.rock");
  });
  it("words decide nothing unless a rule asks for that very place", () => {
    const changes = { "visit.owner": "" };
    expect(missing(changes, "visit")).not.toContain("visit.owner");
    expect(missing(changes, "visit.owner")).toEqual(["visit.owner"]);
    expect(missing({}, "horses[0].standing").filter((path) => path.endsWith(".twice"))).toEqual([]);
  });
});

describe("a trace that is not there", () => {
  it("by station, temper and horse, counted from 1; no other place is one", () => {
    expect(traceSays("horses[0].traces.rear.cold")).toBe("the cold trace at the rear, horse 1");
    expect(traceSays("horses[11].traces.front.warm")).toBe("the warm trace at the front, horse 12");
    expect(traceSays("also horses[0].traces.rear.cold")).toBeUndefined();
    expect(traceSays("horses[0].traces[0].points")).toBeUndefined();
    expect(readingSays("horses[0].traces.rear.cold", (part) => part.toUpperCase())).toBe(
      "THE COLD TRACE AT THE REAR, HORSE 1",
    );
    expect(readingSays("horses[0].girthed.rock").length).toBeGreaterThan(4);
  });
  it("comes with the first question of its own horse's tracings", () => {
    const waits = ["horses[1].traces.rear.cold", "horses[1].girthed.rock"];
    expect(missingTraces("horses[1].traces[0].points", waits)).toEqual([
      { path: "horses[1].traces.rear.cold" },
    ]);
    for (const other of [
      "horses[0].traces[0].points",
      "horses[1].traces[1].points",
      "horses[1].girthed.rock",
    ])
      expect(missingTraces(other, waits), other).toEqual([]);
  });
});

const between = (inside: readonly [number, number], outside: readonly [number, number]): LimitRule => ({
  ...limitRule("feeler"),
  inside,
  outside,
});

describe("bands at their ends", () => {
  const both = between([-3, 2], [-6, 5]);
  const sharp = between([-5, 5], [-5, 5]);
  const HALF = 0.5e-9;
  it("a value on an end, or off it by less than round-off, belongs to the milder band", () => {
    for (const end of [-3, 2])
      for (const off of [-HALF, 0, HALF]) expect(bandOf(both, end + off)).toBe("inside");
    for (const end of [-6, 5])
      for (const off of [-HALF, 0, HALF]) expect(bandOf(both, end + off)).toBe("between");
    expect([bandOf(both, -3 - 3e-9), bandOf(both, 2 + 3e-9)]).toEqual(["between", "between"]);
    expect([bandOf(both, -6 - 3e-9), bandOf(both, 5 + 3e-9)]).toEqual(["outside", "outside"]);
  });
  it.each<[readonly [number, number], readonly string[]]>([
    [[-1, 1], ["inside"]],
    [
      [2, 3],
      ["inside", "between"],
    ],
    [
      [2 + HALF, 3],
      ["inside", "between"],
    ],
    [[3, 4], ["between"]],
    [[-5, -4], ["between"]],
    [
      [-4, -3 - HALF],
      ["inside", "between"],
    ],
    [[6, 7], ["outside"]],
    [
      [-7, 7],
      ["inside", "between", "outside"],
    ],
    [
      [-7, 0],
      ["inside", "between", "outside"],
    ],
    [
      [0, 7],
      ["inside", "between", "outside"],
    ],
    [
      [4, 7],
      ["between", "outside"],
    ],
  ])("from %j: %j", ([lo, hi], bands) => expect(bandsIn(both, lo, hi)).toEqual(bands));
  it("where inside ends outside begins, nothing lies between", () => {
    expect(bandsIn(sharp, -7, 7)).toEqual(["inside", "outside"]);
    expect(bandsIn(sharp, 5, 7)).toEqual(["inside", "outside"]);
    expect(bandsIn(sharp, -7, -5)).toEqual(["inside", "outside"]);
    expect(bandsIn(sharp, 5, 5)).toEqual(["inside"]);
  });
});

describe("a limit, and its words", () => {
  const rule = between([-3, 2], [-6, 5]);
  it("no value, no uncertainty, or one below zero: cannot tell; none at all is as good as any", () => {
    expect(judgeLimit(rule, undefined, 1, "press")).toBe("cannot-tell");
    expect(judgeLimit(rule, undefined, undefined, "exchange")).toBe("cannot-tell");
    expect(judgeLimit(rule, Number.NaN, 1, "exchange")).toBe("cannot-tell");
    for (const u of [undefined, -1, Number.NaN]) expect(judgeLimit(rule, 0, u, "press")).toBe("cannot-tell");
    expect(judgeLimit(rule, 0, 0, "press")).toBe("inside");
    expect(judgeLimit(rule, 2, 0, "press")).toBe("inside");
    expect(judgeLimit(rule, 0, undefined, "exchange")).toBe("inside");
  });
  it("an id that is no limit is a fault of the program", () => {
    expect(() => limitRule("no-such" as never)).toThrow();
  });
  it("figures that are no limit of the calculation pass; of its own only those that close", () => {
    const known = [figure("clearance-girthed", "", 10), figure("pressure-head-walk", "near", 10)];
    expect(closing(known)).toEqual([known[0]]);
  });
  it.each<[readonly [number, number], LimitRule["unit"], string]>([
    [[-OPEN, 5], "mm", "up to 5 mm"],
    [[45, OPEN], "mm", "from 45 mm"],
    [[-4, 4], "deg", "within ± 4 degrees"],
    [[-3, 2], "deg", "−3 to 2 degrees"],
    [[40, 75], "mm", "40 to 75 mm"],
    [[-3, 3], "mm", "within ± 3 mm"],
  ])("%j %s: %s", (range, unit, says) => expect(rangeSays(range, unit)).toBe(says));
});
