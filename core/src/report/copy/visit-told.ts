import { grouped } from "../../engine/grouped.ts";
import type { Entry } from "../../records/entry.ts";
import { GRAPH_KINDS } from "../../records/kinds.ts";
import { committedSchema, type Held, revealed } from "../../records/personal.ts";
import type { Photo, Records } from "../../records/records-file.ts";
import { standingOf } from "../../records/stands.ts";
import { aboutPath } from "../../survey/about-path.ts";
import { inPlace, ORDER_OF_WORK, sectionOf } from "../../survey/order-of-work.ts";
import { OF_VISIT } from "../../survey/recorded/places.ts";
import { fieldAt } from "../../survey/schema-fields.ts";

/*
 * A visit as a reader without the program is told of it: by its entries alone, whatever stands in them. A value that its place would
 * not take today is told all the same.
 */

/** What stands at one place; where two said different things, each of them. */
export interface Told {
  /** The place, as the case file names it. */
  readonly at: string;
  /** Title of its step in the order of the work; empty for a place that no question fills. */
  readonly part: string;
  /** The place in plain words. */
  readonly asks: string;
  /** As typed; a person's name where it is still held. */
  readonly value: unknown;
  /** The unit that is meant where none was typed; empty where there is none. */
  readonly unit: string;
  readonly saidAt: string;
  readonly zone: string;
  /** Id of who said it. */
  readonly author: string;
  /** Id of the person whose field it is; undefined where it is nobody's. */
  readonly person: string | undefined;
  readonly state: "stands" | "disputed" | "erased";
}

/** A paper of a visit, by its path in the copy. */
export interface ToldPaper {
  readonly name: string;
  readonly path: string;
}

export interface ToldVisit {
  readonly subject: string;
  /** Every place of the case that something stands at, in the order of the work. */
  readonly said: readonly Told[];
  /** Places of the visit itself (`OF_VISIT`): what was answered, agreed and done. */
  readonly ofVisit: ReadonlyMap<string, Told>;
  /** Photos that an entry of the visit cites by their hash. */
  readonly photos: readonly Photo[];
  readonly papers: readonly ToldPaper[];
  readonly entries: number;
}

/** What a visit is told with: who is held, by person; the photos, by hash; papers, by the visit's subject. */
export interface Beside {
  readonly held: ReadonlyMap<string, readonly Held[]>;
  readonly photos: ReadonlyMap<string, Photo>;
  readonly papers: ReadonlyMap<string, readonly ToldPaper[]>;
}

export const besideOf = (
  people: readonly Held[],
  photos: readonly Photo[],
  papers: Beside["papers"],
): Beside => ({
  held: grouped(people, ({ person }) => person),
  photos: new Map(photos.map((photo) => [photo.hash, photo])),
  papers,
});

/** Every visit of the records, the latest day first. */
export function visitsTold(
  { entries, people, photos }: Records,
  papers: Beside["papers"],
): readonly ToldVisit[] {
  const beside = besideOf(people, photos, papers);
  return [...grouped(entries, ({ subject }) => subject)]
    .filter(([, own]) => own.some(({ body }) => body.at === OF_VISIT.begun))
    .map(([subject, own]) => visitTold(subject, own, beside))
    .sort((a, b) => (rank(a) < rank(b) ? 1 : -1));
}

const rank = (visit: ToldVisit): string => `${saidIn(visit, "visit.date")} ${visit.subject}`;

/** One visit. own: every entry of its subject. */
export function visitTold(subject: string, own: readonly Entry[], beside: Beside): ToldVisit {
  const all = [...standingOf(own, GRAPH_KINDS).values()].flatMap(({ at, entries, differ }) =>
    entries
      .filter(({ value }) => value !== undefined)
      .slice(0, differ ? undefined : 1)
      .map(({ entry, value }) => toldOf(at, entry, value, differ, beside.held)),
  );
  const cited = new Set(own.flatMap(({ body }) => JSON.stringify(body).match(/[0-9a-f]{64}/g) ?? []));
  return {
    subject,
    said: all.filter(({ at }) => fieldAt(at) !== undefined).sort(inOrderOfWork),
    ofVisit: new Map(all.filter(({ at }) => fieldAt(at) === undefined).map((one) => [one.at, one])),
    photos: [...cited].sort().flatMap((hash) => beside.photos.get(hash) ?? []),
    papers: beside.papers.get(subject) ?? [],
    entries: own.length,
  };
}

function toldOf(at: string, entry: Entry, value: unknown, differ: boolean, held: Beside["held"]): Told {
  const committed = committedSchema.safeParse(value);
  const name = committed.success
    ? revealed(committed.data, held.get(committed.data.person) ?? [])
    : undefined;
  return {
    at,
    part: sectionOf(at)?.title ?? "",
    asks: aboutPath(at),
    value: committed.success ? name : value,
    unit: fieldAt(at)?.unit ?? "",
    saidAt: entry.saidAt,
    zone: entry.zone,
    author: entry.author,
    person: committed.success ? committed.data.person : undefined,
    state: committed.success && name === undefined ? "erased" : differ ? "disputed" : "stands",
  };
}

/** What stands at one place of the case, as a text; empty where nothing does or where it is disputed. */
export function saidIn({ said }: ToldVisit, at: string): string {
  const one = said.find((other) => other.at === at);
  return one?.state === "stands" ? inWords(one.value) : "";
}

/** What stands at one place of the visit itself, as a text. */
export const ofVisitIn = ({ ofVisit }: ToldVisit, at: string): string => inWords(ofVisit.get(at)?.value);

/** Points as they are typed, "-90 -60; -80 -52"; a full reading, or whatever else there may be, as JSON. */
export function inWords(value: unknown): string {
  if (value === undefined || value === null) return "";
  if (typeof value === "string") return value;
  if (isPoints(value)) return value.map((point) => point.map(String).join(" ")).join("; ");
  return typeof value === "object" ? JSON.stringify(value) : String(value);
}

const isPoints = (value: unknown): value is readonly (readonly (number | string)[])[] =>
  Array.isArray(value) &&
  value.every(
    (point) =>
      Array.isArray(point) && point.every((one) => typeof one === "number" || typeof one === "string"),
  );

/** A visit as the list of visits names it. */
export interface ListedForCopy {
  readonly subject: string;
  readonly day: string;
  readonly horse: string;
}

export const listedOf = (visit: ToldVisit): ListedForCopy => ({
  subject: visit.subject,
  day: saidIn(visit, "visit.date"),
  horse: saidIn(visit, "horses[0].name"),
});

/** In the order in which the work asks, places of one asking by their name: so that the same records give the same text. */
function inOrderOfWork(a: Told, b: Told): number {
  const [one, other] = [sortsBy(a), sortsBy(b)];
  return one < other ? -1 : one > other ? 1 : 0;
}

const padded = (count: number | string): string => String(count).padStart(6, "0");

/** What no question fills comes first. */
function sortsBy({ at }: Told): string {
  const path = at.replace(/\[\d+\]/g, "[]");
  const asked = ASKED.findIndex((place) => inPlace(path, place));
  return padded(asked + 1) + at.replace(/\d+/g, padded);
}

const ASKED: readonly string[] = ORDER_OF_WORK.flatMap(({ asks }) => asks);
