import { z } from "zod";
import { calliperOnBare } from "./calliper-on-bare.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { deg, len, measured, said, seen, words } from "./typed.ts";

export const mountingSchema = z
  .strictObject({
    holes: measured({ kind: "count", lo: 0, hi: 12, by: "count", about: "screw holes a side" }),
    pitch: len(0, 150, "distance between the holes of one side"),
    edge: z
      .enum(["square", "rounded", "bevelled", "keyed", "unknown"])
      .default("unknown")
      .meta({ description: "edge of the plate where it is held" }),
    thickness: len(1, 15, "thickness of the plate where it is held"),
  })
  .meta({ description: "how a changeable plate is held" });

export const plateSchema = z
  .strictObject({
    label: words("what the maker calls it; never compared", SURVEY_LIMITS.markLetters),
    maker: words("maker of the plate", SURVEY_LIMITS.serialLetters),
    mounting: mountingSchema.prefault({}),
    spreadTips: len(90, 360, "spread at the tips, as fitted if it was, on the head's named face"),
    halfAngle: deg(10, 75, "half-angle of the plate"),
    asFitted: said("measured as fitted in this head, not loose"),
    wasInThisHead: said("it was in this head before the last change, and is kept with the saddle"),
    sound: seen("plate straight, holes sound, no crack"),
  })
  .transform((plate) => calliperOnBare(plate))
  .meta({ description: "a plate at hand" });
