import { abreast, type Block, dealt, moved, stacked } from "../engine/drawing/block.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Document, Measure, Page } from "../engine/drawing.ts";
import { dayInWords } from "./day.ts";
import type { LetterData } from "./letter-data.ts";
import { FOOT_TOP, letterFoot, letterHead } from "./letter-frame.ts";
import { LETTER, LETTER_BOLD } from "./looks.ts";
import { refuseOwnerWords } from "./owner-words.ts";
import { A4, FRAME } from "./sheet-frame.ts";
import { stopSign } from "./stop-sign.ts";
import { ENGLISH, type Tongue, told } from "./tongue.ts";

/** An owner reads two pages and not three (common practice, no source). */
export const LETTER_PAGES = 2;
const LEFT = FRAME.left + 3;
const TEXT_LEFT = 45;
/** About 60 characters of the letter's type. */
const TEXT_WIDE = 116;

/** Base line to base line, between sentences, and before a new heading, mm. */
interface Spacing {
  readonly leading: number;
  readonly gap: number;
  readonly headingGap: number;
}
const ROOMY: Spacing = { leading: LETTER.leading, gap: 1, headingGap: 3.4 };
/** Taken where it saves a page, so that no greeting stands on a page of its own. */
const CLOSE: Spacing = { leading: 4.9, gap: 0.6, headingGap: 2.3 };

/** The letter would run over its two pages. Nothing is left out in silence: its sentences must be fewer or shorter. */
export class LetterTooLong extends Error {
  constructor(takes: string) {
    super(
      `the letter takes ${takes} and may take ${LETTER_PAGES} pages: fewer or shorter sentences are needed`,
    );
    this.name = "LetterTooLong";
  }
}

/** The owner's letter, at most two pages. Throws LetterTooLong, and LetterRefused for words an owner is never told. */
export function letterOf(data: LetterData, measure: Measure, tongue: Tongue = ENGLISH): Document {
  const head = letterHead(data, measure, tongue);
  const room = FOOT_TOP - head.height - FRAME.top - 4;
  const [roomy, close] = [
    pagesOf(data, ROOMY, room, measure, tongue),
    pagesOf(data, CLOSE, room, measure, tongue),
  ];
  const [pages, { gap }] = close.length < roomy.length ? [close, CLOSE] : [roomy, ROOMY];
  if (pages.length > LETTER_PAGES) throw new LetterTooLong(`${pages.length} pages`);
  const set = pages.map((blocks, i): Page => {
    const body = moved(stacked(blocks, gap).items, [LEFT, FRAME.top + head.height]);
    return {
      ...A4,
      items: [
        ...moved(head.items, [0, FRAME.top]),
        ...body,
        ...letterFoot(data, i + 1, pages.length, measure, tongue),
      ],
    };
  });
  const title = `${tongue.say("Letter to the owner")}: ${data.facts.caseTitle}`;
  return { title, language: tongue.tag, pages: set };
}

function pagesOf(data: LetterData, spacing: Spacing, room: number, measure: Measure, tongue: Tongue) {
  const rows = sections(data, tongue).flatMap((one) => section(one, data, spacing, measure));
  const regards = section(
    { heading: "", says: [told(tongue, "With kind regards, HAND", { HAND: data.facts.hand })] },
    data,
    spacing,
    measure,
  );
  const parts = [
    stopSign(data.facts.stop, FRAME.right - LEFT, measure, "letter"),
    lowered(opening(data, spacing, measure, tongue), spacing),
    ...rows.slice(0, -1),
    // The greeting goes with the last sentence.
    stacked([...rows.slice(-1), ...regards], spacing.gap),
  ];
  if (parts.some((part) => part.height > room)) throw new LetterTooLong("more than a page for one sentence");
  return dealt(parts, room, spacing.gap);
}

function opening(data: LetterData, { leading }: Spacing, measure: Measure, tongue: Tongue): Block {
  const { owner, facts } = data;
  const [plain, bold] = [
    { ...LETTER, leading },
    { ...LETTER_BOLD, leading },
  ];
  const subject = paragraph(
    "subject",
    told(tongue, "HORSE and the saddle “SADDLE”", { HORSE: facts.horse, SADDLE: facts.saddle }),
    bold,
    TEXT_WIDE,
    measure,
  );
  const date = paragraph("date", tongue.say(dayInWords(facts.date)), plain, TEXT_LEFT, measure);
  const greeting = paragraph(
    "greeting",
    owner === "" ? tongue.say("To the owner of this saddle,") : told(tongue, "Dear OWNER,", { OWNER: owner }),
    plain,
    TEXT_WIDE,
    measure,
  );
  const right = stacked([subject, greeting], 2);
  return abreast([
    { x: 0, block: date },
    { x: TEXT_LEFT, block: right },
  ]);
}

interface Section {
  readonly heading: string;
  readonly says: readonly string[];
}

function sections(data: LetterData, { say }: Tongue): readonly Section[] {
  const found = (one: LetterData["horse"]) => [one.says, ...one.because];
  const all = [
    { heading: "The question", says: [data.asked] },
    { heading: "May you ride?", says: [data.mayIRide] },
    { heading: "Your horse", says: found(data.horse) },
    { heading: "The saddle", says: found(data.saddle) },
    { heading: "The work", says: found(data.work) },
    { heading: "What will be done", says: data.willBeDone },
    { heading: "What will not", says: data.willNotBeDone },
    { heading: "What follows", says: data.follows },
    { heading: "Who may do it", says: [data.whoMayDoIt] },
    { heading: "When we meet next", says: [data.nextVisit] },
    { heading: "Please heed", says: data.facts.cautions },
    { heading: "What we cannot see", says: data.limits },
  ];
  return all.map(({ heading, says }) => ({ heading: say(heading), says }));
}

/** A row for each sentence, the heading hung to the left of the first; an empty section has no row. */
function section(
  { heading, says }: Section,
  data: LetterData,
  spacing: Spacing,
  measure: Measure,
): readonly Block[] {
  const { leading } = spacing;
  const full = says.filter((said) => said.trim() !== "");
  return full.map((said, i) => {
    refuseOwnerWords(heading, said, [data.facts.horse, data.facts.saddle]);
    const text = paragraph(heading || "regards", said, { ...LETTER, leading }, TEXT_WIDE, measure);
    if (i > 0) return abreast([{ x: TEXT_LEFT, block: text }]);
    const look = { ...LETTER_BOLD, leading };
    const name = paragraph(`${heading}, heading`, heading, look, TEXT_LEFT - 5, measure);
    return lowered(
      abreast([
        { x: 0, block: name },
        { x: TEXT_LEFT, block: text },
      ]),
      spacing,
    );
  });
}

/** A block with the gap above it that sets a new heading off. */
function lowered(block: Block, { headingGap }: Spacing): Block {
  return { items: moved(block.items, [0, headingGap]), height: block.height + headingGap };
}
