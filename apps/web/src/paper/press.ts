import { measureWith } from "@treewright/paper/typesetter.ts";
import { paintPdf } from "@treewright/paper/paint.ts";
import { expose, transfer } from "comlink";
import { type Answer, documentOf, type PaperKind, readCase } from "../road.ts";
import { fontsFromPage } from "./fonts.ts";

const fonts = fontsFromPage();

const press = {
  /** One sheet, letter or template as the bytes of a PDF. */
  async print(kind: PaperKind, text: string, answer: Answer, horse: number): Promise<Uint8Array<ArrayBuffer>> {
    const read = readCase(text);
    if (!read.ok) throw new Error("this case was not accepted");
    const files = await fonts;
    const bytes = new Uint8Array(await paintPdf(documentOf(kind, read.survey, answer, horse, measureWith(files)), files));
    return transfer(bytes, [bytes.buffer]);
  },
};

export type Press = typeof press;

expose(press);
