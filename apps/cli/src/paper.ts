import { join } from "node:path";
import type { Answer } from "@treewright/core/answer.ts";
import type { Document } from "@treewright/core/engine/drawing.ts";
import {
  cutTemplate,
  documentOf,
  PAPER_KINDS,
  type PaperKind,
  type TemplateAsked,
} from "@treewright/core/papers.ts";
import type { Survey } from "@treewright/core/survey/case.ts";
import type { Paper } from "@treewright/paper/paper.ts";
import { paperInNode } from "@treewright/paper/paper-node.ts";
import { EXIT, Stop } from "./exit.ts";
import { writeWhole } from "./files.ts";

let opened: Promise<Paper> | undefined;
/** Fonts are read once, and only when paper is asked for. */
function paper(): Promise<Paper> {
  opened ??= paperInNode();
  return opened;
}

/** Refusals of the layout that come from the case's own words; anything else is a fault of the program. */
const refusals = ["MissingGlyph", "LetterTooLong", "LetterRefused", "BlockTooHigh"];

async function orRefused<T>(kind: PaperKind, act: () => T | Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    if (!(error instanceof Error) || !refusals.includes(error.name)) throw error;
    throw new Stop(EXIT.problemInCase, `No ${kind} was made: ${error.message}.`);
  }
}

async function laidOut(
  kind: PaperKind,
  survey: Survey,
  result: Answer,
  asked: TemplateAsked = {},
): Promise<Document | undefined> {
  const { measure } = await paper();
  return orRefused(kind, () => documentOf(kind, survey, result, measure, asked));
}

/** Writes a document as PDF or, by the ending of its name, as SVG: one file a page, numbered from the second on. */
async function writeDocument(path: string, kind: PaperKind, document: Document): Promise<string[]> {
  const { paint, paintSvg } = await paper();
  if (!path.endsWith(".svg")) {
    writeWhole(path, await orRefused(kind, () => paint(document)));
    return [path];
  }
  const pages = await orRefused(kind, () => paintSvg(document));
  return pages.map((text, at) => {
    const name = at === 0 ? path : path.replace(/\.svg$/, `-${at + 1}.svg`);
    writeWhole(name, text);
    return name;
  });
}

/** The wanted head at 1:1, on paper or for a machine that cuts; undefined where there is none to draw. */
export async function writeTemplate(
  path: string,
  survey: Survey,
  result: Answer,
  asked: TemplateAsked,
): Promise<string[] | undefined> {
  if (path.endsWith(".pdf")) {
    const document = await laidOut("template", survey, result, asked);
    return document && writeDocument(path, "template", document);
  }
  const text = cutTemplate(path.endsWith(".dxf") ? "dxf" : "svg", survey, result, asked);
  if (text === undefined) return undefined;
  writeWhole(path, text);
  return [path];
}

/** Letter, sheet and template of one answer, the template as SVG too; the names of what was written. */
export async function writeSheets(
  folder: string,
  name: string,
  survey: Survey,
  result: Answer,
): Promise<string[]> {
  const written: string[] = [];
  for (const kind of PAPER_KINDS) {
    const document = await laidOut(kind, survey, result);
    const endings = kind === "template" ? ["pdf", "svg"] : ["pdf"];
    for (const ending of document ? endings : []) {
      const path = join(folder, `${name}-horse-${result.horseIndex + 1}-${kind}.${ending}`);
      if (document) written.push(...(await writeDocument(path, kind, document)));
    }
  }
  return written;
}
