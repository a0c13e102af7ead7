import type { Rule } from "../judgement.ts";

const PRACTICE = "common practice, no source";

/** A rule of the bench or the yard. */
export const practice = (id: string, says: string, ...readings: readonly string[]): Rule => ({
  id,
  says,
  provenance: PRACTICE,
  sourceRef: PRACTICE,
  readings,
});

/** A rule that rests on something published. */
export const published = (
  id: string,
  says: string,
  source: string,
  ...readings: readonly string[]
): Rule => ({
  id,
  says,
  provenance: "published",
  sourceRef: `published: ${source}`,
  readings,
});
