import type { Practice } from "../practice/practice.ts";
import { caseAsStatements, type Refusal } from "../records.ts";
import { CASE_BYTES_MAX, readCase } from "../road.ts";

export type Begun =
  | { readonly ok: true; readonly subject: string }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** A case file as a visit of its own, with every reading as it was typed; or why it is none, and then nothing was written. */
export async function beginFromCase(practice: Practice, file: Blob): Promise<Begun> {
  if (file.size > CASE_BYTES_MAX) {
    const refusal = {
      where: "the whole file",
      read: `${file.size} bytes`,
      allowed: `at most ${CASE_BYTES_MAX} bytes`,
    };
    return { ok: false, refusals: [refusal] };
  }
  const read = readCase(await file.text());
  if (!read.ok) return { ok: false, refusals: read.problems };
  const subject = await practice.begin(caseAsStatements(read.file));
  practice.actions.add("began", "visit");
  return { ok: true, subject };
}
