import { z } from "zod";
import { type Entry, entrySchema, hashSchema } from "./entry.ts";
import { RECORD_LIMITS } from "./limits.ts";
import { type Held, heldSchema } from "./personal.ts";

import { type Refusal, refusalOf } from "./refusal.ts";

/*
 * Everything that was recorded, in one file of lines: what leaves one store and enters another. A line is a JSON value by
 * itself, so that two million entries need not be in memory as one text. The first line says how many of each follow.
 */
export const RECORDS_FORMAT = "treewright-records";
export const RECORDS_VERSION = 1;

export const photoSchema = z.strictObject({
  hash: hashSchema,
  type: z.enum(["image/jpeg", "image/png", "image/webp", "image/heic"]),
  bytes: z.int().min(1).max(RECORD_LIMITS.photoBytes),
});
/** A photo that entries cite; its bytes travel beside the file, under its hash. */
export type Photo = z.output<typeof photoSchema>;

export interface Records {
  readonly people: readonly Held[];
  readonly photos: readonly Photo[];
  readonly entries: readonly Entry[];
}

const firstSchema = z.strictObject({
  format: z.literal(RECORDS_FORMAT),
  version: z.literal(RECORDS_VERSION),
  people: z.int().min(0),
  photos: z.int().min(0),
  entries: z.int().min(0),
});

export type RecordsRead =
  | { readonly ok: true; readonly records: Records }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** More than this many refusals are not listed. */
const MOST_REFUSALS = 100;

/** The lines of the file, without their ends. The same records in the same order give the same lines. */
export function* linesOf({ people, photos, entries }: Records): Generator<string> {
  const counts = { people: people.length, photos: photos.length, entries: entries.length };
  yield JSON.stringify({ format: RECORDS_FORMAT, version: RECORDS_VERSION, ...counts });
  for (const one of people) yield JSON.stringify(one);
  for (const one of photos) yield JSON.stringify(one);
  for (const one of entries) yield JSON.stringify(one);
}

/** All records of a file's lines, or why not: never a part, never an exception. Empty lines at the end are passed over. */
export function readRecords(lines: Iterable<string>): RecordsRead {
  const texts = [...lines];
  while (texts.at(-1)?.trim() === "") texts.pop();
  const first = readFirst(texts[0] ?? "");
  if ("refusal" in first) return { ok: false, refusals: [first.refusal] };
  const wanted = first.people + first.photos + first.entries;
  if (texts.length - 1 !== wanted) return { ok: false, refusals: [notAll(texts.length - 1, wanted)] };
  const refusals: Refusal[] = [];
  const part = <One>(from: number, count: number, schema: z.ZodType<One>): One[] =>
    texts.slice(from, from + count).flatMap((text, at) => {
      const read = readLine(text, `line ${from + at + 1}`, schema);
      if ("value" in read) return [read.value];
      if (refusals.length < MOST_REFUSALS) refusals.push(read.refusal);
      return [];
    });
  const people = part(1, first.people, heldSchema);
  const photos = part(1 + first.people, first.photos, photoSchema);
  const entries = part(1 + first.people + first.photos, first.entries, entrySchema);
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, records: { people, photos, entries } };
}

type First = z.output<typeof firstSchema>;

function readFirst(text: string): First | { readonly refusal: Refusal } {
  const read = readLine(text, "line 1", z.looseObject({ format: z.string(), version: z.number() }));
  if ("refusal" in read) return read;
  const { format, version } = read.value;
  if (format === RECORDS_FORMAT && version > RECORDS_VERSION)
    return {
      refusal: {
        where: "line 1, version",
        read: `${version}: written by a newer Treewright`,
        allowed: `${RECORDS_VERSION}; read it with the newer one. Nothing was changed`,
      },
    };
  const first = readLine(text, "line 1", firstSchema);
  return "refusal" in first ? first : first.value;
}

const notAll = (read: number, wanted: number): Refusal => ({
  where: "the whole file",
  read: `${read} lines after the first`,
  allowed: `the ${wanted} that the first line tells: the file was cut short or added to`,
});

type LineRead<One> = { readonly value: One } | { readonly refusal: Refusal };

/** One line by itself: its form and its size, not whether a hash is right (`verify`) or a body can be read (`readBody`). */
function readLine<One>(text: string, where: string, schema: z.ZodType<One>): LineRead<One> {
  const bytes = new TextEncoder().encode(text).length;
  if (bytes > RECORD_LIMITS.entryBytes)
    return {
      refusal: { where, read: `${bytes} bytes`, allowed: `at most ${RECORD_LIMITS.entryBytes} bytes` },
    };
  try {
    const value: unknown = JSON.parse(text);
    const parsed = schema.safeParse(value);
    return parsed.success ? { value: parsed.data } : { refusal: refusalOf(value, parsed.error, where) };
  } catch {
    return { refusal: { where, read: `"${text.slice(0, 40)}"`, allowed: "a line of JSON" } };
  }
}
