import type { Pull } from "../engine/contact/problem.ts";
import { Doubts, type Drawn } from "../shape/doubt.ts";
import type { Deviations, Tree, Uncertain } from "../shape/model.ts";
import type { SurveyedSaddle } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";
import { type BySide, SIDES, type Side } from "../terms/places.ts";
import { assumedLoad, uncertainOf } from "./assumed-loads.ts";

/** Straps by their place on the tree, from the front. */
export const STRAPS = ["point", "first", "second", "third", "back"] as const;
export type StrapName = (typeof STRAPS)[number];

/** Where a strap leaves the panel and which way it pulls: down and a little outward (assumption). */
const STRAP_OUT_MM = 150;
const STRAP_BELOW_TIPS_MM = 25;
const STRAP_OUTWARD = 0.3;

/** The girth straps that are used, with what is not known of them. */
export interface GirthBelief {
  /** Forces on the saddle; `pullN`: of the girth on each side. */
  pulls(tree: Tree, pullN: number, deviations: Deviations): readonly Pull[];
  readonly uncertain: readonly Uncertain[];
  /** In words: which straps. */
  readonly says: string;
}

interface UsedPair {
  readonly name: StrapName;
  readonly xMm: BySide<Drawn>;
}

/**
 * The straps of the layout, where some are said to be used and all of those were read on both sides; else one strap a
 * side where the bearing's readings have it.
 */
export function girthOf({ girthing, bearing }: SurveyedSaddle): GirthBelief {
  const doubts = new Doubts();
  const used = STRAPS.filter((name) => girthing[name].used === "yes");
  const read = used.every((name) => isRead(girthing[name].near) && isRead(girthing[name].off));
  if (used.length === 0 || !read) return oneStrap(bearing.strapOnPoint === "yes");
  const pairs = used.map((name): UsedPair => {
    const at = (side: Side) => doubts.take(`saddle.girthing.${name}.${side}`, girthing[name][side]);
    return { name, xMm: { near: at("near"), off: at("off") } };
  });
  const inV = girthing.layout === "V" && pairs.length > 1;
  return {
    pulls: (tree, pullN, deviations) =>
      SIDES.flatMap((side) => pullsOf(pairs, inV, tree, side, pullN, deviations)),
    uncertain: [
      ...doubts.uncertain,
      ...uncertainOf([
        ...(pairs.length === 2 ? (["frontStrapPart"] as const) : []),
        ...(inV ? (["buckleBelowMm"] as const) : []),
      ]),
    ],
    says: `${used.join(" and ")} straps${inV ? ", to one buckle" : ""}`,
  };
}

/** As the bearing's own two readings have it. */
export function oneStrap(onPoint: boolean): GirthBelief {
  const name = onPoint ? "point" : "first";
  return {
    pulls: (tree, pullN) => SIDES.map((side) => strap(tree, side, name, tree.straps[side].xMm, 0, pullN)),
    uncertain: [],
    says: onPoint ? "one strap a side, on the tree point" : "one strap a side",
  };
}

function pullsOf(
  pairs: readonly UsedPair[],
  inV: boolean,
  tree: Tree,
  side: Side,
  pullN: number,
  deviations: Deviations,
): readonly Pull[] {
  const places = pairs.map(({ xMm }) => xMm[side](deviations));
  const parts = partsOf(places, assumedLoad("frontStrapPart", deviations));
  // The girth hangs where the pulls balance: toward that place each strap of a V leans.
  const buckle = places.reduce((sum, x, i) => sum + x * (parts[i] ?? 0), 0);
  const drop = assumedLoad("buckleBelowMm", deviations);
  return pairs.map(({ name }, i) => {
    const x = places[i] ?? buckle;
    return strap(tree, side, name, x, inV ? (buckle - x) / drop : 0, pullN * (parts[i] ?? 0));
  });
}

/** How the pull is shared: two straps by the assumed part of the front one, any other number evenly. */
function partsOf(places: readonly number[], front: number): readonly number[] {
  if (places.length !== 2) return places.map(() => 1 / places.length);
  const [a = 0, b = 0] = places;
  return a <= b ? [front, 1 - front] : [1 - front, front];
}

/** A strap on the point hangs on the outside of the tip, and goes out and down with it as the head opens. */
function strap(tree: Tree, side: Side, name: StrapName, xMm: number, leansBack: number, pullN: number): Pull {
  const out = side === "near" ? -1 : 1;
  const y = name === "point" ? tree.head.spreadMm / 2 + tree.head.thicknessMm : STRAP_OUT_MM;
  return {
    at: { x: xMm, y: out * y, z: tree.tipHeightMm - STRAP_BELOW_TIPS_MM },
    force: { x: leansBack * pullN, y: out * STRAP_OUTWARD * pullN, z: -pullN },
  };
}
