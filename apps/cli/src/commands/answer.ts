import { answerLine } from "../answer-line.ts";
import { answerBrief, answerText } from "../answer-text.ts";
import { type Command, type Given, wholeNumber } from "../command.ts";
import type { Desk } from "../desk.ts";
import { EXIT, Stop } from "../exit.ts";
import { caseFiles, caseName, isFolder } from "../files.ts";
import { type GoodCase, openOrTell } from "../open-case.ts";
import { solve } from "../solve.ts";

const HORSES_MOST = 8;

function horsesOf({ survey }: GoodCase, given: Given): number[] {
  const wanted = wholeNumber(given, "horse", 1, HORSES_MOST);
  if (wanted === undefined) return survey.horses.map((_, at) => at);
  if (wanted <= survey.horses.length) return [wanted - 1];
  throw new Stop(EXIT.wrongUse, `--horse ${wanted}: this case has ${survey.horses.length}.`);
}

function answerOne(file: string, good: GoodCase, given: Given, desk: Desk): void {
  const name = caseName(file);
  for (const horse of horsesOf(good, given)) {
    const result = solve(good.survey, horse, `${name}, ${good.survey.horses[horse]?.name ?? ""}`, desk);
    const isList = isFolder(given.takes[0] ?? "");
    const lines = given.isOn("json")
      ? [answerLine(name, result)]
      : isList
        ? answerBrief(name, result)
        : [...answerText(result), ""];
    for (const line of lines) desk.say(line);
  }
}

export const answerCase: Command = {
  name: "answer",
  takes: "CASE|FOLDER",
  says: "three answers for each horse, with their reasons",
  about: [
    "May this horse work, is this saddle sound, what should be done. Of a folder every .json is answered, " +
      "in short; a case with a problem is told and left out, and the others are answered.",
    "--json prints one line for each case and horse: case, horse, saddle, work, also, permitted, setting, next, " +
      "missing, names, horseIndex, engine, inputHash, seed.",
  ],
  options: {
    horse: { type: "string", value: "N", says: "only the N-th horse of the case, counted from 1" },
    json: { type: "boolean", says: "one line of JSON for each case and horse" },
  },
  examples: [
    ["answer first.json", "all horses of one case, in full"],
    ["answer examples/cases", "every case of a folder, in short"],
    ["answer examples/cases --json", "the same for another program"],
  ],
  async run(given, desk) {
    let wrong = 0;
    for (const file of caseFiles(given.takes[0] ?? "")) {
      const good = openOrTell(file, desk);
      if (good) answerOne(file, good, given, desk);
      else wrong += 1;
    }
    return wrong === 0 ? EXIT.answered : EXIT.problemInCase;
  },
};
