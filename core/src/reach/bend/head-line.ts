import type { Half, Section } from "../../engine/bending/index.ts";
import { cos, PI, sin } from "../../engine/number/index.ts";

/** The middle line of one half of a head: an arc about the crown, then a straight arm to the tip. mm, rad. */
export interface HeadLine {
  /** Height of the line over the tips at the crown. */
  readonly heightMm: number;
  readonly radiusMm: number;
  /** Of the arm to the vertical. */
  readonly halfAngleRad: number;
}

/** Pieces of the stiffer middle and of the rest; more change no figure by more than one part in a hundred (evidence/bending). */
const PIECES = { middle: 2, rest: 8 } as const;

/** Height over the line of the tips, `along` from the crown. */
function leverAt({ heightMm, radiusMm, halfAngleRad }: HeadLine, along: number): number {
  const full = PI / 2 - halfAngleRad;
  const turn = Math.min(along / radiusMm, full);
  const straight = Math.max(0, along - radiusMm * full);
  return heightMm - radiusMm * (1 - cos(turn)) - straight * sin(full);
}

/** Length from the crown to where the line comes down to the tips. */
export function lineLengthMm({ heightMm, radiusMm, halfAngleRad }: HeadLine): number {
  const full = PI / 2 - halfAngleRad;
  return radiusMm * full + Math.max(0, heightMm - radiusMm * (1 - cos(full))) / sin(full);
}

/** One half in pieces: short ones where the section changes, for that is where it kinks. */
export function halfOf(line: HeadLine, stiffMm: number, middle: Section, rest: Section): Half {
  const length = lineLengthMm(line);
  const ends = [
    ...Array.from({ length: PIECES.middle }, (_, i) => (stiffMm * (i + 1)) / PIECES.middle),
    ...Array.from({ length: PIECES.rest }, (_, i) => {
      const part = (i + 1) / PIECES.rest;
      return stiffMm + (length - stiffMm) * part * part;
    }),
  ];
  return ends.map((end, i) => {
    const start = ends[i - 1] ?? 0;
    return {
      lengthMm: end - start,
      leverMm: leverAt(line, (start + end) / 2),
      section: i < PIECES.middle ? middle : rest,
    };
  });
}
