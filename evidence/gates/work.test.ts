import { describe, expect, it } from "vitest";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { WORK_ANSWERS } from "../../core/src/terms/answers.ts";
import { toJudge } from "./case.ts";
import { CASES, NARROW, narrow } from "./work-cases.ts";

describe("the work answer", () => {
  it.each(CASES)("%s: %s", (id, _name, changes, more) => {
    const { answers } = judgeCase(toJudge(changes, more));
    expect(answers.work.id).toBe(id);
    expect(answers.work.because.length).toBeGreaterThan(0);
    expect(answers.work.also).not.toContain(id);
  });
  it("every id is reached", () => {
    expect([...new Set(CASES.map(([id]) => id))].sort()).toEqual([...WORK_ANSWERS].sort());
  });
});

describe("said at once", () => {
  it("a colleague, and what the fit asks of the colleague", () => {
    expect(judgeCase(toJudge({ ...NARROW, "worker.press": "no" }, narrow())).answers.work.also).toEqual([
      "alter-dressed",
    ]);
  });
  it("the maker, the colleague and the fit", () => {
    const changes = {
      ...NARROW,
      "worker.press": "no",
      "saddle.standing.inWarranty": "yes",
      "saddle.standing.makerPermits": "no",
    };
    const { work } = judgeCase(toJudge(changes, narrow())).answers;
    expect([work.id, ...work.also]).toEqual(["maker", "colleague", "alter-dressed"]);
  });
  it("on a flag no figure, no setting, and the saddle's answer all the same", () => {
    const sore = {
      ...NARROW,
      "horses[0].hands.last-ribs.near": { grade: 2, twice: "yes" },
      "saddle.looked.whiteLine": "yes",
    };
    const { answers } = judgeCase(toJudge(sore, narrow()));
    expect([answers.limitsToday, answers.limitsAfter, answers.setting]).toEqual([[], [], undefined]);
    expect(answers.saddle.id).toBe("out-for-good");
    expect(answers.saddle.cautions[0]).toContain("STOP");
    // No other saddle is sold on the day of a flag.
    expect(answers.work.also).toEqual([]);
  });
  it("the flat panel first, then what the head would want", () => {
    const { work } = judgeCase(toJudge({ ...NARROW, "saddle.panel.state": "flat" }, narrow())).answers;
    expect([work.id, ...work.also]).toEqual(["panel", "alter-dressed"]);
  });
});
