import { judgeCase } from "../judge/judge-case.ts";
import type { NextReading } from "../judge/judgement.ts";
import { nextReading } from "../judge/next-reading.ts";
import { withAnswer } from "../survey/with-answer.ts";
import { type Road, roadWith, toJudge } from "./road.ts";

/** The one reading that would settle what the case waits for: each of its possible answers is answered again, others at their means. */
export function nextFor(road: Road, waitsFor: readonly string[], seed: number): NextReading | undefined {
  if (waitsFor.length === 0) return undefined;
  return nextReading(road.survey, waitsFor, (path, value) => {
    const survey = withAnswer(road.survey, path, value);
    if (survey === undefined) return "measure-more";
    return judgeCase(toJudge(roadWith(road, survey, path, seed))).answers.work.id;
  });
}
