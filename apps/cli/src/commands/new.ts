import { emptyCase } from "@treewright/core/survey/answer-question.ts";
import type { CaseFile } from "@treewright/core/survey/case.ts";
import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import type { Desk } from "../desk.ts";
import { EXIT, Stop } from "../exit.ts";
import { caseName, isThere, writeWhole } from "../files.ts";
import { HORSES_MOST } from "../horses.ts";
import { openCase } from "../open-case.ts";
import { walkVisit } from "../visit-walk.ts";

async function howMany(desk: Desk): Promise<number> {
  for (;;) {
    const typed = await desk.ask(`How many horses wear this saddle? [1 to ${HORSES_MOST}] `);
    if (typed === undefined)
      throw new Stop(EXIT.leftEarly, "Left before the first answer; no file was written.");
    const count = typed.trim() === "" ? 1 : Number(typed);
    if (Number.isInteger(count) && count >= 1 && count <= HORSES_MOST) return count;
    for (const line of wrap(
      `read: "${typed.slice(0, 40)}"; allowed: a whole number from 1 to ${HORSES_MOST}`,
      2,
    ))
      desk.say(line);
  }
}

async function begin(path: string, desk: Desk): Promise<CaseFile> {
  const day = new Date();
  const date = [day.getFullYear(), day.getMonth() + 1, day.getDate()]
    .map((part) => String(part).padStart(2, "0"))
    .join("-");
  const empty = emptyCase(caseName(path), date);
  const count = await howMany(desk);
  return { ...empty, horses: Array.from({ length: count }, (_, at) => ({ name: `horse ${at + 1}` })) };
}

export const newCase: Command = {
  name: "new",
  takes: "CASE",
  says: "ask the questions of a visit and write a case",
  about: [
    "The questions come in the order of the work. Enter leaves what stands; what nobody knows is typed as " +
      "unknown, what was not done as not-looked or not-asked: none of these is a no.",
    "Words that steer: back (the question before), next (the next section), leave. Every answer is written at once. " +
      "The same command goes on where it was left: after the last question that has an answer.",
  ],
  options: {},
  examples: [["new first.json", "begins first.json, or goes on with it"]],
  async run({ takes: [path = ""] }, desk) {
    const isOld = isThere(path);
    const draft = isOld ? { ...openCase(path, desk).file } : await begin(path, desk);
    if (!isOld) writeWhole(path, `${JSON.stringify(draft, null, 2)}\n`);
    const end = await walkVisit(draft, desk, (after) =>
      writeWhole(path, `${JSON.stringify(after, null, 2)}\n`),
    );
    desk.say();
    if (end === "left") {
      for (const line of wrap(`Written as far as it goes. Go on with: treewright new ${path}`))
        desk.say(line);
      return EXIT.leftEarly;
    }
    for (const line of wrap(`That was the last question. Three answers: treewright answer ${path}`))
      desk.say(line);
    return EXIT.answered;
  },
};
