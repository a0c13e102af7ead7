import { show, usualUnit } from "../engine/quantity/index.ts";
import { STATIONS } from "../terms/places.ts";
import { aboutPath, asItIs, type Say } from "./about-path.ts";
import type { CaseFile } from "./case.ts";
import { inPlace, ORDER_OF_WORK } from "./order-of-work.ts";
import { getAt, stepsOf } from "./path.ts";
import { FIELDS, type FieldKind, type FieldRecord, fieldAt } from "./schema-fields.ts";
import { SURVEY_LIMITS } from "./sizes.ts";

/** One question of a visit, out of the schema. */
export interface Question {
  readonly section: string;
  readonly path: string;
  /** The question in plain words. */
  readonly asks: string;
  readonly kind: FieldKind;
  /** What may be typed, short: "90 to 360 mm", "no / unknown / not-asked / yes". */
  readonly hint: string;
  readonly words?: readonly string[];
  readonly range?: readonly [number, number];
  readonly unit?: string;
  /** What Enter leaves standing. */
  readonly enterMeans: string;
  /** Asked only once something stands at this path of the draft. */
  readonly after?: string;
}

/** Lists whose items are asked one by one, and the place of an item that comes first: without it there is no item. */
const FIRST_OF_ITEM: { readonly [list: string]: string } = {
  "horses[].traces": "points",
  platesAtHand: "label",
  "saddle.past.alterations": "date",
  "saddle.inserts.positions": "name",
};
/** How many items are offered: a trace a station, cold, and once more after work; a handful of plates, alterations and positions. */
const ITEMS: { readonly [list: string]: number } = {
  "horses[].traces": 2 * STATIONS.length,
  platesAtHand: 4,
  "saddle.past.alterations": 4,
  "saddle.inserts.positions": 6,
};

/** Not asked: set by the place in the list, typed before the points, or too long to type in a terminal. */
const LEFT_OUT = /\.traces\[\]\.(station|repeats|unit)|\.profile\.unit/;

/** Every question of a visit in the order of the work, for so many horses (1 to 8). */
export function questions(horses = 1): readonly Question[] {
  return ORDER_OF_WORK.flatMap(({ title, asks }) =>
    asks.flatMap((place) => placesFor(place, horses).map((one) => questionAt(title, one.field, one.path))),
  );
}

/** The next drawing of a tracing that was drawn already, as a question of its own; undefined for any other, and after the last that is allowed. */
export function drawingAgain(question: Question, draft: CaseFile): Question | undefined {
  const trace = /^(.*\.traces\[\d+\])\.points$/.exec(question.path)?.[1];
  if (trace === undefined || getAt(draft, stepsOf(question.path)) === undefined) return undefined;
  const again = getAt(draft, stepsOf(`${trace}.repeats`));
  const drawn = Array.isArray(again) ? again.length : 0;
  if (drawn >= SURVEY_LIMITS.traceRepeats) return undefined;
  const path = `${trace}.repeats[${drawn}]`;
  return { ...question, path, asks: asksAt(path) };
}

/** Whether a question is to be put now: some hang on an earlier answer. */
export function isAsked(question: Question, draft: unknown): boolean {
  if (question.after === undefined) return true;
  const earlier = getAt(draft, stepsOf(question.after));
  // A reaction of grade 0 is not tried again.
  return earlier !== undefined && earlier !== 0;
}

interface Placed {
  readonly field: FieldRecord;
  readonly path: string;
}

function placesFor(place: string, horses: number): Placed[] {
  const leaves = FIELDS.filter(
    ({ path, kind }) => inPlace(path, place) && kind !== "group" && kind !== "list" && !LEFT_OUT.test(path),
  );
  const forHorse = place.startsWith("horses[]") ? Array.from({ length: horses }, (_, at) => at) : [undefined];
  return forHorse.flatMap((horse) =>
    byItem(leaves).map(({ field, path }) => ({
      field,
      path: horse === undefined ? path : path.replace("horses[]", `horses[${horse}]`),
    })),
  );
}

