import { canonicalJson, sha256Hex } from "../engine/hash.ts";
import type { Survey } from "../survey/case.ts";

/** Version of everything that computes; it stands on every result. */
export const ENGINE = "0.1.0";

/** Fingerprint of what an answer was computed from: SHA-256 over the canonical JSON (RFC 8785) of the survey. */
export function hashOf(survey: Survey): string {
  return sha256Hex(new TextEncoder().encode(canonicalJson(survey)));
}
