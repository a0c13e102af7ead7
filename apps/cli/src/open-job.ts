import type { SurveyedJob } from "@treewright/core/survey/job.ts";
import { readJob } from "@treewright/core/survey/read-job.ts";
import { wrap } from "./columns.ts";
import type { Desk } from "./desk.ts";
import { EXIT, Stop } from "./exit.ts";
import { readCaseText } from "./files.ts";
import { problemLines } from "./open-case.ts";

/** Reads a job at the press or ends the command. */
export function openJob(path: string, desk: Desk): SurveyedJob {
  const read = readJob(readCaseText(path));
  if (read.ok) return read.job;
  for (const line of wrap(`${path}: ${read.problems.length} to put right`)) desk.tell(line);
  for (const line of read.problems.flatMap(problemLines)) desk.tell(line);
  throw new Stop(EXIT.problemInCase, "No pass is told: a job with a problem gives no part of an answer.");
}
