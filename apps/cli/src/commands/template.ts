import { CUT_KINDS, type TemplateAsked } from "@treewright/core/papers.ts";
import { wrap } from "../columns.ts";
import type { Command, Given } from "../command.ts";
import { EXIT, Stop } from "../exit.ts";
import { caseName } from "../files.ts";
import { oneHorse } from "../horses.ts";
import { openCase } from "../open-case.ts";
import { writeTemplate } from "../paper.ts";
import { solve } from "../solve.ts";

const FACES = ["inside", "outside"] as const;
const KINDS = ["pdf", ...CUT_KINDS] as const;

function oneOf<Word extends string>(
  given: Given,
  option: string,
  allowed: readonly Word[],
): Word | undefined {
  const text = given.text(option);
  const found = allowed.find((word) => word === text);
  if (text === undefined || found !== undefined) return found;
  throw new Stop(EXIT.wrongUse, `--${option}: read "${text}"; allowed is ${allowed.join(", ")}.`);
}

/** The file's name; its ending says what is written. */
function outOf(given: Given, path: string): string {
  const as = oneOf(given, "as", KINDS);
  const out = given.text("out") ?? `${caseName(path)}-template.${as ?? "pdf"}`;
  const ending = KINDS.find((kind) => out.endsWith(`.${kind}`));
  if (ending !== undefined && (as === undefined || as === ending)) return out;
  const allowed = as === undefined ? "a name ending in .pdf, .svg or .dxf" : `a name ending in .${as}`;
  throw new Stop(EXIT.wrongUse, `--out: read "${out}"; allowed is ${allowed}.`);
}

export const template: Command = {
  name: "template",
  takes: "CASE",
  says: "the wanted head at 1:1, on paper or for a cutter",
  about: [
    "The inside of the head for a bare tree, the outside for one in its saddle, made for the horse's larger side. " +
      "Print it at 100 % and measure the bars on it before it is used: both must read 100 mm.",
    "For a cutter, SVG and DXF hold bare outlines in millimetres on the layers cut, mark and text. The inside face is " +
      "a piece that goes into the head, the outside face one that goes over it. Measure the bars of 100 mm there too.",
    "No template is made for a horse that wants the vet first, nor without the head's readings and a front trace.",
  ],
  options: {
    horse: { type: "string", value: "N", says: "the N-th horse of the case, counted from 1" },
    face: {
      type: "string",
      value: "FACE",
      says: "inside or outside; else the one the saddle's state asks for",
    },
    half: { type: "boolean", says: "by halves, each on one sheet; near and off are marked on each" },
    as: { type: "string", value: "KIND", says: "pdf on paper; svg or dxf for a cutter" },
    out: {
      type: "string",
      value: "FILE",
      says: "a name ending in .pdf, .svg or .dxf; else CASE-template.pdf, here",
    },
  },
  examples: [
    ["template first.json", "writes first-template.pdf"],
    ["template first.json --half --face inside", "two half-templates of the inside, one on a sheet"],
    ["template first.json --as dxf", "writes first-template.dxf for a cutter"],
  ],
  async run(given, desk) {
    const path = given.takes[0] ?? "";
    const out = outOf(given, path);
    const asked: TemplateAsked = { face: oneOf(given, "face", FACES), byHalves: given.isOn("half") };
    const { survey } = openCase(path, desk);
    const horse = oneHorse(survey, given);
    const written = await writeTemplate(out, survey, solve(survey, horse, caseName(path), desk), asked);
    if (!written) {
      const why = "the horse wants the vet first, or the head or the front trace was not read";
      throw new Stop(EXIT.problemInCase, `No template was made: ${why}. See: treewright answer ${path}`);
    }
    for (const name of written) for (const line of wrap(`written: ${name}`)) desk.say(line);
    return EXIT.answered;
  },
};
