import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { getAt, putAt, type Step, stepsOf } from "../../core/src/survey/path.ts";
import { type CaseRead, readCase, readCaseValue } from "../../core/src/survey/read-case.ts";
import { FIELDS } from "../../core/src/survey/schema-fields.ts";
import { propertySeed } from "../number/seed.ts";
import { breakable, fixtureText } from "./cases.ts";

const RUNS = { seed: propertySeed("hostile cases"), numRuns: 1000 };

/** Either a survey, or problems that each say where, what and what is allowed. */
function soundAnswer(read: CaseRead): void {
  if (read.ok) {
    expect(read.survey.horses.length).toBeGreaterThan(0);
    return;
  }
  expect(read.problems.length).toBeGreaterThan(0);
  expect(read.problems.length).toBeLessThanOrEqual(101);
  for (const problem of read.problems) {
    for (const words of [problem.where, problem.read, problem.allowed]) {
      expect(words).not.toBe("");
      expect(words).not.toMatch(/undefined|\[object|Invalid input|NaN to| at .*\.ts/);
      expect(words.length).toBeLessThan(900);
    }
  }
}

/** Paths of everything that stands in a case, lists and points included. */
function places(value: unknown, steps: Step[] = []): Step[][] {
  if (typeof value !== "object" || value === null) return [steps];
  const inside = Array.isArray(value)
    ? value.map((item, at) => places(item, [...steps, at]))
    : Object.entries(value).map(([name, item]) => places(item, [...steps, name]));
  return [steps, ...inside.flat()];
}

const nasty = fc.oneof(
  fc.constantFrom<unknown>(
    Number.MAX_VALUE,
    -Number.MAX_VALUE,
    1e-320,
    -0,
    -1,
    0,
    "",
    "NaN",
    "Infinity",
    "-",
    "1,425",
    "８",
    null,
    true,
    [],
    {},
    [[]],
    "💥".repeat(300),
    "not-looked",
    "yes",
    "8 in",
  ),
  fc.double(),
  fc.string({ unit: "grapheme" }),
  fc.jsonValue({ maxDepth: 3 }),
);

it("any JSON is read or refused, never thrown at", () => {
  fc.assert(
    fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => soundAnswer(readCase(JSON.stringify(value)))),
    RUNS,
  );
});

it("any text is read or refused, never thrown at", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 400 }), (text) => soundAnswer(readCase(text))),
    RUNS,
  );
  fc.assert(
    fc.property(fc.nat(), fc.nat({ max: 40 }), fc.string({ maxLength: 5 }), (at, drop, put) => {
      const text = fixtureText("version-1");
      const cut = at % text.length;
      soundAnswer(readCase(text.slice(0, cut) + put + text.slice(cut + drop)));
    }),
    RUNS,
  );
});

describe("a case changed in one place", () => {
  const file = breakable("full");
  const all = places(file).filter((steps) => steps.length > 0);

  it("anywhere, into anything, is read or has its problems named", () => {
    let refused = 0;
    fc.assert(
      fc.property(fc.nat(), nasty, (pick, value) => {
        const read = readCaseValue(putAt(file, all[pick % all.length] ?? [], value));
        refused += read.ok ? 0 : 1;
        soundAnswer(read);
      }),
      RUNS,
    );
    expect(refused).toBeGreaterThan(300);
  });

  it("the problem is named at that place or above it", () => {
    fc.assert(
      fc.property(fc.nat(), (pick) => {
        const steps = all[pick % all.length] ?? [];
        const read = readCaseValue(putAt(file, steps, { strange: 1 }));
        if (read.ok) return;
        const named = read.problems.map(({ where }) => stepsOf(where.split(" ")[0] ?? ""));
        expect(named.some((place) => place.every((step, at) => step === (steps[at] ?? step)))).toBe(true);
      }),
      RUNS,
    );
  });

  it("NaN, infinite, huge and negative numbers are refused in every measured place", () => {
    for (const field of FIELDS.filter(
      ({ kind, path }) => kind === "measured" && !/alterations|platesAtHand|positions/.test(path),
    )) {
      const steps = stepsOf(field.path.replace("traces[]", "traces[0]").replace("horses[]", "horses[0]"));
      for (const value of [Number.NaN, Infinity, -Infinity, 1e300, -1e300, "1e300", "9".repeat(50)]) {
        const read = readCaseValue(putAt(file, steps, value));
        expect(read.ok, `${field.path} ${value}`).toBe(false);
        soundAnswer(read);
      }
      // Left out of the file or not: the place is known, so that the loop above has really tried it.
      expect(getAt(file, steps.slice(0, -1)), field.path).toBeDefined();
    }
  });
});

describe("what would hang or crash a careless reader", () => {
  it.each([
    ["lists nested a million deep", "[".repeat(1_000_000)],
    [
      "groups nested deep inside a case",
      `{"format":"treewright-case","version":3,"saddle":${'{"head":'.repeat(50_000)}1${"}".repeat(50_000)}}`,
    ],
    ["ten megabytes", " ".repeat(10_000_000)],
    ["two megabytes of one word", `"${"a".repeat(1_999_000)}"`],
    ["two megabytes of numbers", `[${"1,".repeat(900_000)}1]`],
    ["two megabytes of names", `{${Array.from({ length: 150_000 }, (_, at) => `"n${at}":1`).join(",")}}`],
    [
      "a case with two megabytes of strange names",
      `{"format":"treewright-case","version":3,${Array.from({ length: 150_000 }, (_, at) => `"n${at}":1`).join(",")}}`,
    ],
    ["one name a hundred thousand times", `{${'"a":1,'.repeat(100_000)}"a":1}`],
    ["a long unfinished word", `"${"\\".repeat(1_000_001)}`],
    ["prototype, spelled in escapes", '{"\\u005f_proto__": {"polluted": true}}'],
    [
      "constructor and prototype",
      '{"format":"treewright-case","version":3,"constructor":{"prototype":{"polluted":true}}}',
    ],
  ])("%s", (_, text) => {
    soundAnswer(readCase(text));
    expect(Object.hasOwn(Object.prototype, "polluted")).toBe(false);
  });

  it("zigzags of 2,000 points in every trace and repeat", () => {
    const file = breakable("full");
    const zigzag = Array.from({ length: 2000 }, (_, at) => [(at % 2 === 0 ? -90 : 90) + at / 100, -at / 20]);
    file.horses[0].traces = Array.from({ length: 24 }, () => ({
      station: "front",
      points: zigzag,
      repeats: [zigzag, zigzag],
    }));
    soundAnswer(readCaseValue(file));
  });
});
