import { judgeCase } from "../judge/judge-case.ts";
import type { NextReading } from "../judge/judgement.ts";
import { missingUnder } from "../judge/next/missing.ts";
import { nextReading } from "../judge/next-reading.ts";
import { aboutPath } from "../survey/about-path.ts";
import { withAnswer } from "../survey/with-answer.ts";
import { type Road, roadWith, toJudge } from "./road.ts";

/** The one reading that would settle what the case waits for: each of its possible answers is answered again, others at their means. */
export function nextFor(road: Road, waitsFor: readonly string[], seed: number): NextReading | undefined {
  if (waitsFor.length === 0) return undefined;
  const found = nextReading(road.survey, waitsFor, (path, value) => {
    const survey = withAnswer(road.survey, path, value);
    if (survey === undefined) return "measure-more";
    return judgeCase(toJudge(roadWith(road, survey, path, seed))).answers.work.id;
  });
  return found ?? firstMissing(road, waitsFor);
}

/** A few values far apart can all miss those that matter. What is waited for is then named, and not what it leads to. */
function firstMissing({ survey }: Road, waitsFor: readonly string[]): NextReading | undefined {
  const [first] = missingUnder(survey, waitsFor);
  return first && { path: first.path, says: `Read next: ${aboutPath(first.path)}.`, leadsTo: [] };
}
