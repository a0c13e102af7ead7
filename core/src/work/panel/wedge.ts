import { asin } from "../../engine/number/index.ts";
import type { Tree } from "../../shape/model.ts";
import { SIDES, type Side, STATIONS, type Station } from "../../terms/places.ts";

/** How a panel's own wedge and the bare face above it make the face that lies on the horse, at one station and side. */
export interface Wedge {
  readonly station: Station;
  readonly side: Side;
  /** Outer less inner thickness as an angle; positive makes the face steeper. */
  readonly wedgeRad: number;
  /** The face of rail or point above the panel, to the horizontal. */
  readonly bareRad: number;
  /** What lies on the horse: the bare face and the wedge together. */
  readonly faceRad: number;
}

/** Every station and side. Derived: over the panel's own face the difference of its edges is the sine of its wedge. */
export function wedgesOf(tree: Tree): readonly Wedge[] {
  return STATIONS.flatMap((station) =>
    SIDES.map((side): Wedge => {
      const half = tree.halves[side];
      const x = tree.stationsMm[station];
      const { inner, outer } = half.thicknessMm[station];
      const wedgeRad = asin(Math.max(-1, Math.min(1, (outer - inner) / half.widthMm(x))));
      const faceRad = half.faceAngleRad(x);
      return { station, side, wedgeRad, bareRad: faceRad - wedgeRad, faceRad };
    }),
  );
}
