import { describe, expect, it } from "vitest";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { noSetBack, whyNoSetBack } from "../../core/src/judge/remedy/set-back.ts";
import { SET_BACK_RULES } from "../../core/src/judge/rules/set-back.ts";
import { type Changes, candidate, faces, surveyWith, toJudge } from "./case.ts";
import { NARROW, narrow, PLATE } from "./combination-bases.ts";

/*
 * When a change is an earlier one taken back: within 3 mm of as made, the other way than the last, fewer than two
 * reversals (common practice, no source), at a press or by what was in this head before. The head stands at 205 mm today.
 */
const change = (mm: number | string, way: "press" | "exchange" | "heat" = "press") => ({
  date: "2030",
  change: mm,
  by: "a hand",
  knownHand: "yes",
  way,
});
const after = (alterations: readonly object[], asMade: number | string = 213, more: Changes = {}) =>
  surveyWith({
    "saddle.past.alterationsKnown": "listed",
    "saddle.past.alterations": alterations,
    "saddle.head.asMadeSpreadTips": asMade,
    ...more,
  });
const press = (mm: number) => candidate(mm, "press", 0).setting;
const plate = (mm: number, index = 0) => candidate(mm, "exchange", 0, { plate: index }).setting;
const position = (mm: number) => candidate(mm, "exchange", 0, { plate: undefined, position: 1 }).setting;

describe("a setting back at a press", () => {
  const closed = after([change(-8)]);
  it.each([
    [8, undefined],
    [5, undefined],
    [4.9, "set-back-not-near"],
    [11, undefined],
    [11.1, "set-back-not-near"],
    [-1, "set-back-same-way"],
  ])("closed by 8, moved by %d mm: %s", (mm, expected) => {
    expect(noSetBack({ survey: closed }, press(mm))).toBe(expected);
  });
  it("an opened head is closed again", () => {
    const opened = after([change(9)], 196);
    expect(noSetBack({ survey: opened }, press(-9))).toBeUndefined();
    expect(noSetBack({ survey: opened }, press(9))).toBe("set-back-same-way");
  });
  it("one reversal on record is the last that is set back", () => {
    expect(noSetBack({ survey: after([change(4), change(-12)]) }, press(8))).toBeUndefined();
    expect(noSetBack({ survey: after([change(4), change(-4), change(5), change(-13)]) }, press(8))).toBe(
      "set-back-reversals",
    );
    expect(noSetBack({ survey: after([change(-4), change(5), change(-9)]) }, press(8))).toBe(
      "set-back-reversals",
    );
  });
  it("nothing on record, a size that nobody knows, a spread as made that was not read", () => {
    expect(noSetBack({ survey: after([]) }, press(8))).toBe("set-back-nothing-on-record");
    expect(noSetBack({ survey: after([change("unknown")]) }, press(8))).toBe("set-back-nothing-on-record");
    expect(noSetBack({ survey: after([change(-8)], "not-looked") }, press(8))).toBe(
      "set-back-as-made-not-read",
    );
    const survey = surveyWith({
      "saddle.past.alterationsKnown": "listed",
      "saddle.past.alterations": [change(-8)],
      "saddle.head.spreadTips": "not-looked",
    });
    expect(noSetBack({ survey }, press(8))).toBe("set-back-as-made-not-read");
  });
  it("an exchange tells nothing of a press, nor a press of an exchange", () => {
    expect(noSetBack({ survey: after([change(-8, "exchange")]) }, press(8))).toBe(
      "set-back-nothing-on-record",
    );
    expect(noSetBack({ survey: closed }, position(8))).toBe("set-back-nothing-on-record");
  });
});

describe("a setting back by exchange", () => {
  const narrower = [change(-8, "exchange")];
  const kept = (wasInThisHead: string) =>
    after(narrower, 213, { ...PLATE, platesAtHand: [{ label: "a", spreadTips: 213, wasInThisHead }] });
  it("the plate that was in this head; inserts need nothing kept", () => {
    expect(noSetBack({ survey: kept("yes") }, plate(8))).toBeUndefined();
    for (const said of ["no", "unknown", "not-asked"])
      expect(noSetBack({ survey: kept(said) }, plate(8))).toBe("set-back-plate-not-kept");
    expect(noSetBack({ survey: kept("yes") }, plate(8, 3))).toBe("set-back-plate-not-kept");
    expect(noSetBack({ survey: after(narrower) }, position(8))).toBeUndefined();
  });
  it("what other hands make is none", () => {
    for (const way of ["heat", "imagined"] as const)
      expect(noSetBack({ survey: after(narrower) }, candidate(8, way, 0).setting)).toBe(
        "set-back-heads-elsewhere",
      );
  });
});

describe("told wherever it is not done", () => {
  it("where the head stays, by whether anything is on record", () => {
    expect(whyNoSetBack({ survey: after([]) }, undefined)).toBe("set-back-nothing-on-record");
    for (const way of ["press", "exchange"] as const)
      expect(whyNoSetBack({ survey: after([change(-8, way)]) }, undefined)).toBe("set-back-head-stays");
    expect(whyNoSetBack({ survey: after([change(-8)]) }, press(8))).toBeUndefined();
  });
  it("in the answer, in words; not where it is the answer, on a flag, or beside a broken tree", () => {
    const answered = (changes: Changes) => judgeCase(toJudge({ ...NARROW, ...changes }, narrow)).answers;
    expect(answered({}).setBack).toMatchObject({ rule: "set-back-nothing-on-record" });
    expect(answered({}).setBack?.says).toContain("nothing to set back");
    const back = {
      "saddle.past.alterationsKnown": "listed",
      "saddle.past.alterations": [change(-8)],
      "saddle.head.asMadeSpreadTips": 213,
    };
    expect([answered(back).work.id, answered(back).setBack]).toEqual(["set-back", undefined]);
    for (const shut of [
      { "horses[0].moving.uneven": "yes" },
      { "saddle.looked.whiteLine": "yes" },
      { "saddle.standing.claimOrDispute": "yes" },
    ])
      expect([answered(shut).setBack, answered(shut).setting]).toEqual([undefined, undefined]);
  });
  it("every reason is one of these and has words of its own", () => {
    const says = SET_BACK_RULES.map((rule) => rule.says);
    expect(new Set(says).size).toBe(8);
  });
  it("a plate that is not the old one is a change, with the reason beside it", () => {
    const changes = {
      ...PLATE,
      "saddle.past.alterationsKnown": "listed",
      "saddle.past.alterations": [change(-16, "exchange")],
      "saddle.head.asMadeSpreadTips": 221,
      platesAtHand: [{ label: "bought", spreadTips: 221 }],
    };
    const { answers } = judgeCase(
      toJudge(changes, { computedToday: faces(5.5), candidates: [candidate(16, "exchange", 5.5)] }),
    );
    expect([answers.work.id, answers.setBack?.rule]).toEqual(["change-plate", "set-back-plate-not-kept"]);
  });
});
