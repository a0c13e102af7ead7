import { type Block, moved, stacked } from "../engine/drawing/block.ts";
import { box, line } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { At, Document, Measure } from "../engine/drawing.ts";
import { SIGNATURE_HIGH } from "../survey/recorded/signature.ts";
import { FINE, LETTER, LETTER_BOLD, TITLE } from "./looks.ts";
import { A4, FRAME } from "./sheet-frame.ts";
import { ENGLISH, type Tongue, told } from "./tongue.ts";

/** A signature as it is drawn on paper: points as parts of the field's width, from left and top. */
export interface Signed {
  readonly by: string;
  readonly forOwner: boolean;
  readonly strokes: readonly (readonly At[])[];
}

const LEFT = FRAME.left + 6;
const WIDE = FRAME.right - FRAME.left - 12;
/** Width and height of the field that was signed in, mm. */
const FIELD = { wide: 90, high: 90 * SIGNATURE_HIGH } as const;

/** The agreement would run over its page. Nothing is left out in silence. */
export class AgreementTooLong extends Error {
  constructor() {
    super("the agreement takes more than one page: fewer words are needed");
    this.name = "AgreementTooLong";
  }
}

/**
 * What was agreed, on one sheet, with the signature over it and the text's fingerprint. signed: undefined leaves a line to sign on.
 * tongue: the language that the text is in.
 */
export function agreementOf(
  text: string,
  fingerprint: string,
  signed: Signed | undefined,
  measure: Measure,
  tongue: Tongue = ENGLISH,
): Document {
  const [heading = "", ...lines] = text.split("\n");
  const parts = [
    paragraph("agreement, heading", heading, TITLE, WIDE, measure),
    ...lines.map((said) => paragraph("agreement", said, LETTER, WIDE, measure)),
    signature(signed, measure, tongue),
    paragraph(
      "agreement, fingerprint",
      told(tongue, "SHA-256 of this text: PRINT", { PRINT: fingerprint }),
      FINE,
      WIDE,
      measure,
    ),
  ];
  const body = stacked(parts, 2.4);
  if (body.height > FRAME.bottom - FRAME.top - 12) throw new AgreementTooLong();
  const items = [
    box("frame", "medium", [FRAME.left, FRAME.top], FRAME.right - FRAME.left, FRAME.bottom - FRAME.top),
    ...moved(body.items, [LEFT, FRAME.top + 6]),
  ];
  return { title: heading, language: tongue.tag, pages: [{ ...A4, items }] };
}

function signature(signed: Signed | undefined, measure: Measure, tongue: Tongue): Block {
  const strokes = (signed?.strokes ?? []).map((stroke) =>
    line(
      "signature",
      "medium",
      stroke.map(([x, y]): At => [x * FIELD.wide, y * FIELD.wide]),
    ),
  );
  const under = line("signature, line", "thin", [
    [0, FIELD.high],
    [FIELD.wide, FIELD.high],
  ]);
  const said = paragraph("signature, by", whoSigned(signed, tongue), LETTER_BOLD, WIDE, measure);
  return {
    items: [...strokes, under, ...moved(said.items, [0, FIELD.high + 1])],
    height: FIELD.high + 1 + said.height,
  };
}

function whoSigned(signed: Signed | undefined, tongue: Tongue): string {
  if (signed === undefined) return tongue.say("Not signed on this device: name, day, signature");
  const english = signed.forOwner ? "Signed: NAME, for the owner" : "Signed: NAME, owner";
  return told(tongue, english, { NAME: signed.by });
}