/** Leaves of a list once for each item, the item's first question foremost. */
function byItem(leaves: readonly FieldRecord[]): Placed[] {
  const lists = Object.keys(ITEMS);
  const listOf = (path: string) => lists.find((list) => path.startsWith(`${list}[]`));
  return leaves.flatMap((field, at): Placed[] => {
    const list = listOf(field.path);
    if (list === undefined) return [{ field, path: field.path }];
    if (at > 0 && listOf(leaves[at - 1]?.path ?? "") === list) return [];
    const inList = leaves.filter((leaf) => listOf(leaf.path) === list);
    const first = `${list}[].${FIRST_OF_ITEM[list]}`;
    const ordered = [
      ...inList.filter((leaf) => leaf.path === first),
      ...inList.filter((leaf) => leaf.path !== first),
    ];
    return Array.from({ length: ITEMS[list] ?? 1 }, (_, item) =>
      ordered.map((leaf) => ({ field: leaf, path: leaf.path.replace(`${list}[]`, `${list}[${item}]`) })),
    ).flat();
  });
}

function questionAt(section: string, field: FieldRecord, path: string): Question {
  const after = afterFor(field, path);
  const { lo, hi, unit, words } = field;
  return {
    section,
    path,
    asks: asksAt(path),
    kind: field.kind,
    hint: hintFor(field),
    enterMeans: field.required
      ? "this place stays empty"
      : field.otherwise === ""
        ? "left empty"
        : field.otherwise,
    ...(words ? { words } : {}),
    ...(lo !== undefined && hi !== undefined && field.kind !== "words" ? { range: [lo, hi] as const } : {}),
    ...(unit ? { unit } : {}),
    ...(after === undefined ? {} : { after }),
  };
}

/** A question in plain words, each of its parts through `say`. */
export function asksAt(path: string, say: Say = asItIs): string {
  const trace = /\.traces\[(\d+)\]\.points$/.exec(path);
  const about = trace
    ? `${say(traceName(Number(trace[1])))}: ${say(fieldAt(path)?.about ?? "")}`
    : aboutPath(path, say);
  return `${about.charAt(0).toUpperCase()}${about.slice(1)}?`;
}

/** As `withStation` takes them: each station in turn, then each once more. */
const traceName = (at: number): string =>
  `${STATIONS[at % STATIONS.length] ?? ""} trace${at < STATIONS.length ? "" : ", once more, such as after work"}`;

/** A later question of a list's item waits for its first one, that for the item before; "again?" waits for a grade. */
function afterFor(field: FieldRecord, path: string): string | undefined {
  if (path.endsWith(".twice")) return path.replace(/twice$/, "grade");
  const list = Object.keys(FIRST_OF_ITEM).find((one) => field.path.startsWith(`${one}[]`));
  if (list === undefined) return undefined;
  const first = FIRST_OF_ITEM[list];
  const item = /^(.*(?:traces|alterations|platesAtHand|positions)\[)(\d+)\]/.exec(path);
  if (!item) return undefined;
  const at = field.path === `${list}[].${first}` ? Number(item[2]) - 1 : Number(item[2]);
  return at < 0 ? undefined : `${item[1]}${at}].${first}`;
}

function hintFor(field: FieldRecord): string {
  if (field.quantity !== undefined && field.lo !== undefined && field.hi !== undefined) {
    const unit = usualUnit(field.quantity);
    return `${field.lo} to ${show(field.hi * unit.times, field.quantity)}`;
  }
  if (field.words) return field.words.join(" / ");
  if (field.kind === "whole-number") return `${field.lo} to ${field.hi}`;
  if (field.kind === "points")
    return 'pairs parted by ";", such as -90 -60; -80 -52; … in mm; for inches or cm begin with in or cm';
  return field.kind === "date" ? "yyyy-mm-dd" : "words";
}
