import { type OwnerAsk, ownerQuestionOf, ownerQuestions } from "@treewright/core/judge/owner/asks.ts";
import type { OwnerQuestion } from "@treewright/core/judge/owner/question.ts";
import { answerOwner } from "@treewright/core/judge/owner.ts";
import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import type { Desk } from "../desk.ts";
import { EXIT, Stop } from "../exit.ts";
import { offered, wordTyped } from "../owner-questions.ts";
import { ownerText } from "../owner-text.ts";

async function wordFor(question: OwnerAsk, place: string, desk: Desk): Promise<string> {
  for (const line of wrap(`${place}  ${question.asks} [${offered(question).join(" / ")}]`, 0, 2))
    desk.say(line);
  for (;;) {
    const typed = await desk.ask("  > ");
    if (typed === undefined || typed.trim() === "leave") {
      throw new Stop(
        EXIT.leftEarly,
        "Left before the last question: nothing is answered, and nothing was kept.",
      );
    }
    const word = wordTyped(typed, question);
    if (word !== undefined) return word;
    for (const line of wrap(
      `read: "${typed.slice(0, 40)}"; allowed: ${offered(question).join(", ")}, or Enter`,
      2,
      2,
    ))
      desk.say(line);
  }
}

async function askAll(desk: Desk): Promise<OwnerQuestion> {
  const asked = ownerQuestions();
  const said = new Map<string, string>();
  for (const [at, question] of asked.entries())
    said.set(
      `${question.group} ${question.name}`,
      await wordFor(question, `${at + 1} of ${asked.length}`, desk),
    );
  return ownerQuestionOf(({ group, name, otherwise }) => said.get(`${group} ${name}`) ?? otherwise);
}

export const ask: Command = {
  name: "ask",
  takes: "",
  says: "the owner's question: what may be done, and by whom",
  about: [
    "For an owner who wonders whether the head of a saddle can be altered. Nothing is measured; Enter says " +
      '"I don\'t know" to any question, and leave ends it. Told are stop signs, what may be done at home, and whom to ' +
      "see in which order: never a promise, and never a figure for press or heat.",
  ],
  options: {},
  examples: [["ask", "asks, and answers at the end"]],
  async run(_given, desk) {
    const question = await askAll(desk);
    desk.say();
    for (const line of ownerText(answerOwner(question))) desk.say(line);
    return EXIT.answered;
  },
};
