import { describe, expect, it } from "vitest";
import { aboutPath } from "../../core/src/survey/about-path.ts";
import { applyAnswer, emptyCase } from "../../core/src/survey/answer-question.ts";
import type { CaseFile } from "../../core/src/survey/case.ts";
import { NOT_ASKED, ORDER_OF_WORK } from "../../core/src/survey/order-of-work.ts";
import { isAsked, type Question, questions } from "../../core/src/survey/questions.ts";
import { readCase } from "../../core/src/survey/read-case.ts";
import { FIELDS } from "../../core/src/survey/schema-fields.ts";
import { problemsIn, surveyOf } from "./cases.ts";

const empty = emptyCase("A first visit", "2031-05-01");

function answered(draft: CaseFile, path: string, typed: string): CaseFile {
  const result = applyAnswer(draft, path, typed);
  if (!result.ok) throw new Error(`${path}: ${result.problem.allowed}`);
  return result.draft;
}
function refused(draft: CaseFile, path: string, typed: string): string {
  const result = applyAnswer(draft, path, typed);
  return result.ok ? "" : `${result.problem.where} | ${result.problem.read} | ${result.problem.allowed}`;
}

const POINTS: { readonly [place: string]: string } = {
  traces: "-90 -60; -60 -30; -30 -9; 0 0; 30 -9; 60 -30; 90 -60",
  profile: "0 0; 200 -50; 400 -45",
};

/** An answer that a sensible hand could give. */
function sensible({ path, kind, words, range }: Question): string {
  if (kind === "points")
    return path.includes("profile")
      ? (POINTS.profile ?? "")
      : (POINTS.traces ?? "").replace("90 -60", `9${path.match(/\d+/g)?.[1]} -60`);
  if (kind === "choice") return words?.[0] ?? "";
  if (kind === "date") return "2031-05-02";
  if (path.endsWith(".transponder")) return "276 000000012345";
  if (path.endsWith(".ueln")) return "276020 12345";
  if (kind === "words") return "words";
  if (kind === "true-or-false") return "no";
  return String(Math.round(((range?.[0] ?? 0) + (range?.[1] ?? 0)) / 2));
}

describe("the questions of a visit", () => {
  it("follow the order of the work", () => {
    const asked = questions().map(({ section }) => section);
    expect([...new Set(asked)]).toEqual(ORDER_OF_WORK.map(({ title }) => title));
    expect(
      asked.every(
        (section, at) =>
          at === 0 ||
          ORDER_OF_WORK.findIndex((one) => one.title === section) >=
            ORDER_OF_WORK.findIndex((one) => one.title === asked[at - 1]),
      ),
    ).toBe(true);
  });

  it("fill each place of the case once", () => {
    const paths = questions().map(({ path }) => path);
    expect(new Set(paths).size).toBe(paths.length);
    const asked = new Set(paths.map((path) => path.replace(/\[\d+\]/g, "[]")));
    const leaves = FIELDS.filter(({ kind }) => kind !== "group" && kind !== "list").map(({ path }) => path);
    const known = [
      ...NOT_ASKED,
      "horses[].traces[].station",
      "horses[].traces[].unit",
      "horses[].profile.unit",
      "horses[].traces[].repeats[]",
    ];
    expect(leaves.filter((path) => !asked.has(path)).sort()).toEqual([...known].sort());
  });

  it("are put for each horse", () => {
    const paths = questions(3).map(({ path }) => path);
    expect(paths).toContain("horses[2].girthed.clearanceTop");
    expect(paths.filter((path) => path.startsWith("saddle."))).toEqual(
      questions(1)
        .map(({ path }) => path)
        .filter((path) => path.startsWith("saddle.")),
    );
  });

  it("have words, a hint and a meaning for Enter", () => {
    for (const { asks, hint, enterMeans, path } of questions()) {
      expect(
        [asks, hint, enterMeans].every((words) => words.length > 1),
        path,
      ).toBe(true);
      expect(asks).toMatch(/^[A-Z].*\?$/s);
    }
  });

  it("all left out give a case that is read", () => {
    const draft = questions().reduce(
      (at, question) => (isAsked(question, at) ? answered(at, question.path, "") : at),
      empty,
    );
    expect(draft).toEqual(empty);
    expect(problemsIn(readCase(JSON.stringify(draft)))).toEqual([]);
  });

  it("all answered give a case that is read, with every answer in it", () => {
    const asked = questions().filter(({ path }) => !/(alterations|platesAtHand)\[[123]\]/.test(path));
    const draft = asked.reduce(
      (at, question) => (isAsked(question, at) ? answered(at, question.path, sensible(question)) : at),
      empty,
    );
    const survey = surveyOf(readCase(JSON.stringify(draft)));
    expect(survey.horses[0]?.traces.map(({ station }) => station)).toEqual([
      "front",
      "mid",
      "rear",
      "front",
      "mid",
      "rear",
    ]);
    expect(survey.saddle.head.spreadTips).toMatchObject({ value: 225 });
    expect(survey.horses[0]?.hands["last-ribs"]?.off).toEqual({ grade: 2, twice: "yes" });
  });
});

