import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import { EXIT, Stop } from "../exit.ts";
import { caseName } from "../files.ts";
import { horseNamed } from "../horses.ts";
import { openCase } from "../open-case.ts";
import { writeTemplate } from "../paper.ts";
import { solve } from "../solve.ts";

export const template: Command = {
  name: "template",
  takes: "CASE",
  says: "the wanted head at 1:1, on paper",
  about: [
    "The inside of the head for a bare tree, the outside for one in its saddle, made for the horse's larger side. " +
      "Print it at 100 % and measure the bars on it before it is used: both must read 100 mm.",
    "No template is made for a horse that wants the vet first, nor without the head's readings and a front trace.",
  ],
  options: {
    horse: { type: "string", value: "N", says: "the N-th horse of the case, counted from 1" },
    out: {
      type: "string",
      value: "FILE",
      says: "a name ending in .pdf or .svg; else CASE-template.pdf, here",
    },
  },
  examples: [
    ["template first.json", "writes first-template.pdf"],
    ["template first.json --out head.svg", "as SVG, one file a page"],
  ],
  async run(given, desk) {
    const path = given.takes[0] ?? "";
    const out = given.text("out") ?? `${caseName(path)}-template.pdf`;
    if (!/\.(pdf|svg)$/.test(out))
      throw new Stop(EXIT.wrongUse, `--out: read "${out}"; allowed is a name ending in .pdf or .svg.`);
    const { survey } = openCase(path, desk);
    const horse = horseNamed(survey, given) ?? (survey.horses.length === 1 ? 0 : undefined);
    if (horse === undefined)
      throw new Stop(
        EXIT.wrongUse,
        `This case has ${survey.horses.length} horses: say which with --horse N.`,
      );
    const written = await writeTemplate(out, survey, solve(survey, horse, caseName(path), desk));
    if (!written) {
      const why = "the horse wants the vet first, or the head or the front trace was not read";
      throw new Stop(EXIT.problemInCase, `No template was made: ${why}. See: treewright answer ${path}`);
    }
    for (const name of written) for (const line of wrap(`written: ${name}`)) desk.say(line);
    return EXIT.answered;
  },
};
