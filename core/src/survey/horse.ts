import { z } from "zod";
import { handsSchema } from "./horse-hands.ts";
import { historySchema } from "./horse-history.ts";
import { identitySchema } from "./horse-identity.ts";
import { movingSchema, standingSchema } from "./horse-standing.ts";
import { girthedSchema, movedSchema, stateSchema, templateSchema } from "./horse-states.ts";
import { profileSchema, traceSchema } from "./horse-traces.ts";
import { bodySchema } from "./horse-weight.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { measured, said, words } from "./typed.ts";

export const horseSchema = z
  .strictObject({
    name: z.string().min(1).max(SURVEY_LIMITS.nameLetters).meta({ description: "name of the horse" }),
    about: words("breed, age, work"),
    identity: identitySchema.prefault({}),
    age: measured({ kind: "age", lo: 0, hi: 45, by: "count", about: "age of the horse" }),
    mass: measured({ kind: "mass", lo: 60, hi: 1300, by: "scale", about: "mass of the horse" }),
    body: bodySchema.prefault({}),
    history: historySchema.prefault({}),
    standing: standingSchema.prefault({}),
    hands: handsSchema.prefault({}),
    moving: movingSchema.prefault({}),
    traces: z
      .array(traceSchema)
      .max(SURVEY_LIMITS.traces)
      .default([])
      .meta({ description: `tracings, at most ${SURVEY_LIMITS.traces}` }),
    profile: profileSchema.optional(),
    trunkUnchanged: said("behind the hollow the trunk has the shape it had before"),
    laidOn: stateSchema.prefault({}).meta({ description: "laid on, girth hanging" }),
    girthed: girthedSchema.prefault({}).meta({ description: "girthed up, no rider" }),
    riderUp: stateSchema.prefault({}).meta({ description: "rider up, sitting still" }),
    halfSeat: stateSchema.prefault({}).meta({ description: "rider in half-seat" }),
    moved: movedSchema.prefault({}).meta({ description: "ridden, in movement" }),
    template: templateSchema.prefault({}),
    onlyThisHorse: said("signed: the other horses of this saddle are left out"),
  })
  .meta({ description: "one horse that wears the saddle" });
