import { type Block, moved } from "../engine/drawing/block.ts";
import { line, words } from "../engine/drawing/marks.ts";
import type { Look } from "../engine/drawing/paragraph.ts";
import type { Item, Measure } from "../engine/drawing.ts";
import { backLine } from "./back-line.ts";
import { fitted } from "./fitted.ts";
import type { LetterData } from "./letter-data.ts";
import { LETTER } from "./looks.ts";
import { FRAME } from "./sheet-frame.ts";
import { type Tongue, told } from "./tongue.ts";

export const FOOT_TOP = FRAME.bottom - 10;
const SMALL_LETTER: Look = { ...LETTER, size: 3, leading: 4 };
const NAME: Look = { ...LETTER, bold: true, size: 6.4, leading: 8 };

/** The practice's name and how to reach it, and the horse's back under them. Laid out from the frame's top, page's own x. */
export function letterHead({ practice, facts }: LetterData, measure: Measure, tongue: Tongue): Block {
  const left = FRAME.left + 3;
  const reached = [practice.address, practice.telephone, practice.mail]
    .filter((said) => said !== "")
    .join("  ·  ");
  const name = fitted("practice", practice.name, NAME, facts.invented ? 115 : 170, 9, measure);
  const how = fitted("practice, reached at", reached, SMALL_LETTER, 174, 5, measure);
  const invented = words(
    "invented",
    { face: "letter", bold: true, size: 9 },
    [FRAME.right - 3, 8],
    tongue.say("invented"),
    { anchor: "end" },
  );
  return {
    items: [
      ...moved(name.items, [left, 1]),
      ...moved(how.items, [left, 10]),
      ...(facts.invented ? [invented] : []),
      ...backLine(facts.back, [FRAME.left, 18], FRAME.right - FRAME.left, tongue),
    ],
    height: 42,
  };
}

/** Which horse, day, hand and readings the page belongs to, and its number. */
export function letterFoot(
  { facts }: LetterData,
  page: number,
  of: number,
  measure: Measure,
  tongue: Tongue,
): readonly Item[] {
  const said = [facts.caseTitle, facts.date, facts.hand].filter((one) => one !== "").join("  ·  ");
  const made = told(tongue, "worked out by engine VERSION from readings HASH", {
    VERSION: facts.engineVersion,
    HASH: facts.inputHash.slice(0, 12),
  });
  const number = told(tongue, "page PAGE of OF", { PAGE: String(page), OF: String(of) });
  return [
    line("foot, rule", "thin", [
      [FRAME.left, FOOT_TOP],
      [FRAME.right, FOOT_TOP],
    ]),
    ...moved(fitted("foot", said, SMALL_LETTER, 140, 4.5, measure).items, [FRAME.left + 3, FOOT_TOP + 1]),
    words("foot, made", { ...SMALL_LETTER, size: 2.4 }, [FRAME.left + 3, FOOT_TOP + 8.4], made),
    words("foot, page", SMALL_LETTER, [FRAME.right - 3, FOOT_TOP + 3.9], number, {
      anchor: "end",
    }),
  ];
}
