import { eachStation, quadraticWeights, weighted } from "../../shape/along.ts";
import { type Face, panelFace, type Thickness } from "../../shape/faces.ts";
import { lastKept } from "../../shape/last-kept.ts";
import type { Half, Tree } from "../../shape/model.ts";
import { type BySide, type ByStation, SIDES, STATIONS } from "../../terms/places.ts";

/** Places across one panel at a station. */
export const ACROSS = ["inner", "middle", "outer"] as const;
export type Across = (typeof ACROSS)[number];

/** What is added to the panel at each place, mm; what is taken out is negative. */
export type Fill = BySide<ByStation<Thickness>>;

const NONE: Thickness = { inner: 0, middle: 0, outer: 0 };
export const NO_FILL: Fill = { near: eachStation(() => NONE), off: eachStation(() => NONE) };

/** Every figure of a fill. */
export const figuresIn = (fill: Fill): readonly number[] =>
  SIDES.flatMap((side) => STATIONS.flatMap((station) => ACROSS.map((place) => fill[side][station][place])));

/**
 * The tree with its panel filled: the panel's back stays where it is, its face moves out by the fill, square to it, and
 * turns by the wedge that the fill makes. Between the stations the fill follows the same quadratic as the panel itself.
 * How stiff the filling becomes is not reckoned with.
 */
export function filledTree(tree: Tree, fill: Fill): Tree {
  const half = (side: "near" | "off") => filledHalf(tree.halves[side], fill[side], tree.stationsMm);
  return { ...tree, halves: { near: half("near"), off: half("off") } };
}

function filledHalf(half: Half, fill: ByStation<Thickness>, xs: ByStation<number>): Half {
  const today = eachStation((station) => faceAt(half, xs[station]));
  const moved = eachStation((station) => panelFace(today[station], fill[station]));
  const weights = lastKept((x: number) => quadraticWeights(xs, x));
  const more = (word: keyof Face) => {
    const by = eachStation((station) => moved[station][word] - today[station][word]);
    return (x: number) => weighted(weights(x), by);
  };
  const [edge, width, angle, height] = [
    more("innerEdgeMm"),
    more("widthMm"),
    more("faceAngleRad"),
    more("heightMm"),
  ];
  return {
    innerEdgeMm: (x) => half.innerEdgeMm(x) + edge(x),
    widthMm: (x) => half.widthMm(x) + width(x),
    faceAngleRad: (x) => half.faceAngleRad(x) + angle(x),
    heightMm: (x) => half.heightMm(x) + height(x),
    thicknessMm: eachStation((station) => plus(half.thicknessMm[station], fill[station])),
  };
}

const faceAt = (half: Half, x: number): Face => ({
  innerEdgeMm: half.innerEdgeMm(x),
  widthMm: half.widthMm(x),
  faceAngleRad: half.faceAngleRad(x),
  heightMm: half.heightMm(x),
});

const plus = (a: Thickness, b: Thickness): Thickness => ({
  inner: a.inner + b.inner,
  middle: a.middle + b.middle,
  outer: a.outer + b.outer,
});
