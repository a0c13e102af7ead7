import { type PackedFile, packed } from "@treewright/zip/write.ts";
import {
  type Entry,
  endsOf,
  grouped,
  linesOf,
  pageOf,
  photoPath,
  type Records,
  type Store,
  type ToldPaper,
  tablesOf,
  visitsTold,
} from "../records.ts";

/** Where the records lie in a copy. */
export const RECORDS_FILE = "records.jsonl";

/** What one copy may hold. Working limits, no source: what a browser still unpacks on a phone, far above a practice of ten years. */
export const COPY_LIMITS = {
  files: 50_000,
  bytes: 4_000_000_000,
  /** Of the records' text: a browser's longest text is about 500 MB. */
  recordsBytes: 400_000_000,
} as const;

/** A paper that was made for a copy. */
export interface MadePaper extends ToldPaper {
  readonly content: Uint8Array;
}

/** A visit's papers, and its latest entries when they were made. */
export interface VisitPapers {
  readonly ends: string;
  readonly papers: readonly MadePaper[];
}

/** Papers by the subject of their visit, and what is said of those that are not there. */
export interface Papers {
  readonly made: ReadonlyMap<string, VisitPapers>;
  readonly without: readonly string[];
}

/** Everything of a store as one ZIP: records, photos, papers, tables, and a page that opens without the app. */
export async function copyOf(store: Store, papers: Papers, now: Date): Promise<Blob> {
  const records = await recordsOf(store);
  return packed(filesOf(store, records, papers, now), now);
}

async function recordsOf(store: Store): Promise<Records> {
  const entries: Entry[] = [];
  for await (const piece of store.everyEntry()) entries.push(...piece);
  return { people: await store.people(), photos: await store.photos(), entries };
}

async function* filesOf(
  store: Store,
  records: Records,
  papers: Papers,
  now: Date,
): AsyncGenerator<PackedFile> {
  const made = stillTrue(papers, records.entries);
  const visits = visitsTold(records, made);
  const page = { madeAt: now.toISOString(), without: papers.without };
  yield { path: "index.html", content: pageOf(visits, page) };
  yield { path: RECORDS_FILE, content: `${[...linesOf(records)].join("\n")}\n` };
  yield* tablesOf(visits, records.people);
  for (const ofVisit of made.values()) yield* ofVisit;
  for (const photo of records.photos) {
    const kept = await store.photo(photo.hash);
    if (kept === undefined) throw new Error(`the photo ${photo.hash} is listed and not there`);
    yield { path: photoPath(photo), content: kept.content };
  }
}

/** Papers of a visit that was written to while they were being made are of another visit than the records tell: they stay out. */
function stillTrue({ made }: Papers, entries: readonly Entry[]): ReadonlyMap<string, readonly MadePaper[]> {
  const bySubject = grouped(entries, ({ subject }) => subject);
  return new Map(
    [...made].flatMap(([subject, { ends, papers }]) =>
      endsOf(bySubject.get(subject) ?? []).join() === ends ? [[subject, papers] as const] : [],
    ),
  );
}
