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

/** How many of each the file holds; in it they stand in this order. */
export interface RecordCounts {
  readonly people: number;
  readonly photos: number;
  readonly entries: number;
}

/** The first line of the file; each thing in it follows as the JSON of itself. */
export const firstLineOf = ({ people, photos, entries }: RecordCounts): string =>
  JSON.stringify({ format: RECORDS_FORMAT, version: RECORDS_VERSION, people, photos, entries });

/** The lines of the file, without their ends. The same records in the same order give the same lines. */
export function* linesOf({ people, photos, entries }: Records): Generator<string> {
  yield firstLineOf({ people: people.length, photos: photos.length, entries: entries.length });
  for (const one of people) yield JSON.stringify(one);
  for (const one of photos) yield JSON.stringify(one);
  for (const one of entries) yield JSON.stringify(one);
}

/** What one line of the file holds, or why it is refused. */
export type LineTaken =
  | { readonly is: "counts"; readonly counts: RecordCounts }
  | { readonly is: "person"; readonly person: Held }
  | { readonly is: "photo"; readonly photo: Photo }
  | { readonly is: "entry"; readonly entry: Entry }
  | { readonly is: "nothing" }
  | { readonly is: "refused"; readonly refusal: Refusal };

/** Reads a file of records line by line, each by itself: nothing of it is kept here. `ends` says whether the file was whole. */
export class RecordsReader {
  private counts: RecordCounts | undefined;
  private line = 0;
  /** Of the last line that was not empty: empty ones at the end are passed over. */
  private last = 0;

  take(text: string): LineTaken {
    this.line += 1;
    if (this.line > 1 && text.trim() === "") return { is: "nothing" };
    this.last = this.line;
    const { counts } = this;
    if (counts === undefined) return this.takeFirst(text);
    const where = `line ${this.line}`;
    const at = this.line - 2;
    if (at < counts.people)
      return takenFrom(readLine(text, where, heldSchema), (person) => ({ is: "person", person }));
    if (at < counts.people + counts.photos)
      return takenFrom(readLine(text, where, photoSchema), (photo) => ({ is: "photo", photo }));
    if (at < wantedOf(counts))
      return takenFrom(readLine(text, where, entrySchema), (entry) => ({ is: "entry", entry }));
    return { is: "nothing" };
  }

  /** Why the file was not whole; undefined where it was. */
  ends(): Refusal | undefined {
    const wanted = this.counts && wantedOf(this.counts);
    const read = this.last - 1;
    return wanted === undefined || read === wanted ? undefined : notAll(read, wanted);
  }

  private takeFirst(text: string): LineTaken {
    const first = readFirst(text);
    if ("refusal" in first) return { is: "refused", refusal: first.refusal };
    this.counts = first;
    return { is: "counts", counts: first };
  }
}

const wantedOf = ({ people, photos, entries }: RecordCounts): number => people + photos + entries;

const takenFrom = <One>(read: LineRead<One>, take: (value: One) => LineTaken): LineTaken =>
  "value" in read ? take(read.value) : { is: "refused", refusal: read.refusal };

/** All records of a file's lines, or why not: never a part, never an exception. Empty lines at the end are passed over. */
export function readRecords(lines: Iterable<string>): RecordsRead {
  const reader = new RecordsReader();
  const refusals: Refusal[] = [];
  const records = { people: [] as Held[], photos: [] as Photo[], entries: [] as Entry[] };
  let none = true;
  for (const text of lines) {
    const taken = reader.take(text);
    if (taken.is === "refused" && none) return { ok: false, refusals: [taken.refusal] };
    none = false;
    if (taken.is === "person") records.people.push(taken.person);
    if (taken.is === "photo") records.photos.push(taken.photo);
    if (taken.is === "entry") records.entries.push(taken.entry);
    if (taken.is === "refused" && refusals.length < MOST_REFUSALS) refusals.push(taken.refusal);
  }
  // A file of nothing is one empty line.
  if (none) return readRecords([""]);
  const cut = reader.ends();
  if (cut) return { ok: false, refusals: [cut] };
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, records };
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
