import { describe, expect, it } from "vitest";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { type AnswerWith, nextReading, valuesToTry } from "../../core/src/judge/next-reading.ts";
import type { WorkAnswer } from "../../core/src/terms/answers.ts";
import { faces, surveyWith, sweep, toJudge } from "./case.ts";

const survey = surveyWith({});
const splitAt =
  (limit: number, below: WorkAnswer, above: WorkAnswer) =>
  (value: number | string): WorkAnswer =>
    Number(value) < limit ? below : above;

describe("the one next reading", () => {
  it("five values from lowest to highest allowed", () => {
    expect(valuesToTry({ range: [0, 80] })).toEqual([0, 20, 40, 60, 80]);
    expect(valuesToTry({ words: ["no", "unknown", "not-asked", "yes"] })).toEqual(["no", "yes"]);
    expect(valuesToTry({})).toEqual([]);
  });
  it("the one that splits the answers most", () => {
    const byPath: { readonly [path: string]: (value: number | string) => WorkAnswer } = {
      "horses[0].girthed.rock": splitAt(70, "nothing", "panel"),
      "horses[0].girthed.bridgeNear": splitAt(25, "nothing", "panel"),
    };
    const answerWith: AnswerWith = (path, value) => byPath[path]?.(value) ?? "nothing";
    const next = nextReading(survey, ["horses[0].girthed.rock", "horses[0].girthed.bridgeNear"], answerWith);
    expect(next?.path).toBe("horses[0].girthed.bridgeNear");
    expect([...(next?.leadsTo ?? [])].sort()).toEqual(["nothing", "panel"]);
  });
  it("ties go by the order of the work, whatever the order of asking", () => {
    const answerWith: AnswerWith = (_path, value) => splitAt(25, "nothing", "panel")(value);
    const paths = ["horses[0].girthed.bridgeOff", "horses[0].girthed.bridgeNear"];
    expect(nextReading(survey, paths, answerWith)?.path).toBe("horses[0].girthed.bridgeNear");
    expect(nextReading(survey, [...paths].reverse(), answerWith)?.path).toBe("horses[0].girthed.bridgeNear");
  });
  it("one whose every value gives the same answer is not asked for", () => {
    expect(nextReading(survey, ["horses[0].girthed.rock"], () => "other-saddle")).toBeUndefined();
  });
  it("where several are missing at once and none splits alone, the first in the order of the work", () => {
    const next = nextReading(
      survey,
      ["horses[0].girthed.rock", "horses[0].moving.uneven"],
      () => "measure-more",
    );
    expect(next?.path).toBe("horses[0].moving.uneven");
  });
});

describe("what is named is missing, or may be read again more surely", () => {
  it("a trace that is not there is named by its station, not by what is known of another", () => {
    const next = nextReading(survey, ["horses[0].traces.rear.cold"], () => "measure-more");
    expect([next?.path, next?.says]).toEqual([
      "horses[0].traces.rear.cold",
      "Read next: the cold trace at the rear, horse 1.",
    ]);
  });
  it("of tracings only the points are drawn again: a temper that stands splits nothing", () => {
    const next = nextReading(survey, ["horses[0].traces"], (path) =>
      path.endsWith("temper") ? "spent" : "measure-more",
    );
    expect(next?.path).toBe("horses[0].traces[0].points");
  });
  it("five values may miss what fits; what the other side was read at does not", () => {
    const other = surveyWith({ "horses[0].template.offTip": -3 });
    const next = nextReading(other, ["horses[0].template.nearTip"], (_path, value) =>
      Number(value) === -3 ? "alter-dressed" : "other-saddle",
    );
    expect(next?.leadsTo).toEqual(["other-saddle", "alter-dressed"]);
  });
  it("no value is tried in a list's item that nobody has begun", () => {
    const next = nextReading(survey, ["saddle.past.alterations"], () => {
      throw new Error("tried");
    });
    expect(next).toBeUndefined();
  });
  it("diagonals not read: they are named, and not who saw the tree bare", () => {
    const judged = judgeCase(
      toJudge(
        {
          "saddle.lines": {},
          "horses[0].template": {
            nearTop: 0,
            nearMiddle: -1.5,
            nearTip: -3,
            offTop: 0,
            offMiddle: -1.5,
            offTip: -3,
          },
          "horses[0].girthed.handNear": "tight-at-tip",
          "horses[0].girthed.handOff": "tight-at-tip",
        },
        { computedToday: faces(5.5), candidates: sweep("press", 2.4), fillMm: { near: 11, off: 11 } },
      ),
    );
    expect(judged.answers.work.also).toEqual(["alter-dressed"]);
    expect(judged.waitsFor).toEqual(["saddle.lines.diagonalNear", "saddle.lines.diagonalOff"]);
  });
});

describe("from the case itself", () => {
  const answerWith =
    (changes: { readonly [path: string]: unknown }): AnswerWith =>
    (path, value) =>
      judgeCase(toJudge({ ...changes, [path]: value })).answers.work.id;
  it("nobody trotted it up: that is asked, and both answers are told", () => {
    const changes = { "horses[0].moving.uneven": "not-looked" };
    const judged = judgeCase(toJudge(changes));
    expect(judged.waitsFor).toEqual(["horses[0].moving.uneven"]);
    const next = nextReading(surveyWith(changes), judged.waitsFor, answerWith(changes));
    expect(next?.path).toBe("horses[0].moving.uneven");
    expect([...(next?.leadsTo ?? [])].sort()).toEqual(expect.arrayContaining(["not-now", "nothing"]));
  });
  it("the rock was not tried and decides: it is asked for", () => {
    const changes = { "horses[0].girthed.rock": "not-looked" };
    const judged = judgeCase(toJudge(changes));
    expect([judged.answers.work.id, judged.waitsFor]).toEqual(["measure-more", ["horses[0].girthed.rock"]]);
    expect(nextReading(surveyWith(changes), judged.waitsFor, answerWith(changes))?.path).toBe(
      "horses[0].girthed.rock",
    );
  });
  it("the rock was not tried, and no rails fit anyway: the answer is given, nothing is asked", () => {
    const changes = { "horses[0].girthed.rock": "not-looked" };
    const none = toJudge(changes, {
      computedToday: toJudge({}).computedToday.map((one) => ({ ...one, value: 12 })),
      candidates: [],
    });
    const judged = judgeCase({
      ...none,
      candidates: toJudge({}).candidates.map((one) => ({ ...one, after: none.computedToday })),
    });
    expect([judged.answers.work.id, judged.waitsFor]).toEqual(["other-saddle", []]);
  });
});
