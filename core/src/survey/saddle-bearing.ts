import { z } from "zod";
import { deg, len, said, seen } from "./typed.ts";

const bearingSide = z.strictObject({
  innerEdge: len(5, 140, "inner edge from the tree's centre plane", "ruler"),
  width: len(25, 220, "width of the face", "ruler"),
  faceAngle: deg(-10, 80, "angle of the face to the horizontal, outer edge lower is positive"),
  underStraightEdge: len(-80, 220, "height of the straight-edge over the middle of the face", "ruler"),
  inner: len(3, 110, "panel thickness under the face at its inner edge", "ruler"),
  middle: len(3, 110, "panel thickness under the face in its middle", "ruler"),
  outer: len(3, 110, "panel thickness under the face at its outer edge", "ruler"),
});

const bearingStation = z.strictObject({
  behindFront: len(-60, 650, "distance behind the tree points", "ruler"),
  near: bearingSide.prefault({}),
  off: bearingSide.prefault({}),
  channel: len(15, 160, "channel between the panels", "ruler"),
});

export const bearingSchema = z
  .strictObject({
    face: z
      .enum(["panel", "rail", "not-said"])
      .default("not-said")
      .meta({ description: "dressed: the panel's face; bare: the rail's" }),
    front: bearingStation.prefault({}),
    mid: bearingStation.prefault({}),
    rear: bearingStation.prefault({}),
    panelEnd: len(250, 650, "end of the panel behind the tree points", "ruler"),
    deepestSeat: len(80, 400, "deepest seat behind the tree points", "ruler"),
    strapNear: len(-150, 320, "girth strap behind the tree points, near", "ruler"),
    strapOff: len(-150, 320, "girth strap behind the tree points, off", "ruler"),
    strapOnPoint: said("a girth strap hangs on the tree point"),
    wearsBehindTips: said("points seated in their pockets"),
  })
  .meta({ description: "where and how the saddle bears: rails, panel, channel, straps" });

export const panelSchema = z
  .strictObject({
    filling: z
      .enum(["wool", "foam", "air", "unknown"])
      .default("unknown")
      .meta({ description: "what the panel is filled with" }),
    state: z
      .enum(["good", "flat", "lumpy", "wrong-shape", "not-looked"])
      .default("not-looked")
      .meta({ description: "state of the panel" }),
    square: seen("panel square on the tree"),
  })
  .meta({ description: "the panel" });
