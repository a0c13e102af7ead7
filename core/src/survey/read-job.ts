import { JOB_FORMAT, JOB_PATH, JOB_VERSION, jobSchema, type SurveyedJob } from "./job.ts";
import { type FileRead, readBeside } from "./read-beside.ts";

/** Reads the text of a job file. */
export const readJob = (text: string): FileRead<SurveyedJob> =>
  readBeside(text, {
    format: JOB_FORMAT,
    version: JOB_VERSION,
    schema: jobSchema,
    path: JOB_PATH,
    called: "a job at the press",
  });
