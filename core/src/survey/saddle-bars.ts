import { z } from "zod";
import { len } from "./typed.ts";

/** The stirrup bars: where the leathers hang. */
export const barsSchema = z
  .strictObject({
    near: len(-80, 260, "stirrup leather behind the tree points, near", "ruler"),
    off: len(-80, 260, "stirrup leather behind the tree points, off", "ruler"),
    apart: len(120, 420, "from one stirrup bar to the other, outside", "ruler"),
    underStraightEdge: len(-80, 220, "height of the straight-edge over the stirrup bars", "ruler"),
  })
  .meta({ description: "the stirrup bars" });
