import type { Entry } from "./entry.ts";
import type { Body, Kind } from "./kinds.ts";

/** What an entry says, in the newest version of its kind; or why it cannot be read here. It is kept all the same. */
export type BodyRead =
  | { readonly is: "read"; readonly body: Body }
  | { readonly is: "newer"; readonly version: number; readonly known: number }
  | { readonly is: "unknown-kind" }
  | { readonly is: "damaged"; readonly at: string };

/** The first gap in the steps of some kinds, in words; undefined where there is none. */
export function faultInKinds(kinds: readonly Kind[]): string | undefined {
  const twice = kinds.find((one, at) => kinds.findIndex(({ kind }) => kind === one.kind) < at);
  if (twice) return `the kind ${twice.kind} is told twice`;
  const gap = kinds.find(({ version, steps }) => steps.length !== version - 1);
  return (
    gap &&
    `${gap.kind} is at version ${gap.version} and has ${gap.steps.length} steps, not ${gap.version - 1}`
  );
}

/** Never throws and never changes the entry: old bodies are brought up, newer ones left alone. */
export function readBody(entry: Entry, kinds: readonly Kind[]): BodyRead {
  const known = kinds.find(({ kind }) => kind === entry.kind);
  if (known === undefined) return { is: "unknown-kind" };
  if (entry.version > known.version) return { is: "newer", version: entry.version, known: known.version };
  const body = known.steps.slice(entry.version - 1).reduce((at, step) => step(at), entry.body as Body);
  const parsed = known.schema.safeParse(body);
  if (parsed.success) return { is: "read", body: parsed.data as Body };
  return { is: "damaged", at: parsed.error.issues[0]?.path.join("/") ?? "" };
}
