import { z } from "zod";
import { ZONES } from "../terms/places.ts";

const grade = z
  .strictObject({
    grade: z
      .int()
      .min(0)
      .max(3)
      .meta({ description: "reaction to pressure: 0 none, 1 mild, 2 clear, 3 strong" }),
    twice: z
      .enum(["yes", "no", "not-tried"])
      .default("not-tried")
      .meta({ description: "was the reaction there again" }),
  })
  .meta({
    description: "reaction to pressure: 0 none, 1 mild, 2 clear, 3 strong; twice: was it there again",
  });

const zoneSides = z.strictObject({ near: grade.optional(), off: grade.optional() });

export const handsSchema = z
  .strictObject(
    Object.fromEntries(ZONES.map((zone) => [zone, zoneSides.optional()])) as Record<
      (typeof ZONES)[number],
      z.ZodOptional<typeof zoneSides>
    >,
  )
  .meta({ description: "hands on, flat hand first, by zone and side; a zone left out was not looked at" });
