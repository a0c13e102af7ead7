/** One quantity of a maker's word. Standard uncertainties; mm or rad. */

import { U_PER_SD } from "../../engine/central.ts";
export interface Pooled {
  readonly mean: number;
  /** How many pieces the mean is of. */
  readonly pieces: number;
  /** From piece to piece. */
  readonly betweenSd: number;
  /** What the between-piece part is multiplied by for a 95 % interval, few pieces being few. */
  readonly betweenFactor: number;
  /** The mean of these pieces in each draw of their readings. */
  readonly drawn: readonly number[];
}

/** How pieces of one word differ where few were measured, counted as so many differences (assumption 1 to 4 mm, 0.5 to 2 degrees). */
const BETWEEN = { spreadMm: 2, halfAngleRad: 0.0175, degrees: 4 } as const;
/** One piece's quantity at the best estimate, and in each draw of the readings. */
export interface Measured {
  readonly base: number;
  readonly drawn: readonly number[];
}

/**
 * Words of one maker: how pieces of a word differ is pooled over all words, what the readings themselves scatter taken
 * off, and what is assumed counted as a few differences more. Pooled variance as in ISO 5725-2 (from memory).
 */
export function pooled(
  words: readonly (readonly Measured[])[],
  what: "spreadMm" | "halfAngleRad",
): readonly Pooled[] {
  const more = words.reduce((sum, pieces) => sum + pieces.length - 1, 0);
  const excess = words.reduce(
    (sum, pieces) => sum + scatter(pieces.map(({ base }) => base)) - ownScatter(pieces),
    0,
  );
  const degrees = BETWEEN.degrees + more;
  const between = (BETWEEN.degrees * square(BETWEEN[what]) + Math.max(0, excess)) / degrees;
  return words.map((pieces) => {
    const drawn = eachDraw(pieces, meanOf);
    return {
      mean: meanOf(pieces.map(({ base }) => base)),
      pieces: pieces.length,
      betweenSd: Math.sqrt(between),
      betweenFactor: fewFactor(degrees),
      drawn,
    };
  });
}

/**
 * Half of a central 95 % interval in standard deviations that were themselves found from so few differences (degrees of
 * freedom, over 2): Student's t has the variance n / (n - 2). Within 2.5 % of its table from 4 on.
 */
export const fewFactor = (degrees: number): number => U_PER_SD * Math.sqrt(degrees / (degrees - 2));

const eachDraw = (
  pieces: readonly Measured[],
  of: (values: readonly number[]) => number,
): readonly number[] =>
  (pieces[0]?.drawn ?? []).map((_, i) => of(pieces.map(({ base, drawn }) => drawn[i] ?? base)));
const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;
const scatter = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + (one - meanOf(values)) * (one - meanOf(values)), 0);
const variance = (values: readonly number[]): number => scatter(values) / Math.max(1, values.length - 1);

/** What the readings alone make the pieces of one word scatter, on the mean of the draws. */
function ownScatter(pieces: readonly Measured[]): number {
  const alone = pieces.map(({ base, drawn }) => ({ base: 0, drawn: drawn.map((one) => one - base) }));
  return meanOf(eachDraw(alone, scatter));
}

/** Square of half the central 95 % that pieces differ by, for a further piece of this word against the mean of these. */
const furtherPiece = ({ betweenSd, betweenFactor, pieces }: Pooled): number =>
  square(betweenFactor * betweenSd) * (1 + 1 / pieces);

/** Half of the central 95 % for a further piece of this word. */
export const pieceU = (word: Pooled): number =>
  Math.sqrt(square(U_PER_SD) * variance(word.drawn) + furtherPiece(word));

/** A piece of one word against a piece of another: the difference, and half of its central 95 %; what the readings share cancels. */
export function piecesApart(a: Pooled, b: Pooled): { readonly value: number; readonly u: number } {
  const readings = variance(a.drawn.map((one, i) => one - (b.drawn[i] ?? 0)));
  return {
    value: a.mean - b.mean,
    u: Math.sqrt(square(U_PER_SD) * readings + furtherPiece(a) + furtherPiece(b)),
  };
}

const square = (value: number): number => value * value;
