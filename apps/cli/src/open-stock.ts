import { readStock } from "@treewright/core/survey/read-stock.ts";
import type { Stock } from "@treewright/core/survey/stock.ts";
import { wrap } from "./columns.ts";
import type { Desk } from "./desk.ts";
import { EXIT, Stop } from "./exit.ts";
import { readCaseText } from "./files.ts";
import { problemLines } from "./open-case.ts";

/** Reads a stock of plates or ends the command. */
export function openStock(path: string, desk: Desk): Stock {
  const read = readStock(readCaseText(path));
  if (read.ok) return read.stock;
  for (const line of wrap(`${path}: ${read.problems.length} to put right`)) desk.tell(line);
  for (const line of read.problems.flatMap(problemLines)) desk.tell(line);
  throw new Stop(
    EXIT.problemInCase,
    "No plate was looked at: a stock with a problem gives no part of an answer.",
  );
}
