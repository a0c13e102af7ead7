import { z } from "zod";
import { calliperOnBare } from "./calliper-on-bare.ts";
import { barsSchema } from "./saddle-bars.ts";
import { bearingSchema, panelSchema } from "./saddle-bearing.ts";
import { girthingSchema } from "./saddle-girthing.ts";
import { formingSchema, insertsSchema } from "./saddle-inserts.ts";
import { headSchema, linesSchema } from "./saddle-lines.ts";
import { buildSchema, lookedSchema } from "./saddle-looked.ts";
import { pastSchema, standingOfSaddleSchema } from "./saddle-past.ts";
import { mountingSchema } from "./saddle-plates.ts";
import { reinforcementSchema } from "./saddle-reinforcement.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { words } from "./typed.ts";

export const saddleSchema = z
  .strictObject({
    name: z
      .string()
      .min(1)
      .max(SURVEY_LIMITS.nameLetters)
      .meta({ description: "name of the saddle in this case" }),
    maker: words("maker of the saddle", SURVEY_LIMITS.nameLetters),
    model: words("model of the saddle", SURVEY_LIMITS.nameLetters),
    standing: standingOfSaddleSchema.prefault({}),
    past: pastSchema.prefault({}),
    build: buildSchema.prefault({}),
    looked: lookedSchema.prefault({}),
    lines: linesSchema.prefault({}),
    head: headSchema.prefault({}),
    reinforcement: reinforcementSchema.prefault({}),
    bearing: bearingSchema.prefault({}),
    girthing: girthingSchema.prefault({}),
    bars: barsSchema.prefault({}),
    panel: panelSchema.prefault({}),
    mounting: mountingSchema.prefault({}),
    inserts: insertsSchema.prefault({}),
    forming: formingSchema.prefault({}),
  })
  .transform((saddle) => (saddle.looked.level === "bare" ? calliperOnBare(saddle) : saddle))
  .meta({ description: "the saddle" });
