import { CASE_BYTES_MAX } from "./case.ts";
import type { Problem } from "./problem.ts";
import { readJson } from "./read-json.ts";

export type TextRead =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** The value in the text of any file of ours, or why there is none: too large, or no JSON. Never an exception. */
export function readText(text: string): TextRead {
  if (text.length > CASE_BYTES_MAX || utf8Bytes(text) > CASE_BYTES_MAX)
    return { ok: false, problems: [tooLarge(text)] };
  const json = readJson(text);
  if (json.ok) return json;
  const problems = json.faults.map(({ line, column, read, allowed }) => ({
    where: `line ${line}, column ${column}`,
    read,
    allowed,
  }));
  return { ok: false, problems };
}

const tooLarge = (text: string): Problem => ({
  where: "the whole file",
  read: `${(text.length / 1e6).toFixed(1)} MB or more`,
  allowed: `at most ${CASE_BYTES_MAX / 1e6} MB`,
});

function utf8Bytes(text: string): number {
  let bytes = 0;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    // Each half of a pair counts two, so that a pair makes its four.
    bytes += code < 0x80 ? 1 : code < 0x800 || (code >= 0xd800 && code < 0xe000) ? 2 : 3;
  }
  return bytes;
}
