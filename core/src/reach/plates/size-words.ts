import { grouped } from "../../engine/grouped.ts";
import { drawDeviations } from "../../shape/draw.ts";
import type { Piece } from "./pieces.ts";
import { type Pooled, pooled } from "./pooled.ts";

/** What one maker's word for a size stands for, at one level. Maker and word are told apart by their letters alone. */
export interface SizeWord {
  readonly maker: string;
  readonly word: string;
  readonly pieces: number;
  readonly spreadMm: Pooled;
  readonly halfAngleRad: Pooled;
}

/** Draws of the readings of a stock. */
const DRAWS = 400;
const SEED = 1;

/** All words of a stock, pooled over the pieces measured under each; by maker, then from the narrowest. */
export function sizeWords(pieces: readonly Piece[]): readonly SizeWord[] {
  const uncertain = [...new Map(pieces.flatMap((one) => one.uncertain).map((one) => [one.id, one])).values()];
  const draws = Array.from({ length: DRAWS }, (_, i) => drawDeviations(uncertain, SEED, i));
  const measured = pieces.map((piece) => ({
    piece,
    base: piece.at({}),
    drawn: draws.map((one) => piece.at(one)),
  }));
  return groupedBy(measured, ({ piece }) => piece.plate.maker).flatMap((ofMaker) => {
    const words = groupedBy(ofMaker, ({ piece }) => piece.plate.word);
    const of = (what: "spreadMm" | "halfAngleRad") =>
      pooled(
        words.map((pieces) =>
          pieces.map(({ base, drawn }) => ({ base: base[what], drawn: drawn.map((one) => one[what]) })),
        ),
        what,
      );
    const [spreads, angles] = [of("spreadMm"), of("halfAngleRad")];
    return words
      .flatMap((ofWord, i) => {
        const [first, spreadMm, halfAngleRad] = [ofWord[0], spreads[i], angles[i]];
        if (!first || !spreadMm || !halfAngleRad) return [];
        const { maker, word } = first.piece.plate;
        return [{ maker, word, pieces: ofWord.length, spreadMm, halfAngleRad }];
      })
      .sort((a, b) => a.spreadMm.mean - b.spreadMm.mean);
  });
}

/** Groups in the order of their names. */
function groupedBy<One>(all: readonly One[], nameOf: (one: One) => string): readonly (readonly One[])[] {
  return [...grouped(all, nameOf)].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, group]) => group);
}
