import { describe, expect, it } from "vitest";
import type { CaseToJudge } from "../../core/src/judge/input.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { lacksForPress } from "../../core/src/judge/remedy/evidence.ts";
import { type Changes, faces, figure, surveyWith, sweep, toJudge } from "./case.ts";
import { NARROW, narrow } from "./combination-bases.ts";

/** A template that shows a fault on the near side alone, where no head serves: it is offered up again before a saddle is given up. */
const ASKEW: Changes = {
  "horses[0].template": { nearTop: 6, nearMiddle: 3, nearTip: 0, offTop: 0, offMiddle: 0.5, offTip: 0.5 },
};
const none: Partial<CaseToJudge> = { candidates: sweep("press", 0, {}, 12) };
const answered = (changes: Changes, more: Partial<CaseToJudge> = none) => {
  const judged = judgeCase(toJudge(changes, more));
  const { work } = judged.answers;
  return { id: work.id, rules: work.because.map(({ rule }) => rule), waitsFor: judged.waitsFor };
};
const isAgain = (changes: Changes, more?: Partial<CaseToJudge>): boolean =>
  answered(changes, more).rules.includes("fit-template-one-sided");

describe("a one-sided fault of the template", () => {
  it("is read again, not taken for a saddle that never fits", () => {
    const { id, rules, waitsFor } = answered(ASKEW);
    expect(id).toBe("measure-more");
    expect(rules).toContain("fit-template-one-sided");
    expect(waitsFor[0]).toContain("horses[0].template");
  });
  it("on the off side as well", () => {
    const template = { nearTop: 0, nearMiddle: 0.5, nearTip: 0.5, offTop: 6, offMiddle: 3, offTip: 0 };
    expect(isAgain({ "horses[0].template": template })).toBe(true);
  });
  it.each([
    [
      "both sides show it",
      { "horses[0].template": { ...(ASKEW["horses[0].template"] as object), offTop: 6 } },
    ],
    ["the hand there shows a fault too", { ...ASKEW, "horses[0].girthed.handNear": "tight-at-tip" }],
    ["the halves of the head do not stand alike", { ...ASKEW, "saddle.head.halfAngleOff": 45.5 }],
    ["the other side was not read", { "horses[0].template": { nearTop: 6, nearMiddle: 3, nearTip: 0 } }],
  ])("but not where %s", (_why, changes) => expect(isAgain(changes)).toBe(false));
  it("nor where the horse's own sides differ", () => {
    expect(
      isAgain(ASKEW, { ...none, computedToday: [...faces(0), figure("horse-sides-width", "", 7)] }),
    ).toBe(false);
    expect(
      isAgain(ASKEW, { ...none, computedToday: [...faces(0), figure("horse-sides-angle", "", 1)] }),
    ).toBe(true);
  });
  it("the front section of the template counts, a computed one does not", () => {
    const home = {
      "horses[0].template": { nearTop: 0, nearMiddle: 0, nearTip: 0, offTop: 0, offMiddle: 0, offTip: 0 },
    };
    const of = (at: string) => [
      ...faces(0).filter(({ rule }) => rule === "face-rail"),
      figure("face-front", at.replace("near", "off"), 0),
      { ...figure("face-front", at, 7), side: "near" as const },
    ];
    expect(isAgain(home, { ...none, computedToday: of("near, template") })).toBe(true);
    expect(isAgain(home, { ...none, computedToday: of("front, near") })).toBe(false);
  });
  it("hands that say the contrary of the template ask for both again", () => {
    const { rules, waitsFor } = answered(
      { ...NARROW, "horses[0].girthed.handNear": "tight-at-top", "horses[0].girthed.handOff": "loose" },
      { ...narrow, candidates: sweep("press", 2.4, {}, 12) },
    );
    expect(rules).toContain("fit-hands-against-template");
    expect(waitsFor).toEqual([
      "horses[0].template.nearTip",
      "horses[0].template.offTip",
      "horses[0].girthed.handNear",
      "horses[0].girthed.handOff",
    ]);
  });
  it("the hand of the off side counts where the fault is there", () => {
    const template = { nearTop: 0, nearMiddle: 0.5, nearTip: 0.5, offTop: 6, offMiddle: 3, offTip: 0 };
    expect(isAgain({ "horses[0].template": template, "horses[0].girthed.handOff": "tight-at-top" })).toBe(
      false,
    );
    expect(isAgain({ "horses[0].template": template, "horses[0].girthed.handNear": "tight-at-top" })).toBe(
      true,
    );
  });
  it("the hand of the other side does not matter", () => {
    expect(isAgain({ ...ASKEW, "horses[0].girthed.handOff": "tight-at-tip" })).toBe(true);
  });
});

describe("a press wants a template that shows the fault it cures", () => {
  const { horses } = surveyWith(NARROW);
  const lacks = (value: number, changeMm: number) => {
    const [horse] = horses;
    if (horse === undefined) throw new Error("a horse");
    const limit = { rule: "spread-wanted", at: "template", value, u: 2, missing: [] };
    return lacksForPress(horse, "horses[0]", limit, changeMm)?.rules[0];
  };
  it("narrower is opened, wider is not; a template that shows nothing opens no press", () => {
    expect(lacks(-8, 8)).toBeUndefined();
    expect(lacks(8, 8)).toBe("fit-press-needs-template");
    expect(lacks(0, 8)).toBe("fit-press-needs-template");
  });
  it("a template that lies home all round, under hands that are tight, is offered up again", () => {
    const home = { nearTop: 0, nearMiddle: 0, nearTip: 0, offTop: 0, offMiddle: 0, offTip: 0 };
    const { id, waitsFor } = answered({ ...NARROW, "horses[0].template": home }, narrow);
    expect([id, waitsFor.every((path) => path.includes("template"))]).toEqual(["measure-more", true]);
  });
});
