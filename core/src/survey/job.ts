import { z } from "zod";
import { calliperOnBare } from "./calliper-on-bare.ts";
import { SURVEY_LIMITS } from "./sizes.ts";
import { deg, len, seen, sign, words } from "./typed.ts";

export const JOB_FORMAT = "treewright-job";
export const JOB_VERSION = 1;
/** Path under which the fields of a job are known beside those of a case. */
export const JOB_PATH = "job";

/** What is read of the head before the first pass and after each, in one state and on one face. */
const headNow = {
  spreadTips: len(90, 360, "spread at the tips, let go, on the head's named face"),
  spreadUpper: len(40, 300, "spread at the upper level, let go, on the same face"),
  halfAngleNear: deg(10, 75, "half-angle of the near point, let go"),
  halfAngleOff: deg(10, 75, "half-angle of the off point, let go"),
};

const passSchema = z
  .strictObject({
    travel: len(0, 60, "travel of both tips together from first touch, whichever way", "ruler"),
    travelNear: len(0, 40, "travel of the near tip from first touch, where each was read", "ruler"),
    travelOff: len(0, 40, "travel of the off tip from first touch, where each was read", "ruler"),
    forceN: z
      .number()
      .min(1)
      .max(50_000)
      .optional()
      .meta({ description: "force at the end of the travel by the press's gauge, N" }),
    holdMin: z.number().min(0).max(1440).optional().meta({ description: "how long it was held, minutes" }),
    treeC: z
      .number()
      .min(-20)
      .max(60)
      .optional()
      .meta({ description: "temperature of the tree in the press, degrees C" }),
    ...headNow,
    spreadTipsNextDay: len(90, 360, "spread at the tips 24 hours later, before anything else was done"),
    noise: sign("click, grate or crack heard or felt in the pass"),
    whiteLine: sign("crack or white line seen after it"),
    rivets: seen("rivets, plate edges and rivet holes looked at after it"),
    layers: seen("layers looked at and tapped after it"),
  })
  .meta({ description: "one pass at the press" });

/** A job at the press. The one definition: schema, types and documentation come from here. */
export const jobSchema = z
  .strictObject({
    format: z.literal(JOB_FORMAT).meta({ description: "what kind of file this is" }),
    version: z.literal(JOB_VERSION).meta({ description: "version of the format" }),
    title: z.string().min(1).max(SURVEY_LIMITS.titleLetters).meta({ description: "title of the job" }),
    invented: z.boolean().default(false).meta({ description: "an invented example" }),
    serial: words("serial or date stamp as read on the tree in the press", SURVEY_LIMITS.serialLetters),
    state: z.enum(["dressed", "bare"]).meta({
      description: "the tree in the press, inside its saddle or stripped; a job is one or the other",
    }),
    wantedMm: z
      .number()
      .min(-40)
      .max(40)
      .meta({ description: "wanted kept change of the spread at the tips, mm; opening is above zero" }),
    before: z
      .strictObject(headNow)
      .prefault({})
      .meta({ description: "the head before the first pass, in this state" }),
    passes: z
      .array(passSchema)
      .max(SURVEY_LIMITS.passes)
      .default([])
      .meta({ description: `passes in their order, at most ${SURVEY_LIMITS.passes}` }),
  })
  .transform((job) => (job.state === "bare" ? calliperOnBare(job) : job))
  .meta({ description: "a Treewright job at the press" });

export type SurveyedJob = z.output<typeof jobSchema>;
export type SurveyedPass = SurveyedJob["passes"][number];
