import { release } from "./bend.ts";
import { bendToMoment } from "./path.ts";
import { type Section, type SectionState, unbent } from "./section.ts";

/** A short piece of an arch, bent alike over its length. mm. */
export interface Piece {
  readonly lengthMm: number;
  /** Distance from the line of the pair of forces at the tips: their lever here. */
  readonly leverMm: number;
  readonly section: Section;
}

/** One half of an arch, from its crown to its tip. The crown's middle neither turns nor moves. */
export type Half = readonly Piece[];

/** Two halves and a pair of equal forces that pulls their tips apart (closing: below zero). */
export type Arch = readonly [Half, Half];

/** States of all pieces, half by half. Never changed in place. */
export type ArchState = readonly [HalfState, HalfState];
export type HalfState = readonly SectionState[];

export function unbentArch([a, b]: Arch): ArchState {
  const straight = new Map<Section, SectionState>();
  const of = (section: Section): SectionState => {
    const known = straight.get(section) ?? unbent(section);
    straight.set(section, known);
    return known;
  };
  // Pieces of one section start as one state, so that they share one path.
  const half = (pieces: Half): HalfState => pieces.map(({ section }) => of(section));
  const first = half(a);
  return [first, a === b ? first : half(b)];
}

/** Bends every piece of both halves; halves that are one and the same and have seen the same are worked out once. */
function onBoth(
  arch: Arch,
  state: ArchState,
  each: (piece: Piece, state: SectionState) => SectionState,
): ArchState {
  const half = (k: 0 | 1): HalfState =>
    state[k].map((one, i) => {
      const piece = arch[k][i];
      if (piece === undefined) throw new RangeError("the state belongs to another arch");
      return each(piece, one);
    });
  const first = half(0);
  return [first, arch[0] === arch[1] && state[0] === state[1] ? first : half(1)];
}

/** The arch with `forceN` between its tips, from where it stands. Throws `NoBalance` where it cannot carry it. */
export const loadTo = (arch: Arch, state: ArchState, forceN: number): ArchState =>
  onBoth(arch, state, ({ section, leverMm }, one) => bendToMoment(section, one, forceN * leverMm));

/** Let go at both tips: no force left, what was kept stays. */
export const letGo = (arch: Arch, state: ArchState): ArchState =>
  onBoth(arch, state, ({ section }, one) => release(section, one));

/** How far one half's tip has gone outward since it was unbent, mm, seen `levelMm` above the line of the tips. */
export function tipTravelMm(half: Half, state: HalfState, levelMm = 0): number {
  return half.reduce(
    (sum, { lengthMm, leverMm }, i) =>
      sum + Math.max(0, leverMm - levelMm) * lengthMm * (state[i]?.curvaturePerMm ?? 0),
    0,
  );
}

/** How far one half has turned outward since it was unbent, rad. */
export const halfTurnRad = (half: Half, state: HalfState): number =>
  half.reduce((sum, { lengthMm }, i) => sum + lengthMm * (state[i]?.curvaturePerMm ?? 0), 0);

/** How much wider apart the tips are than unbent, mm, seen `levelMm` above their line. */
export const openingMm = (arch: Arch, state: ArchState, levelMm = 0): number =>
  tipTravelMm(arch[0], state[0], levelMm) + tipTravelMm(arch[1], state[1], levelMm);
