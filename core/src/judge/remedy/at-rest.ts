import { SIDES, STATIONS } from "../../terms/places.ts";

/** Height of the bearing at its stations: what decides whether, and which way, a saddle tips. */
export const BEARING_HEIGHTS: readonly string[] = STATIONS.flatMap((station) =>
  SIDES.map((side) => `saddle.bearing.${station}.${side}.underStraightEdge`),
);
