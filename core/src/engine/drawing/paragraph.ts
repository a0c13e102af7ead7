import type { At, Face, Item, Measure } from "../drawing.ts";
import type { Block } from "./block.ts";
import { type Type, words } from "./marks.ts";

interface Token {
  readonly words: string;
  readonly face: Face;
  /** Stops and brackets after a number, which stay in the text's own face. */
  readonly tail: string;
}

/** A paragraph's looks: `figures` sets numbers and their units in the face for figures; `leading` is base line to base line, mm. */
export interface Look extends Type {
  readonly leading: number;
  readonly figures: boolean;
}

/** Where the base line lies in a line's height, so that two sizes of one leading stand on one line. */
const BASE_LINE = 0.72;
/** Figures stand a little lower in size, so that both faces look alike in height. */
const FIGURE_SIZE = 0.9;
const NUMBER = /^([±+−-]?\d(?:[\d.,:/–-]*\d)?(?:°|%)?)([).,;:]*)$/;
const UNIT = /^(mm|cm|m|in|kg|N|kN|kPa|%|°|min|weeks|±)([).,;:]*)$/;

/**
 * Words broken into lines within `width`, mm. A number keeps its unit on its line; a word too long for a line is
 * broken where it must be.
 */
export function paragraph(name: string, said: string, look: Look, width: number, measure: Measure): Block {
  const lines = broken(tokens(said, look), look, width, measure);
  const items = lines.flatMap((line, i) =>
    set(name, line, look, [0, (i + BASE_LINE) * look.leading], measure),
  );
  return { items, height: lines.length * look.leading };
}

/** Words that belong together, each with its face: numbers draw the unit after them, and a sign draws its number. */
function tokens(said: string, look: Look): readonly Token[] {
  const out: Token[] = [];
  for (const part of said.split(/\s+/).filter((word) => word !== "")) {
    const last = out.at(-1);
    const number = NUMBER.exec(part);
    const unit = last !== undefined && last.tail === "" && /\d$/.test(last.words) ? UNIT.exec(part) : null;
    const [, core = part, tail = ""] = unit ?? number ?? [];
    const joins = last !== undefined && (unit !== null || (number !== null && last.words.endsWith("±")));
    if (joins) out[out.length - 1] = { ...last, words: `${last.words} ${core}`, tail };
    else if (number && look.figures) out.push({ words: core, face: "figure", tail });
    else out.push({ words: part, face: look.face, tail: "" });
  }
  return out;
}

function sizeOf(face: Face, look: Look): number {
  return face === "figure" && look.face !== "figure" ? look.size * FIGURE_SIZE : look.size;
}

function wide(token: Token, look: Look, measure: Measure): number {
  const tail = token.tail === "" ? 0 : measure(token.tail, look.face, look.bold, look.size);
  return measure(token.words, token.face, look.bold, sizeOf(token.face, look)) + tail;
}

function broken(
  all: readonly Token[],
  look: Look,
  width: number,
  measure: Measure,
): readonly (readonly Token[])[] {
  const space = measure(" ", look.face, look.bold, look.size);
  const lines: Token[][] = [];
  let left = 0;
  for (const token of all.flatMap((one) => chopped(one, look, width, measure))) {
    const needs = wide(token, look, measure);
    const line = lines.at(-1);
    if (line && needs + space <= left) {
      line.push(token);
      left -= needs + space;
    } else {
      lines.push([token]);
      left = width - needs;
    }
  }
  return lines;
}

function chopped(token: Token, look: Look, width: number, measure: Measure): readonly Token[] {
  if (wide(token, look, measure) <= width) return [token];
  const pieces: string[] = [""];
  for (const sign of token.words) {
    const longer = `${pieces.at(-1) ?? ""}${sign}`;
    if (longer.length > 1 && wide({ ...token, words: longer }, look, measure) > width) pieces.push(sign);
    else pieces[pieces.length - 1] = longer;
  }
  return pieces.map((part) => ({ ...token, words: part }));
}

/** One line: neighbours of one face become one text, so that a reader of the paper gets sentences and not words. */
function set(
  name: string,
  line: readonly Token[],
  look: Look,
  [x, y]: At,
  measure: Measure,
): readonly Item[] {
  let at = x;
  return pieces(line, look).map(({ words: said, face }) => {
    const size = sizeOf(face, look);
    const item = words(name, { face, bold: look.bold, size }, [at, y], said);
    at += measure(said, face, look.bold, size);
    return item;
  });
}

function pieces(
  line: readonly Token[],
  look: Look,
): readonly { readonly words: string; readonly face: Face }[] {
  const out: { words: string; face: Face }[] = [];
  const add = (said: string, face: Face) => {
    const last = out.at(-1);
    if (last?.face === face) last.words += said;
    else out.push({ words: said, face });
  };
  line.forEach((token, i) => {
    if (i > 0) add(" ", look.face);
    add(token.words, token.face);
    if (token.tail !== "") add(token.tail, look.face);
  });
  return out;
}
