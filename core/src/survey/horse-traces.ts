import { z } from "zod";
import { STATIONS } from "../terms/places.ts";
import { SURVEY_LIMITS, SURVEY_SIZES } from "./sizes.ts";
import { profileInMm, traceInMm } from "./take-points.ts";
import { measured, pointTyped, words } from "./typed.ts";

/**
 * One drawing of the back's shape across: points from the near side to the off side, y to the right, z up,
 * top of the back at (0, 0). Read, its points are millimetres.
 */
export const traceSchema = z
  .strictObject({
    station: z.enum(STATIONS).meta({
      description:
        "place along the back: front at the tree points, mid at the deepest seat, rear 40 mm before the panel's end",
    }),
    behindFront: measured({
      kind: "length",
      lo: -100,
      hi: 700,
      by: "ruler",
      about: "distance of this trace behind the front station, along the back",
    }),
    temper: z
      .enum(["cold", "warm", "not-asked"])
      .default("not-asked")
      .meta({ description: "before work (cold) or after 20 to 30 minutes of it (warm)" }),
    minutesSinceWork: measured({ kind: "time", lo: 0, hi: 100000, by: "count", about: "minutes since work" }),
    drawnBy: words("who drew it", SURVEY_LIMITS.nameLetters),
    massThen: measured({
      kind: "mass",
      lo: 60,
      hi: 1300,
      by: "scale",
      about: "mass of the horse on the day this trace was drawn, where that was another day",
    }),
    conditionThen: measured({
      kind: "count",
      lo: 1,
      hi: 9,
      by: "eye",
      about: "condition (1 to 9) on the day this trace was drawn, where that was another day",
    }),
    unit: z.enum(["mm", "cm", "in"]).default("mm").meta({ description: "unit of the points" }),
    points: z
      .array(pointTyped)
      .min(SURVEY_SIZES.tracePoints.least)
      .max(SURVEY_LIMITS.tracePoints)
      .meta({ description: "points [y to the off side, z up], near side first, top of the back at [0, 0]" }),
    repeats: z
      .array(z.array(pointTyped).min(SURVEY_SIZES.tracePoints.least).max(SURVEY_LIMITS.tracePoints))
      .max(SURVEY_LIMITS.traceRepeats)
      .default([])
      .meta({ description: "the same trace drawn again, each time lifted off" }),
  })
  .transform(traceInMm)
  .meta({
    description: "a trace across the back, by flexible curve, card template or offsets; at most 2,000 points",
  });

export const profileSchema = z
  .strictObject({
    unit: z.enum(["mm", "cm", "in"]).default("mm").meta({ description: "unit of the points" }),
    points: z
      .array(pointTyped)
      .min(SURVEY_SIZES.profilePoints.least)
      .max(SURVEY_LIMITS.profilePoints)
      .meta({ description: "points [x behind the front station, z of the midline to a level line, up]" }),
  })
  .transform(profileInMm)
  .meta({ description: "the midline from front station to behind the saddle, against a level line" });
