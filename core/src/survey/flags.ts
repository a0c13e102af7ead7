import type { Survey } from "./case.ts";
import { bodyFlags } from "./flags/body.ts";
import type { Flag } from "./flags/flag.ts";
import { headFlags } from "./flags/head.ts";
import { identityFlags } from "./flags/identity.ts";
import { readingFlags } from "./flags/readings.ts";
import { stateFlags } from "./flags/states.ts";
import { traceFlags } from "./flags/traces.ts";

export type { Flag };

/** Things to look at again before the answers are trusted. None of them stops the case from being read. */
export function flagsOf(survey: Survey): Flag[] {
  return [
    ...identityFlags(survey),
    ...bodyFlags(survey),
    ...headFlags(survey),
    ...traceFlags(survey),
    ...stateFlags(survey),
    ...readingFlags(survey),
  ];
}
