import { cos, PI, tan } from "../engine/number/index.ts";
import type { Back, Deviations, Head, Section, Tree } from "../shape/model.ts";
import { STRAIGHT_BELOW_CROWN_MM } from "../shape/wanted-head.ts";
import { type BySide, SIDES, type Side, STATIONS, type Station } from "../terms/places.ts";
import type { SectionFit } from "./fit.ts";

/** Part of a point's height that is judged where the head's straight part was not read: its lower three fifths (assumption). */
const POINT_PART = 0.6;
/** Nothing of a point bears nearer to the centre plane than this, mm (assumption). */
const INNERMOST_MM = 15;

/** A straight face between two distances from the centre plane, at an angle to the horizontal. */
interface StraightFace {
  readonly fromMm: number;
  readonly toMm: number;
  readonly angleRad: number;
}

/**
 * Tree against back at each station that both know, each side. Positive misfit: the tree is steeper, tight at the tip.
 *
 * A tree (bearing readings there) is judged by its bearing faces at all stations, the front one too: what touches the
 * horse is the panel's face, and a wedge in the panel makes its angle another than the point's. A head alone is
 * judged by its bare points, which is right for a bare tree and leaves a dressed one's panel out of account.
 */
export function sectionsOf(
  back: Back | Section,
  saddle: Tree | Head,
  deviations: Deviations,
): readonly SectionFit[] {
  const stations: readonly Station[] = "sections" in back && "halves" in saddle ? STATIONS : ["front"];
  return stations.flatMap((station) => {
    const section = "sections" in back ? back.sections[station] : back;
    return SIDES.map((side) =>
      sectionFit(station, side, section, faceOf(saddle, side, section.xMm), deviations),
    );
  });
}

function sectionFit(
  station: Station,
  side: Side,
  section: Section,
  face: StraightFace,
  deviations: Deviations,
): SectionFit {
  const backFaceRad = section.faceAngleRad(side, face.fromMm, face.toMm, deviations);
  return { station, side, treeFaceRad: face.angleRad, backFaceRad, misfitRad: face.angleRad - backFaceRad };
}

function faceOf(saddle: Tree | Head, side: Side, xMm: number): StraightFace {
  if (!("halves" in saddle)) return pointFace(saddle, side);
  const half = saddle.halves[side];
  const angleRad = half.faceAngleRad(xMm);
  const fromMm = half.innerEdgeMm(xMm);
  return { fromMm, toMm: fromMm + half.widthMm(xMm) * cos(angleRad), angleRad };
}

/** The inside of a bare point: its half-angle to the upright plane makes the rest of a right angle to the horizontal. */
function pointFace(head: Head, side: Side): StraightFace {
  const halfAngle = head.halfAngleRad[side];
  const toMm = head.spreadMm / 2;
  const heightMm = Math.min(head.depthMm - STRAIGHT_BELOW_CROWN_MM, POINT_PART * head.depthMm);
  return {
    fromMm: Math.max(INNERMOST_MM, toMm - heightMm * tan(halfAngle)),
    toMm,
    angleRad: PI / 2 - halfAngle,
  };
}

/**
 * The fill at its thickest that would even out one face, mm: its width times the tangent of the misfit. At the lower edge
 * where the tree is flatter, at the inner edge where it is steeper. Derived.
 */
export function fillAtMm({ station, side, misfitRad }: SectionFit, back: Back, tree: Tree): number {
  return tree.halves[side].widthMm(back.sections[station].xMm) * tan(Math.abs(misfitRad));
}

/** The same for each side, the largest over the stations. */
export function fillNeededMm(fits: readonly SectionFit[], back: Back, tree: Tree): BySide<number> {
  const most = (side: Side) =>
    Math.max(0, ...fits.filter((fit) => fit.side === side).map((fit) => fillAtMm(fit, back, tree)));
  return { near: most("near"), off: most("off") };
}
