import { z } from "zod";
import { SURVEY_LIMITS } from "./sizes.ts";
import { deg, len, measured, said, seen, sign, words } from "./typed.ts";

const setting = (side: string) =>
  measured({
    kind: "count",
    lo: 1,
    hi: 12,
    by: "count",
    about: `position that the inserts stand in now, ${side}, counted in the order of the list`,
  });

const positionSchema = z
  .strictObject({
    name: words("mark or number of the position; never compared", SURVEY_LIMITS.markLetters),
    spreadTips: len(
      90,
      360,
      "spread at the tips with both inserts in it, as fitted, on the head's named face",
    ),
    halfAngle: deg(10, 75, "half-angle of the points with both inserts in it, as fitted"),
  })
  .meta({ description: "one position of the inserts, the same on both sides" });

export const insertsSchema = z
  .strictObject({
    positions: z
      .array(positionSchema)
      .max(SURVEY_LIMITS.positions)
      .default([])
      .meta({ description: "positions of the inserts, each read as fitted" }),
    near: setting("near"),
    off: setting("off"),
    lockHome: seen("inserts locked home, both sides"),
    keyway: seen("keyways unworn: the inserts sit without play"),
    grit: sign("grit or dirt in a keyway"),
  })
  .meta({ description: "removable inserts of the head" });

/** Hottest that a sheet for a polymer of saddle trees may name, and coolest, degrees C (a working limit, no source). */
const FORMING_C = { coolest: 40, hottest: 320 };
const formingC = (which: string) =>
  z
    .int()
    .min(FORMING_C.coolest)
    .max(FORMING_C.hottest)
    .optional()
    .meta({ description: `${which} temperature of forming by the maker's sheet, degrees C` });

/** What the maker says of forming a polymer head by heat. Nothing of it opens a way here: it says what to ask for. */
export const formingSchema = z
  .strictObject({
    sheetAtHand: said("the maker's forming sheet for this very tree is at hand"),
    fromC: formingC("lowest"),
    toC: formingC("highest"),
    mostEachTime: len(1, 40, "most change at the tips in one heating, by the maker's sheet", "ruler"),
    mostInAll: len(1, 60, "most change at the tips from as made, by the maker's sheet", "ruler"),
    heatedTimes: measured({
      kind: "count",
      lo: 0,
      hi: 20,
      by: "count",
      about: "how often this head has been formed by heat",
    }),
  })
  .meta({ description: "a polymer head's forming, by its maker's sheet" });
