import { isRead } from "../../survey/reading.ts";
import type { StockPlate } from "../../survey/stock.ts";
import { type LeftOut, piecesAt } from "./pieces.ts";
import { piecesApart, pieceU } from "./pooled.ts";
import { type SizeWord, sizeWords } from "./size-words.ts";

interface Figure {
  readonly value: number;
  /** Half of the central 95 %. */
  readonly u: number;
}

/** One maker's word for a size as millimetres and an angle: what a further piece of it would have. */
export interface WordMeans {
  readonly maker: string;
  readonly word: string;
  readonly pieces: number;
  readonly spreadMm: Figure;
  readonly halfAngleRad: Figure;
  /** From piece to piece, standard, mm and rad. */
  readonly between: { readonly spreadMm: number; readonly halfAngleRad: number };
  /** For each other maker the word that lies nearest to this one. */
  readonly nearest: readonly WordAgainst[];
}

/** This word less the other maker's. */
export interface WordAgainst {
  readonly maker: string;
  readonly word: string;
  readonly spreadMm: Figure;
  readonly halfAngleRad: Figure;
  /** Whether spread or angle can be told apart. */
  readonly told: boolean;
}

export interface WordsCompared {
  /** Below the crown, mm: all words are compared at this level. */
  readonly levelMm: number;
  readonly words: readonly WordMeans[];
  readonly leftOut: readonly LeftOut[];
}

/** The lowest level that every piece of the stock reaches, mm; undefined where no depth was read. */
export function commonLevelMm(plates: readonly StockPlate[]): number | undefined {
  const depths = plates.flatMap(({ depth }) => (isRead(depth) ? [depth.value] : []));
  return depths.length === 0 ? undefined : Math.min(...depths);
}

/** What each maker's word stands for at one level below the crown, and how it compares with another maker's. */
export function wordsCompared(plates: readonly StockPlate[], levelMm: number): WordsCompared {
  const { pieces, leftOut } = piecesAt(plates, levelMm);
  const words = sizeWords(pieces);
  return { levelMm, words: words.map((word) => meansOf(word, words)), leftOut };
}

function meansOf(word: SizeWord, all: readonly SizeWord[]): WordMeans {
  const { maker, word: said, pieces, spreadMm, halfAngleRad } = word;
  const others = [...new Set(all.map((one) => one.maker))].filter((one) => one !== maker);
  return {
    maker,
    word: said,
    pieces,
    spreadMm: { value: spreadMm.mean, u: pieceU(spreadMm) },
    halfAngleRad: { value: halfAngleRad.mean, u: pieceU(halfAngleRad) },
    between: { spreadMm: spreadMm.betweenSd, halfAngleRad: halfAngleRad.betweenSd },
    nearest: others.flatMap((other) =>
      nearestOf(all.filter((one) => one.maker === other).map((one) => against(word, one))),
    ),
  };
}

function against(a: SizeWord, b: SizeWord): WordAgainst {
  const apart = (what: "spreadMm" | "halfAngleRad") => piecesApart(a[what], b[what]);
  const [spreadMm, halfAngleRad] = [apart("spreadMm"), apart("halfAngleRad")];
  const told = [spreadMm, halfAngleRad].some(({ value, u }) => Math.abs(value) > u);
  return { maker: b.maker, word: b.word, spreadMm, halfAngleRad, told };
}

/** By the worse of spread and angle, each against its own doubt. */
function nearestOf([first, ...rest]: readonly WordAgainst[]): readonly WordAgainst[] {
  const far = ({ spreadMm, halfAngleRad }: WordAgainst) =>
    Math.max(Math.abs(spreadMm.value) / spreadMm.u, Math.abs(halfAngleRad.value) / halfAngleRad.u);
  return first ? [rest.reduce((least, one) => (far(one) < far(least) ? one : least), first)] : [];
}
