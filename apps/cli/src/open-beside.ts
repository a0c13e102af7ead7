import type { SurveyedJob } from "@treewright/core/survey/job.ts";
import type { FileRead } from "@treewright/core/survey/read-beside.ts";
import { readJob } from "@treewright/core/survey/read-job.ts";
import { readStock } from "@treewright/core/survey/read-stock.ts";
import type { Stock } from "@treewright/core/survey/stock.ts";
import type { Desk } from "./desk.ts";
import { EXIT, Stop } from "./exit.ts";
import { readCaseText } from "./files.ts";
import { tellProblems } from "./open-case.ts";

/** Reads a job at the press or ends the command. */
export const openJob = (path: string, desk: Desk): SurveyedJob =>
  opened(path, readJob, "No pass is told: a job with a problem gives no part of an answer.", desk);

/** Reads a stock of plates or ends the command. */
export const openStock = (path: string, desk: Desk): Stock =>
  opened(path, readStock, "No plate was looked at: a stock with a problem gives no part of an answer.", desk);

function opened<T>(path: string, reader: (text: string) => FileRead<T>, ends: string, desk: Desk): T {
  const read = reader(readCaseText(path));
  if (read.ok) return read.value;
  tellProblems(path, read.problems, desk);
  throw new Stop(EXIT.problemInCase, ends);
}
