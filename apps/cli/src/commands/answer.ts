import { answerLine } from "../answer-line.ts";
import { answerBrief, answerText } from "../answer-text.ts";
import type { Command, Given } from "../command.ts";
import type { Desk } from "../desk.ts";
import { EXIT } from "../exit.ts";
import { caseFiles, caseName, isFolder } from "../files.ts";
import { horseNamed } from "../horses.ts";
import { type GoodCase, openOrTell } from "../open-case.ts";
import { writeSheets } from "../paper.ts";
import { solve } from "../solve.ts";

async function answerOne(file: string, good: GoodCase, given: Given, desk: Desk): Promise<void> {
  const name = caseName(file);
  const isList = isFolder(given.takes[0] ?? "");
  const only = horseNamed(good.survey, given);
  for (const horse of only === undefined ? good.survey.horses.keys() : [only]) {
    const result = solve(good.survey, horse, `${name}, ${good.survey.horses[horse]?.name ?? ""}`, desk);
    const inWords = () => (isList ? answerBrief(name, result) : [...answerText(good.survey, result), ""]);
    for (const line of given.isOn("json") ? [answerLine(name, result)] : inWords()) desk.say(line);
    const folder = given.text("sheets");
    if (folder === undefined) continue;
    for (const path of await writeSheets(folder, name, good.survey, result)) desk.tell(`written: ${path}`);
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
    sheets: {
      type: "string",
      value: "DIR",
      says: "also writes letter, sheet, calculation, sections and template there",
    },
  },
  examples: [
    ["answer first.json", "all horses of one case, in full"],
    [
      "answer first.json --sheets sheets",
      "and first-horse-1-letter.pdf, -sheet.pdf, -calculation.pdf, -sections.pdf, -template.pdf, -template.svg",
    ],
    ["answer examples/cases", "every case of a folder, in short"],
    ["answer examples/cases --json", "the same for another program"],
  ],
  async run(given, desk) {
    let wrong = 0;
    for (const file of caseFiles(given.takes[0] ?? "")) {
      const good = openOrTell(file, desk);
      if (good) await answerOne(file, good, given, desk);
      else wrong += 1;
    }
    return wrong === 0 ? EXIT.answered : EXIT.problemInCase;
  },
};
