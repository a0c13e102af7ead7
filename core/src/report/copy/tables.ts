import { type Cell, csvHead, csvRow } from "../../engine/csv.ts";
import type { Held } from "../../records/personal.ts";
import { OF_VISIT } from "../../survey/recorded/places.ts";
import { inWords, ofVisitIn, saidIn, type Told, type ToldVisit } from "./visit-told.ts";

/*
 * What was recorded as tables for a spreadsheet. Each is one list of columns: its text and its page of reference
 * (`docs/reference/tables.md`) are both made from that. To be read, not to be brought in again: that is what the records are for.
 */

export interface Column<Row> {
  readonly name: string;
  readonly says: string;
  readonly of: (row: Row) => Cell;
}

const OWNER = "visit.owner";

export const VISIT_COLUMNS: readonly Column<ToldVisit>[] = [
  { name: "visit", says: "id of the visit", of: ({ subject }) => subject },
  { name: "day", says: "day of the visit, yyyy-mm-dd", of: (one) => saidIn(one, "visit.date") },
  { name: "horse", says: "name of the horse", of: (one) => saidIn(one, "horses[0].name") },
  { name: "yard", says: "name of the yard", of: (one) => saidIn(one, "visit.place") },
  { name: "owner", says: "legal owner of the saddle; empty once erased", of: (one) => saidIn(one, OWNER) },
  { name: "rider", says: "name of the rider; empty once erased", of: (one) => saidIn(one, "rider.name") },
  { name: "saddle", says: "name of the saddle", of: (one) => saidIn(one, "saddle.name") },
  { name: "asked", says: "what the owner asked", of: (one) => saidIn(one, "visit.asked") },
  { name: "begun", says: "moment it was begun, UTC", of: (one) => ofVisitIn(one, OF_VISIT.begun) },
  {
    name: "finished",
    says: "moment it was finished, UTC; empty while it is open",
    of: (one) => ofVisitIn(one, OF_VISIT.finished),
  },
  {
    name: "horse_answer",
    says: "may this horse work: the answer's id when it was last looked at",
    of: (one) => ofVisitIn(one, OF_VISIT.horseAnswer),
  },
  {
    name: "saddle_answer",
    says: "is this saddle sound: the answer's id",
    of: (one) => ofVisitIn(one, OF_VISIT.saddleAnswer),
  },
  {
    name: "work_answer",
    says: "what should be done: the answer's id",
    of: (one) => ofVisitIn(one, OF_VISIT.workAnswer),
  },
  { name: "agreed_work", says: "what was agreed", of: (one) => ofVisitIn(one, OF_VISIT.agreedWork) },
  { name: "agreed_risks", says: "risks that were told", of: (one) => ofVisitIn(one, OF_VISIT.agreedRisks) },
  { name: "agreed_worse", says: "the worse case", of: (one) => ofVisitIn(one, OF_VISIT.agreedWorse) },
  {
    name: "agreed_limit",
    says: "the limit that is not passed",
    of: (one) => ofVisitIn(one, OF_VISIT.agreedLimit),
  },
  { name: "done", says: "what was done, in one line", of: (one) => ofVisitIn(one, OF_VISIT.done) },
  {
    name: "next_in_weeks",
    says: "weeks until the next look",
    of: (one) => ofVisitIn(one, OF_VISIT.nextInWeeks),
  },
  { name: "entries", says: "how many entries were recorded of it", of: ({ entries }) => entries },
  { name: "photos", says: "how many photos it cites", of: ({ photos }) => photos.length },
];

export interface ReadingRow {
  readonly visit: ToldVisit;
  readonly told: Told;
}

export const READING_COLUMNS: readonly Column<ReadingRow>[] = [
  { name: "visit", says: "id of the visit", of: ({ visit }) => visit.subject },
  { name: "day", says: "day of the visit", of: ({ visit }) => saidIn(visit, "visit.date") },
  { name: "horse", says: "name of the horse", of: ({ visit }) => saidIn(visit, "horses[0].name") },
  { name: "part", says: "step of the visit in which it is asked", of: ({ told }) => told.part },
  {
    name: "place",
    says: "the place, as [the case file](case-file.md) names it; a place of the visit itself (`left.done`) too",
    of: ({ told }) => told.at,
  },
  { name: "asks", says: "the place in plain words", of: ({ told }) => told.asks },
  {
    name: "value",
    says: "as typed: a number, a text, points as `-90 -60; -80 -52`, a full reading as JSON; empty where it was erased",
    of: ({ told }) => (typeof told.value === "number" ? told.value : inWords(told.value)),
  },
  { name: "unit", says: "the unit that is meant where the value has none", of: ({ told }) => told.unit },
  { name: "said_at", says: "what the clock said, UTC", of: ({ told }) => told.saidAt },
  { name: "zone", says: "time zone of the place (IANA)", of: ({ told }) => told.zone },
  { name: "author", says: "id of who said it", of: ({ told }) => told.author },
  {
    name: "state",
    says: "`stands`; `disputed` where two said different things, a row for each; `erased`",
    of: ({ told }) => told.state,
  },
];