describe("one answer", () => {
  it("takes words as hands type them", () => {
    const paths = {
      dropped: "saddle.past.incidents.dropped",
      head: "saddle.looked.parts.head",
      age: "horses[0].age",
    };
    const draft = answered(
      answered(
        answered(answered(empty, paths.dropped, "Y"), paths.head, "Cannot be seen"),
        paths.age,
        "don't know",
      ),
      "saddle.head.spreadTips",
      "8 1/4 in",
    );
    expect(draft).toMatchObject({
      saddle: {
        past: { incidents: { dropped: "yes" } },
        looked: { parts: { head: "cannot-be-seen" } },
        head: { spreadTips: "8 1/4 in" },
      },
      horses: [{ age: "unknown" }],
    });
  });

  it("leaves the draft that it was given as it was", () => {
    const before = JSON.stringify(empty);
    answered(empty, "saddle.head.depth", "95");
    expect(JSON.stringify(empty)).toBe(before);
  });

  it.each([
    ["saddle.head.depth", "12 in", "1.58 to 7.08 in"],
    ["saddle.head.depth", "1,425", "is that 1.425 or 1425?"],
    ["horses[0].hands.loin.near.grade", "4", "a whole number from 0 to 3"],
    ["saddle.build.arch", "wod", 'did you mean "wood"?'],
    ["horses[0].traces[0].points", "1 2; 3 4", "7 to 2000 points"],
    ["horses[0].traces[0].points", "90 -60; 60 -30; 30 -9; 0 0; -30 -9; -60 -30; -90 -60", "near side first"],
    ["horses[0].traces[1].points", POINTS.traces ?? "", "the one before it first"],
    ["visit.date", "2031-13-01", "a day that exists"],
    ["saddle.head", "x", "the path of a question"],
    ["horses[0].__proto__.x", "1", "the path of a question"],
    ["version", "9", "the path of a question"],
  ])("%s %s is refused", (path, typed, allowed) => {
    expect(refused(empty, path, typed)).toContain(allowed);
  });

  it("of points may begin with their unit", () => {
    const drawn = answered(
      empty,
      "horses[0].traces[0].points",
      "in -3.5 -2.4; -2.4 -1.2; -1.2 -0.35; 0 0; 1.2 -0.35; 2.4 -1.2; 3.5 -2.4",
    );
    expect(drawn.horses[0]?.traces?.[0]).toMatchObject({ unit: "in", station: "front" });
    expect(surveyOf(readCase(JSON.stringify(drawn))).horses[0]?.traces[0]?.points[0]?.[0]).toBeCloseTo(
      -88.9,
      9,
    );
    expect(
      refused(
        empty,
        "horses[0].traces[0].points",
        "-3.5 -2.4; -2.4 -1.2; -1.2 -0.35; 0 0; 1.2 -0.35; 2.4 -1.2; 3.5 -2.4",
      ),
    ).toContain("is the unit inches");
  });

  it("of a trace's unit is held against its points", () => {
    const drawn = answered(empty, "horses[0].traces[0].points", POINTS.traces ?? "");
    expect(refused(drawn, "horses[0].traces[0].unit", "in")).toContain("-78 to 78 in");
    expect(answered(drawn, "horses[0].traces[0].unit", "mm").horses[0]?.traces?.[0]).toMatchObject({
      station: "front",
      unit: "mm",
    });
  });
});

describe("a path in plain words", () => {
  it.each([
    ["saddle.head.spreadTips", "spread at the tips, on the face named"],
    ["saddle.bearing.front.near.width", "width of the face, front, near side"],
    ["horses[1].girthed.clearanceTop", "clearance over the top of the withers, girthed up, horse 2"],
    [
      "horses[0].hands.last-ribs.off.grade",
      "reaction to pressure: 0 none, 1 mild, 2 clear, 3 strong, last ribs, off side",
    ],
    [
      "horses[].riderUp.seatSlope",
      "slope of the seat's bottom to gravity, head end higher is positive, rider up",
    ],
    ["no.such.path", "no.such.path"],
    ["__proto__", "__proto__"],
    ["constructor.name", "constructor.name"],
  ])("%s", (path, words) => {
    expect(aboutPath(path)).toBe(words);
  });
});
