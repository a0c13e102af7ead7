import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseQuantity, show, unitCalled } from "../../core/src/engine/quantity/index.ts";
import { allReadings } from "../../core/src/survey/all-readings.ts";
import { applyAnswer, emptyCase } from "../../core/src/survey/answer-question.ts";
import type { CaseFile, Survey } from "../../core/src/survey/case.ts";
import { getAt, putAt, stepsOf } from "../../core/src/survey/path.ts";
import { isAsked, questions } from "../../core/src/survey/questions.ts";
import { readCase, readCaseValue } from "../../core/src/survey/read-case.ts";
import { fieldAt } from "../../core/src/survey/schema-fields.ts";
import {
  type UnitsChosen,
  USUAL_UNITS,
  unitBeside,
  withUnitBeside,
} from "../../core/src/survey/unit-beside.ts";

const INCHES: UnitsChosen = { length: "in", mass: "lb" };
const IN_MM = 25.4;
const LB_KG = 0.45359237;
/** Read to the sixteenth of an inch, and to the half pound. */
const SIXTEENTH_MM = IN_MM / 16;
const HALF_LB_KG = LB_KG / 2;

const EMPTY = emptyCase("a visit", "2031-03-01");

describe("a bare number", () => {
  it("means the unit that stands beside its field, and is kept with it", () => {
    const at = "saddle.head.spread.mm";
    const path = questions().find(({ asks }) => asks.startsWith("Spread at the tips"))?.path ?? at;
    for (const [typed, kept] of [
      ["7", "7 in"],
      [" 6 7/8 ", "6 7/8 in"],
      ["3,5", "3,5 in"],
      ["174 mm", "174 mm"],
      ["17.4cm", "17.4cm"],
      ["unknown", "unknown"],
      ["", ""],
      ["7 bananas", "7 bananas"],
    ] as const) {
      expect(withUnitBeside(EMPTY, path, typed, INCHES)).toBe(kept);
      expect(withUnitBeside(EMPTY, path, typed, USUAL_UNITS)).toBe(typed);
    }
    expect(unitBeside("rider.massDressed", INCHES)).toBe("lb");
    expect(withUnitBeside(EMPTY, "rider.massDressed", "150", INCHES)).toBe("150 lb");
    expect(withUnitBeside(EMPTY, "rider.massDressed", "11 st 5 lb", INCHES)).toBe("11 st 5 lb");
  });

  it("an angle, a count, a word or a date is left as it is", () => {
    for (const { path, kind } of questions().filter(({ path }) => unitBeside(path, INCHES) === undefined))
      expect(withUnitBeside(EMPTY, path, "5", INCHES), `${path}, ${kind}`).toBe("5");
  });

  it("points say their unit before them; a line that was in inches is said to be in mm when that stands beside it", () => {
    const path = "horses[0].traces[0].points";
    expect(withUnitBeside(EMPTY, path, "-3.5 -2; 0 0", INCHES)).toBe("in -3.5 -2; 0 0");
    expect(withUnitBeside(EMPTY, path, "cm -9 -5; 0 0", INCHES)).toBe("cm -9 -5; 0 0");
    expect(withUnitBeside(EMPTY, path, "-90 -50; 0 0", USUAL_UNITS)).toBe("-90 -50; 0 0");
    const before = putAt(EMPTY, stepsOf("horses[0].traces[0].unit"), "in") as CaseFile;
    expect(withUnitBeside(before, path, "-90 -50; 0 0", USUAL_UNITS)).toBe("mm -90 -50; 0 0");
    expect(withUnitBeside(before, path, "-3.5 -2; 0 0", INCHES)).toBe("-3.5 -2; 0 0");
  });
});

describe("a whole visit", () => {
  it("typed in inches and pounds is the survey of the same visit in mm and kg, within the rounding of what was typed", () => {
    const text = readFileSync("examples/cases/09-alter-in-the-saddle.json", "utf8");
    const read = readCase(text);
    if (!read.ok) throw new Error("the example is a case");
    const metric = typedAnew(read.file, USUAL_UNITS);
    const inches = typedAnew(read.file, INCHES);
    expect(inches.typed).toEqual(metric.typed);
    expect(metric.typed).toBeGreaterThan(60);
    const [one, other] = [readingsOf(metric.survey), readingsOf(inches.survey)];
    expect([...other.keys()]).toEqual([...one.keys()]);
    let lengths = 0;
    for (const [path, mm] of one) {
      const found = other.get(path);
      const bound = mm.kind === "mass" ? HALF_LB_KG / 2 : mm.kind === "length" ? SIXTEENTH_MM / 2 : 0;
      if (mm.kind === "length") lengths += 1;
      expect(Math.abs((found?.value ?? Number.NaN) - mm.value), path).toBeLessThanOrEqual(bound + 1e-9);
    }
    expect(lengths).toBeGreaterThan(40);
    const front = (survey: Survey) => survey.horses[0]?.traces[0]?.points.flat() ?? [];
    const [lineMm, lineIn] = [front(metric.survey), front(inches.survey)];
    expect(lineIn.length).toBe(lineMm.length);
    for (const [i, mm] of lineMm.entries())
      expect(Math.abs((lineIn[i] ?? Number.NaN) - mm)).toBeLessThanOrEqual(SIXTEENTH_MM / 2 + 1e-9);
  });
});

/** Every question of a case answered anew by what stands in it, bare and in the units that stand beside the fields. */
function typedAnew(file: CaseFile, units: UnitsChosen): { survey: Survey; typed: number } {
  let draft = EMPTY;
  let typed = 0;
  for (const question of questions()) {
    const stands = getAt(file, stepsOf(question.path));
    if (stands === undefined || !isAsked(question, draft)) continue;
    const words = inUnits(stands, question.path, units);
    if (words === undefined) continue;
    const answered = applyAnswer(draft, question.path, withUnitBeside(draft, question.path, words, units));
    if (!answered.ok) throw new Error(`${question.path}, ${words}: ${answered.problem.allowed}`);
    draft = answered.draft;
    typed += 1;
  }
  const read = readCaseValue(draft);
  if (!read.ok) throw new Error(JSON.stringify(read.problems.slice(0, 3)));
  return { survey: read.survey, typed };
}

/** As a hand types it off its own rule: without a unit. Undefined for what is typed in no field. */
function inUnits(stands: unknown, path: string, units: UnitsChosen): string | undefined {
  const field = fieldAt(path);
  if (field?.kind === "points") {
    const pairs = stands as readonly (readonly [number, number])[];
    return pairs.map((pair) => pair.map((mm) => offRule(mm, units)).join(" ")).join("; ");
  }
  if (typeof stands !== "string" && typeof stands !== "number" && typeof stands !== "boolean")
    return undefined;
  const kind = field?.quantity;
  const parsed = kind === "length" || kind === "mass" ? parseQuantity(String(stands), kind) : undefined;
  if (!parsed?.ok) return String(stands);
  if (kind === "length") return fractions(parsed.value, units);
  return units.mass === "kg" ? String(parsed.value) : String(Math.round(parsed.value / HALF_LB_KG) / 2);
}

const offRule = (mm: number, { length }: UnitsChosen): number =>
  length === "mm" ? mm : Math.round(mm / SIXTEENTH_MM) / 16;

function fractions(mm: number, { length }: UnitsChosen): string {
  if (length === "mm") return String(mm);
  return show(mm, "length", unitCalled("in", "length"), SIXTEENTH_MM).replace(/ in$/, "");
}

/** Every measured value of a survey, by its path. */
const readingsOf = (survey: Survey) =>
  new Map(allReadings(survey).map(({ path, reading }) => [path, reading] as const));
