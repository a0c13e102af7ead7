import { show, usualUnit } from "../engine/quantity/index.ts";
import { CASE_BYTES_MAX, CASE_FORMAT, CASE_VERSION } from "./case.ts";
import { INSTRUMENT_RECORDS, type InstrumentRecord } from "./instrument-records.ts";
import { JOB_FORMAT, JOB_PATH, JOB_VERSION } from "./job.ts";
import { FIELDS, type FieldRecord, JOB_FIELDS, STOCK_FIELDS } from "./schema-fields.ts";
import { STOCK_FORMAT, STOCK_PATH, STOCK_VERSION } from "./stock.ts";

/** The reference page of the case file, as Markdown, out of the schema and the table of instruments. */
export function describeCase(): string {
  return [HEAD, ...sections(FIELDS, ""), INSTRUMENTS_HEAD, ...INSTRUMENT_RECORDS.map(instrumentRow), ""].join(
    "\n",
  );
}

/** The reference page of a stock of plates. */
export function describeStock(): string {
  return [STOCK_HEAD, ...sections(STOCK_FIELDS, STOCK_PATH)].join("\n");
}

/** The reference page of a job at the press. */
export function describeJob(): string {
  return [JOB_HEAD, ...sections(JOB_FIELDS, JOB_PATH)].join("\n");
}

const JOB_HEAD = `# The job file

<!-- Made from the schema by \`npm run docs\`. Change the schema, not this page. -->

A job is one JSON file: what is wanted of one head at the press, the head before the first pass, and every pass as it
was measured. It begins \`{ "format": "${JOB_FORMAT}", "version": ${JOB_VERSION}, … }\`. Measured places hold what they
hold in [the case file](case-file.md). A tree dressed and the same tree bare are two jobs. For the bench alone.
`;

const STOCK_HEAD = `# The stock file

<!-- Made from the schema by \`npm run docs\`. Change the schema, not this page. -->

A stock is one JSON file: the loose plates of a practice, each as it was measured on the bench. It begins
\`{ "format": "${STOCK_FORMAT}", "version": ${STOCK_VERSION}, … }\`. Measured places hold what they hold in
[the case file](case-file.md). A maker's word is kept as it is and never compared: what counts is what was measured,
at the level, on the face and with the instrument that stand beside it.
`;

const HEAD = `# The case file

<!-- Made from the schema by \`npm run docs\`. Change the schema, not this page. -->

A case is one JSON file: one saddle, the one to eight horses that wear it, the people, the plates at hand.
It begins \`{ "format": "${CASE_FORMAT}", "version": ${CASE_VERSION}, … }\` and is at most ${CASE_BYTES_MAX / 1e6} MB.
Older versions are read and brought up to date; a file of a newer version is refused and left alone.

**A measured place** holds one of:

- a number in the usual unit: \`205\`
- a number with its unit, in quotes: \`"205 mm"\`, \`"20.5 cm"\`, \`"8 1/4 in"\`, \`"52°"\`, \`"11 st 6 lb"\`, \`"8,5 cm"\`.
  \`"1,425"\` could be two numbers and is asked back.
- the whole reading: \`{ "read": [205, 206, 204], "by": "calliper", "uncertainty": 1 }\`. Repeats are lifted off and read again;
  the mean is used. \`uncertainty\` is the standard uncertainty and takes the place of the instrument's own.
- why it is missing: \`"unknown"\` (nobody knows), \`"not-asked"\`, \`"not-looked"\`, \`"cannot-be-seen"\`. None of these is a no.

Near is the horse's left, off its right. In a trace y grows to the off side and z upward, the top of the back is at [0, 0], and
the near side comes first. The line may double back; it may not cross itself. Ranges only catch slips of the hand: being inside one
says nothing about fit.
`;

/** One table for each part of the case: a part is a group that holds fields of its own. */
function sections(fields: readonly FieldRecord[], root: string): string[] {
  const own = (group: FieldRecord) => ownOf(group, fields);
  const groups = fields.filter((field) => field.kind === "group").filter((group) => own(group).length > 0);
  return groups.map((group) => {
    const title = group.path === root ? "The file" : `\`${group.path}\``;
    const rows = own(group).map((field) => row(field, group.path));
    return [
      `## ${title}`,
      "",
      ...(group.about === "" || group.path === root ? [] : [`${sentence(group.about)}`, ""]),
      "| name | what | unit, range or words | left out |",
      "| --- | --- | --- | --- |",
      ...rows,
      "",
    ].join("\n");
  });
}

const ownOf = (group: FieldRecord, fields: readonly FieldRecord[]): FieldRecord[] =>
  fields.filter(
    (field) => field.kind !== "group" && field.path !== "" && parentOf(field.path) === group.path,
  );

const parentOf = (path: string): string => (path.includes(".") ? path.slice(0, path.lastIndexOf(".")) : "");

function row(field: FieldRecord, group: string): string {
  const name = group === "" ? field.path : field.path.slice(group.length + 1);
  return `| \`${name}\` | ${cell(field.about)} | ${cell(holds(field))} | ${field.required ? "not read" : cell(leftOut(field))} |`;
}

function leftOut(field: FieldRecord): string {
  if (field.otherwise !== "") return field.otherwise;
  return field.kind === "list" ? "none" : "empty";
}

function holds(field: FieldRecord): string {
  const { lo, hi, quantity, by } = field;
  if (quantity !== undefined && lo !== undefined && hi !== undefined) {
    return `${lo} to ${show(hi * usualUnit(quantity).times, quantity)}, by ${by}`;
  }
  if (field.words) return field.words.join(", ");
  if (field.kind === "words")
    return `words, ${lo === undefined ? "" : `${lo} to `}${hi} letters${lo === undefined ? " at most" : ""}`;
  if (field.kind === "list" || field.kind === "points")
    return `${lo ?? 0} to ${hi} ${field.kind === "points" ? "points" : "items"}`;
  if (field.kind === "whole-number") return `whole, ${lo} to ${hi}`;
  return field.kind === "date" ? "yyyy-mm-dd" : "true, false";
}

const cell = (text: string): string => text.replace(/\|/g, "\\|");
const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

const INSTRUMENTS_HEAD = `## Instruments

Standard uncertainty of one reading. The shared part is common to all readings of one instrument and does not average away.
All figures are assumptions or common practice without a source; type your own as \`uncertainty\` where you know better.

| instrument | what it reads: own and shared | where the figures come from |
| --- | --- | --- |`;

function instrumentRow({ instrument, reads, says, provenance }: InstrumentRecord): string {
  const kinds = Object.entries(reads).map(
    ([kind, doubt]) => `${kind} ${rounded(doubt.own)} and ${rounded(doubt.shared)}`,
  );
  return `| ${instrument} | ${kinds.join("; ")} | ${provenance}: ${says} |`;
}

const rounded = (value: number): number => Math.round(value * 100) / 100;
