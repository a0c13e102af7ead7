import { z } from "zod";
import { horseSchema } from "./horse.ts";
import { saddleSchema } from "./saddle.ts";
import { plateSchema } from "./saddle-plates.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { practiceSchema, riderSchema, visitSchema, workerSchema } from "./visit.ts";

export const CASE_FORMAT = "treewright-case";
export const CASE_VERSION = 3;
/** Largest case file that is read, in bytes (a working limit, no source). */
export const CASE_BYTES_MAX = SURVEY_LIMITS.fileBytes;

/** One saddle, the horses that wear it, the people, and the plates at hand. The one definition: schema, types and documentation come from here. */
export const caseSchema = z
  .strictObject({
    format: z.literal(CASE_FORMAT).meta({ description: "what kind of file this is" }),
    version: z.literal(CASE_VERSION).meta({ description: "version of the format" }),
    title: z.string().min(1).max(SURVEY_LIMITS.titleLetters).meta({ description: "title of the case" }),
    invented: z.boolean().default(false).meta({ description: "an invented example: its sheets say so" }),
    practice: practiceSchema.prefault({}),
    visit: visitSchema,
    worker: workerSchema.prefault({}),
    rider: riderSchema.prefault({}),
    saddle: saddleSchema,
    horses: z
      .array(horseSchema)
      .min(1)
      .max(SURVEY_LIMITS.horses)
      .meta({ description: "every horse that wears the saddle, one to eight" }),
    platesAtHand: z
      .array(plateSchema)
      .max(SURVEY_LIMITS.platesAtHand)
      .default([])
      .meta({ description: `plates at hand, at most ${SURVEY_LIMITS.platesAtHand}` }),
  })
  .meta({ description: "a Treewright case" });

/** What a person types: the file. */
export type CaseFile = z.input<typeof caseSchema>;
/** What the other rooms read: every field present, every measured field a reading or the reason why not. */
export type Survey = z.output<typeof caseSchema>;
export type SurveyedHorse = Survey["horses"][number];
export type SurveyedSaddle = Survey["saddle"];
export type Trace = SurveyedHorse["traces"][number];
export type Plate = Survey["platesAtHand"][number];
