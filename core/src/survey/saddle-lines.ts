import { z } from "zod";
import { deg, len } from "./typed.ts";

export const linesSchema = z
  .strictObject({
    diagonalNear: len(200, 800, "near tip to the off rear corner", "ruler"),
    diagonalOff: len(200, 800, "off tip to the near rear corner", "ruler"),
    pointLengthNear: len(40, 250, "length of the point, near", "ruler"),
    pointLengthOff: len(40, 250, "length of the point, off", "ruler"),
    benchRock: len(0, 30, "rock of the points on a flat bench", "ruler"),
    stringOffCentre: len(
      0,
      60,
      "string from head centre to cantle centre, greatest distance from the seat's line",
      "ruler",
    ),
  })
  .meta({ description: "lines and square" });

export const headSchema = z
  .strictObject({
    face: z
      .enum(["inside", "outside", "not-said"])
      .default("not-said")
      .meta({ description: "face of the head that the spreads below were taken on" }),
    spreadTips: len(90, 360, "spread at the tips, on the face named"),
    spreadUpper: len(40, 300, "spread at the upper level, on the face named"),
    upperBelowCrown: len(10, 120, "depth of the upper level below the crown", "ruler"),
    depth: len(40, 180, "depth from crown to the line of the tips", "ruler"),
    crownRadius: len(8, 90, "inner radius of the crown", "ruler"),
    thickness: len(2, 40, "thickness of the head at the points, to go from one face to the other"),
    halfAngleNear: deg(10, 75, "half-angle of the near point to the tree's centre plane"),
    halfAngleOff: deg(10, 75, "half-angle of the off point to the tree's centre plane"),
    asMadeSpreadTips: len(90, 360, "spread at the tips as made, on the face named"),
  })
  .meta({ description: "head and points" });
