import { paintPdf } from "@treewright/paper/paint.ts";
import { measureWith } from "@treewright/paper/typesetter.ts";
import { expose, transfer } from "comlink";
import { tongueOf } from "../catalogue/tongue-of.ts";
import type { Signature } from "../records.ts";
import {
  type Answer,
  agreementOf,
  type CutKind,
  cutTemplate,
  documentOf,
  type PaperKind,
  readCase,
  type Survey,
  type TemplateAsked,
} from "../road.ts";
import { fontsFromPage } from "./fonts.ts";

const fonts = fontsFromPage();

function surveyOf(text: string): Survey {
  const read = readCase(text);
  if (!read.ok) throw new Error("this case was not accepted");
  return read.survey;
}

const press = {
  /** One sheet, letter or template as the bytes of a PDF; undefined where the case gives no such paper. The letter is in that language. */
  async print(
    kind: PaperKind,
    text: string,
    answer: Answer,
    asked: TemplateAsked,
    language: string,
  ): Promise<Uint8Array<ArrayBuffer> | undefined> {
    const survey = surveyOf(text);
    const files = await fonts;
    const document = documentOf(kind, survey, answer, measureWith(files), asked, await tongueOf(language));
    if (document === undefined) return undefined;
    const bytes = new Uint8Array(await paintPdf(document, files));
    return transfer(bytes, [bytes.buffer]);
  },

  /** The template for a machine that cuts; undefined where the case gives none. */
  cut(kind: CutKind, text: string, answer: Answer, asked: TemplateAsked): string | undefined {
    return cutTemplate(kind, surveyOf(text), answer, asked);
  },

  /** What was agreed, with the signature over it where there is one. language: of the text. */
  async agreement(
    text: string,
    fingerprint: string,
    signed: Signature | undefined,
    language: string,
  ): Promise<Uint8Array<ArrayBuffer>> {
    const files = await fonts;
    const signature = signed && {
      by: signed.by,
      forOwner: signed.as === "for-owner",
      strokes: signed.strokes,
    };
    const document = agreementOf(text, fingerprint, signature, measureWith(files), await tongueOf(language));
    const bytes = new Uint8Array(await paintPdf(document, files));
    return transfer(bytes, [bytes.buffer]);
  },
};

export type Press = typeof press;

expose(press);
