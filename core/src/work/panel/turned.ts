import { fillAtMm } from "../../fit/sections.ts";
import { eachStation } from "../../shape/along.ts";
import type { Thickness } from "../../shape/faces.ts";
import type { Back, Tree } from "../../shape/model.ts";
import { type BySide, type ByStation, SIDES, type Side, type Station } from "../../terms/places.ts";
import { EVEN_PART, ratioOf, type Tried, termsOf } from "./evenness.ts";
import type { Fill } from "./fill.ts";

/** A hand fills by half millimetres at the finest (common practice, no source). */
export const STEP_MM = 0.5;

export const inSteps = (mm: number): number => Math.round(mm / STEP_MM) * STEP_MM;

/** Fill at a face's open edge, mm: positive at the lower (outer) edge, where the tree is flatter than the back, negative at the inner. */
export type EdgeFill = BySide<ByStation<number>>;

/**
 * The fill at its thickest that turns each face to the back's: width times tangent of the difference, at the edge that
 * stands open. The side that fits, the larger one under a head set for it, gets nothing; the hollow one is filled.
 * `oneSided` false: only what both sides need alike, the lesser of the two.
 */
export function edgeFill(found: Tried, back: Back, tree: Tree, most: number, oneSided: boolean): EdgeFill {
  const at = (side: Side) => eachStation((station) => edgeAt(found, back, tree, most, side, station));
  const own = { near: at("near"), off: at("off") };
  if (oneSided) return own;
  const alike = eachStation((station) => lesser(own.near[station], own.off[station]));
  return { near: alike, off: alike };
}

function edgeAt(found: Tried, back: Back, tree: Tree, most: number, side: Side, station: Station): number {
  const fit = found.sections.find((one) => one.side === side && one.station === station);
  if (fit === undefined) return 0;
  const [term] = termsOf({ sections: [fit], rest: undefined }, found, NOTHING_READ);
  if (term === undefined || ratioOf(term) <= EVEN_PART) return 0;
  const fillMm = inSteps(Math.min(most, fillAtMm(fit, back, tree)));
  return fit.misfitRad < 0 ? fillMm : -fillMm;
}
const NOTHING_READ = { bridgeMm: undefined, rockMm: undefined, seatDeg: undefined, spareMm: 0 };

const lesser = (a: number, b: number): number =>
  a * b <= 0 ? 0 : Math.sign(a) * Math.min(Math.abs(a), Math.abs(b));

/** Edges filled, and each station raised or lowered as a whole on both sides: nothing at the other edge, half in the middle. */
export function fillFrom(edges: EdgeFill, levels: ByStation<number>): Fill {
  const across = (edge: number, level: number): Thickness => ({
    inner: level + Math.max(0, -edge),
    middle: level + inSteps(Math.abs(edge) / 2),
    outer: level + Math.max(0, edge),
  });
  const [near, off] = SIDES.map((side) =>
    eachStation((station) => across(edges[side][station], levels[station])),
  );
  return { near: near ?? eachStation(() => across(0, 0)), off: off ?? eachStation(() => across(0, 0)) };
}
