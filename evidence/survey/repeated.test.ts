import { describe, expect, it } from "vitest";
import { drawnAgain } from "../../core/src/shape/drawn-again.ts";
import { applyAnswer, emptyCase, readingOf } from "../../core/src/survey/answer-question.ts";
import type { CaseFile } from "../../core/src/survey/case.ts";
import { getAt, stepsOf } from "../../core/src/survey/path.ts";
import { drawingAgain, questions } from "../../core/src/survey/questions.ts";
import { answerAsStatements, clearingStatements } from "../../core/src/survey/recorded/statements.ts";
import { repeatedReading } from "../../core/src/survey/repeated.ts";
import { withUnitBeside } from "../../core/src/survey/unit-beside.ts";

/* The same thing read, and drawn, more than once. */

const EMPTY = emptyCase("a visit", "2031-03-01");
const SPREAD = "saddle.head.spreadTips";
const POINTS = "horses[0].traces[0].points";

const taken = (draft: CaseFile, path: string, typed: string): CaseFile => {
  const answered = applyAnswer(draft, path, typed);
  if (!answered.ok) throw new Error(JSON.stringify(answered.problem));
  return answered.draft;
};

describe("a reading taken more than once", () => {
  it("each stays as typed, and their mean is what is read", () => {
    const draft = taken(EMPTY, SPREAD, "181; 183 ; 182;");
    expect(getAt(draft, stepsOf(SPREAD))).toEqual({ read: ["181", "183", "182"] });
    expect(repeatedReading(SPREAD, readingOf("181; 183; 182"))).toEqual({
      kind: "length",
      count: 3,
      mean: 182,
      least: 181,
      most: 183,
    });
  });
  it("one alone, a word, or one that cannot be read has no spread", () => {
    for (const typed of ["181", "181;", "unknown", "181; bananas", "181; 9999", ""])
      expect(repeatedReading(SPREAD, readingOf(typed)), typed).toBeUndefined();
    expect(repeatedReading("visit.owner", readingOf("1; 2"))).toBeUndefined();
  });
  it("one of them out of range refuses all, with what is allowed", () => {
    const refused = applyAnswer(EMPTY, SPREAD, "181; 9999");
    expect(refused.ok ? undefined : refused.problem).toMatchObject({ read: expect.stringContaining("9999") });
  });
  it("each bare one gets the unit beside its field", () => {
    const inches = { length: "in", mass: "kg" } as const;
    expect(withUnitBeside(EMPTY, SPREAD, "7; 7 1/8; 180 mm", inches)).toBe("7 in;7 1/8 in; 180 mm");
    const read = repeatedReading(SPREAD, readingOf("7 in;7 1/8 in"));
    expect(read?.most).toBeCloseTo(7.125 * 25.4, 9);
  });
});

const line = (by: number) =>
  [-120, -80, -40, 0, 40, 80, 120].map((y) => `${y} ${-((y * y) / 200) + (y === 0 ? 0 : by)}`).join("; ");

describe("a tracing drawn again", () => {
  const once = taken(EMPTY, POINTS, line(0));
  const question = questions().find(({ path }) => path === POINTS);
  if (!question) throw new Error("the first tracing is asked for");
  const next = (draft: CaseFile) => drawingAgain(question, draft)?.path;
  it("only what was drawn can be drawn again, nine times", () => {
    expect(next(EMPTY)).toBeUndefined();
    expect(next(once)).toBe("horses[0].traces[0].repeats[0]");
    expect(drawingAgain(question, once)?.asks).not.toBe(question.asks);
    let draft = once;
    for (let i = 0; i < 9; i += 1) draft = taken(draft, next(draft) ?? "", line(i));
    expect(next(draft)).toBeUndefined();
    const other = questions().find(({ path }) => path === SPREAD);
    expect(other && drawingAgain(other, once)).toBeUndefined();
  });
  it("how it was laid down is not counted, how its shape strays is", () => {
    expect(drawnAgain(once, "horses[0].traces[0]")).toBeUndefined();
    const spread = (other: string) => {
      const found = drawnAgain(taken(once, "horses[0].traces[0].repeats[0]", other), "horses[0].traces[0]");
      return typeof found === "object" ? [found.drawings, found.spreadMm] : [0, Number.NaN];
    };
    const moved = [-120, -80, -40, 0, 40, 80, 120].map((y) => `${y} ${-(y * y) / 200 - 5}`).join("; ");
    expect(spread(moved)[0]).toBe(2);
    expect(spread(moved)[1]).toBeLessThan(0.1);
    // Narrower by 6 mm a side at its ends: no more than that apart anywhere, and more than a tenth of it on average.
    const narrow = [-120, -80, -40, 0, 40, 80, 120].map((y) => `${0.95 * y} ${-(y * y) / 200}`).join("; ");
    expect(spread(narrow)[1]).toBeGreaterThan(0.6);
    expect(spread(narrow)[1]).toBeLessThan(6 / Math.SQRT2);
  });
  it("one of another size cannot be used with the first, and is named", () => {
    const large = [-240, -160, -80, 0, 80, 160, 240].map((y) => `${y} ${-(y * y) / 400}`).join("; ");
    const twice = taken(once, "horses[0].traces[0].repeats[0]", large);
    expect(drawnAgain(twice, "horses[0].traces[0]")).toBe("repeats");
  });
  it("another unit than that of the first is refused; the same one may be said", () => {
    const inches = applyAnswer(once, "horses[0].traces[0].repeats[0]", `in ${line(1)}`);
    expect(inches.ok ? undefined : inches.problem).toMatchObject({
      read: '"in"',
      allowed: "mm, in which the first was typed",
    });
    const again = taken(once, "horses[0].traces[0].repeats[0]", `mm ${line(1)}`);
    expect(getAt(again, stepsOf("horses[0].traces[0].repeats"))).toHaveLength(1);
    expect(getAt(again, stepsOf("horses[0].traces[0].unit"))).toBe("mm");
  });
  it("the midline has no drawings again", () => {
    const profile = "0 0; 100 -20; 200 -30; 300 -28; 400 -16";
    const drawn = taken(once, "horses[0].profile.points", profile);
    expect(drawnAgain(drawn, "horses[0].profile")).toBeUndefined();
    const asked = questions().find(({ path }) => path === "horses[0].profile.points");
    expect(asked && drawingAgain(asked, drawn)).toBeUndefined();
  });
  it("too few points are refused as they are for the first", () => {
    expect(applyAnswer(once, "horses[0].traces[0].repeats[0]", "1 2; 3 4").ok).toBe(false);
  });
  it("is said at its own place, and goes when the first is cleared", () => {
    const said = answerAsStatements(once, "horses[0].traces[0].repeats[0]", line(1));
    expect(said.ok ? said.statements.map(({ at }) => at) : []).toEqual(["horses[0].traces[0].repeats[0]"]);
    const twice = taken(once, "horses[0].traces[0].repeats[0]", line(1));
    expect(clearingStatements(twice, POINTS)).toEqual([
      { at: POINTS },
      { at: "horses[0].traces[0].repeats[0]" },
    ]);
    expect(clearingStatements(twice, SPREAD)).toEqual([{ at: SPREAD }]);
  });
});
