import { readFileSync } from "node:fs";
import type { Candidate, CaseToJudge, MeasuredLimit } from "../../core/src/judge/input.ts";
import type { Setting, Way } from "../../core/src/reach/setting.ts";
import type { Survey } from "../../core/src/survey/case.ts";
import { putAt, stepsOf } from "../../core/src/survey/path.ts";
import { readCaseValue } from "../../core/src/survey/read-case.ts";

export type Changes = { readonly [path: string]: unknown };

export const full: { readonly horses: readonly object[] } = JSON.parse(
  readFileSync(new URL("../../core/src/survey/fixtures/full.json", import.meta.url), "utf8"),
);

/** Readings that a case whose head is judged needs beyond the fixture. */
const READY: Changes = {
  "horses[0].girthed.handNear": "even",
  "horses[0].girthed.handOff": "even",
};

/** The full case with some of its places typed otherwise. */
export function surveyWith(changes: Changes): Survey {
  const file = Object.entries({ ...READY, ...changes }).reduce<unknown>(
    (tree, [path, value]) => putAt(tree, stepsOf(path), value),
    full,
  );
  const read = readCaseValue(file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 1));
  return read.survey;
}

export const figure = (rule: string, at: string, value: number, u = 1): MeasuredLimit => ({
  rule,
  at,
  value,
  u,
  missing: [],
  ...(at.endsWith("near") ? { side: "near" as const } : at.endsWith("off") ? { side: "off" as const } : {}),
});

/** Faces of tree less back, degrees: front as given, rails even. */
export const faces = (near: number, off = near, rail = 0): readonly MeasuredLimit[] => [
  figure("face-front", "front, near", near),
  figure("face-front", "front, off", off),
  ...["mid, near", "mid, off", "rear, near", "rear, off"].map((at) => figure("face-rail", at, rail)),
];

/** A setting whose faces follow the change: 0.57 degrees a mm and half, so 10 mm turns each half about 3 degrees. */
export function candidate(
  changeMm: number,
  way: Way,
  today: number,
  more: Partial<Setting> = {},
  rail = 0,
): Candidate {
  const setting: Setting = {
    id: `${way} ${changeMm}`,
    way,
    changeMm,
    spreadMm: 205 + changeMm,
    plate: way === "exchange" ? 0 : undefined,
    halfTurnRad: undefined,
    needsBare: Math.abs(changeMm) > 8,
    shutBy: [],
    ...more,
  };
  return { setting, after: faces(today - 0.3 * changeMm, undefined, rail), others: [] };
}

export const sweep = (way: Way, today: number, more: Partial<Setting> = {}, rail = 0): readonly Candidate[] =>
  [-20, -16, -12, -8, -4, 4, 8, 12, 16, 20].map((mm) => candidate(mm, way, today, more, rail));

export function toJudge(changes: Changes, more: Partial<CaseToJudge> = {}): CaseToJudge {
  return {
    survey: surveyWith(changes),
    horseIndex: 0,
    computedToday: faces(0),
    candidates: sweep("press", 0),
    largerSide: undefined,
    fillMm: { near: 0, off: 0 },
    notAtRest: undefined,
    lacking: [],
    ...more,
  };
}