export const PERSON_COLUMNS: readonly Column<Held & { readonly visits: readonly string[] }>[] = [
  { name: "person", says: "id of the person", of: ({ person }) => person },
  { name: "is", says: "as what the name was typed: `owner`, `name`, `seenBy`, …", of: ({ field }) => field },
  { name: "name", says: "the name", of: ({ value }) => value },
  {
    name: "visits",
    says: "ids of the visits that name it, parted by spaces",
    of: ({ visits }) => visits.join(" "),
  },
];

/** Text that comes next in a file of the copy, by the file's path in it. */
export interface Piece {
  readonly path: string;
  readonly text: string;
}

const PATHS = {
  visits: "tables/visits.csv",
  readings: "tables/readings.csv",
  people: "tables/people.csv",
} as const;

/** What the tables begin with. */
export function tablesBegin(): readonly Piece[] {
  const head = <Row>(path: string, columns: readonly Column<Row>[]): Piece => ({
    path,
    text: csvHead(columns.map(({ name }) => name)),
  });
  return [
    head(PATHS.visits, VISIT_COLUMNS),
    head(PATHS.readings, READING_COLUMNS),
    head(PATHS.people, PERSON_COLUMNS),
  ];
}

/** A visit's rows. */
export function visitRows(visit: ToldVisit): readonly Piece[] {
  const readings = [...visit.said, ...visit.ofVisit.values()].map((told) => ({ visit, told }));
  return [
    { path: PATHS.visits, text: rowOf(VISIT_COLUMNS, visit) },
    { path: PATHS.readings, text: readings.map((one) => rowOf(READING_COLUMNS, one)).join("") },
  ];
}

/** A row for each name that is held. visits: of a person, by the person's id. */
export const personRows = (
  people: readonly Held[],
  visits: ReadonlyMap<string, readonly string[]>,
): readonly Piece[] =>
  people.map((one) => ({
    path: PATHS.people,
    text: rowOf(PERSON_COLUMNS, { ...one, visits: visits.get(one.person) ?? [] }),
  }));

const rowOf = <Row>(columns: readonly Column<Row>[], row: Row): string =>
  csvRow(columns.map(({ of }) => of(row)));

/** The page of reference, as Markdown. */
export function describeTables(): string {
  const section = <Row>(path: string, says: string, columns: readonly Column<Row>[]): string =>
    [
      `## \`${path}\``,
      "",
      says,
      "",
      "| column | what |",
      "| --- | --- |",
      ...columns.map((one) => `| \`${one.name}\` | ${one.says} |`),
      "",
    ].join("\n");
  return [
    HEAD,
    section(PATHS.visits, "One row for each visit, the latest day first.", VISIT_COLUMNS),
    section(PATHS.readings, "One row for each place of a visit that something stands at.", READING_COLUMNS),
    section(PATHS.people, "One row for each name that is still held.", PERSON_COLUMNS),
  ].join("\n");
}

const HEAD = `# The tables of a copy

<!-- Made from the columns by \`npm run docs\`. Change \`core/src/report/copy/tables.ts\`, not this page. -->

Text tables as RFC 4180 has them: cells parted by commas, every cell in quotes, lines ended by CR LF, UTF-8 with its mark in front.
They are for reading and sorting. What can be brought back without loss is \`records.jsonl\` ([records](records.md)).

**A cell that a spreadsheet would work out as a formula** – one that begins with \`=\`, \`+\`, \`-\`, \`@\`, their full-width twins, a tab or
a line's end, also behind spaces or signs that no eye sees – has one apostrophe in front (OWASP Foundation, "CSV Injection"). A plain
number is no formula and has none: \`-3\` and \`-3.5\` stay what they are; \`-3 mm\` is \`'-3 mm\`. To have the text as it was typed, take one
apostrophe off every cell that has such a beginning behind its apostrophes; a text that was typed with an apostrophe there has two, so
nothing is lost. Treewright does so where it reads a table.

**Limits.** A name is never part of a file's name. A spreadsheet may cut a very long cell, and may show a day or an id its own way: the
file itself is right. The apostrophe is advice that spreadsheets follow today, not a wall: open what a stranger wrote with care.
`;
