import { type PackedFile, packed } from "@treewright/zip/write.ts";
import { listed, VISIT } from "../practice/card.ts";
import {
  type Beside,
  besideOf,
  CopyTexts,
  type Entry,
  endsOf,
  firstLineOf,
  type Held,
  type Photo,
  type Piece,
  photoPath,
  type Store,
  type ToldPaper,
  visitTold,
} from "../records.ts";
import { GrowingText } from "./growing.ts";

/** Where the records lie in a copy. */
export const RECORDS_FILE = "records.jsonl";

/** What one copy may hold. Working limits, no source: far above a practice of many years (30,000 visits with 2 million entries: 1.3 GB of records). */
export const COPY_LIMITS = {
  files: 50_000,
  bytes: 8_000_000_000,
  /** Of the records' text. */
  recordsBytes: 3_000_000_000,
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

/** How far a copy has come: visits told, of how many. */
export type TellCopy = (visits: number, of: number) => void;

/**
 * Everything of a store as one ZIP: records, photos, papers, tables, and a page that opens without the app. Visits and entries are
 * read in pieces and written as they come: nothing grows in memory with their number but the list of visits and the names.
 */
export async function copyOf(
  store: Store,
  papers: Papers,
  now: Date,
  tell: TellCopy = () => undefined,
): Promise<Blob> {
  return packed(filesOf(store, papers, now, tell), now);
}

async function* filesOf(store: Store, papers: Papers, now: Date, tell: TellCopy): AsyncGenerator<PackedFile> {
  const people = await store.people();
  const photos = await store.photos();
  const told = await visitsOf(store, papers, besideOf(people, photos, new Map()), now, tell);
  for (const [path, text] of told.texts) yield { path, content: text.whole() };
  yield { path: RECORDS_FILE, content: await recordsOf(store, people, photos) };
  yield* told.papers;
  for (const photo of photos) {
    const kept = await store.photo(photo.hash);
    if (kept === undefined) throw new Error(`the photo ${photo.hash} is listed and not there`);
    yield { path: photoPath(photo), content: kept.content };
  }
}

/** Pages and tables by their path, and the papers that are still true of their visits. */
async function visitsOf(store: Store, { made, without }: Papers, beside: Beside, now: Date, tell: TellCopy) {
  const visits = (await store.cards(VISIT)).map(listed).reverse();
  const list = visits.map(({ subject, day, horseName }) => ({ subject, day, horse: horseName }));
  const copy = new CopyTexts(list, { madeAt: now.toISOString(), without });
  const texts = new Map<string, GrowingText>();
  const put = (pieces: readonly Piece[]): void => {
    for (const { path, text } of pieces) {
      const file = texts.get(path) ?? new GrowingText();
      texts.set(path, file);
      file.add(text);
    }
  };
  const papers: MadePaper[] = [];
  put(copy.begin());
  for (const [at, { subject }] of visits.entries()) {
    const own = await store.entriesOf(subject);
    const ofVisit = stillTrue(made.get(subject), own);
    papers.push(...ofVisit);
    put(copy.visit(visitTold(subject, own, { ...beside, papers: new Map([[subject, ofVisit]]) })));
    tell(at + 1, visits.length);
  }
  put(copy.end([...beside.held.values()].flat()));
  return { texts, papers };
}

/** The records' text. Its first line tells how many of each there are, which is known at the end. */
async function recordsOf(store: Store, people: readonly Held[], photos: readonly Photo[]): Promise<Blob> {
  const text = new GrowingText();
  const add = (lines: readonly unknown[]) =>
    text.add(lines.map((one) => `${JSON.stringify(one)}\n`).join(""));
  add(people);
  add(photos);
  let entries = 0;
  for await (const piece of store.everyEntry()) {
    add(piece);
    entries += piece.length;
  }
  const counts = { people: people.length, photos: photos.length, entries };
  return new Blob([`${firstLineOf(counts)}\n`, text.whole()]);
}

/** Papers of a visit that was written to while they were being made are of another visit than the records tell: they stay out. */
const stillTrue = (made: VisitPapers | undefined, own: readonly Entry[]): readonly MadePaper[] =>
  made !== undefined && endsOf(own).join() === made.ends ? made.papers : [];
