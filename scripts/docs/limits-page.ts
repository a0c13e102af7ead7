import { ASSUMED } from "../../core/src/fit/assumed.ts";
import { ASSUMED_LOADS } from "../../core/src/fit/assumed-loads.ts";
import type { LimitRule } from "../../core/src/judge/judgement.ts";
import { LIMITS } from "../../core/src/judge/limits/all.ts";
import { OPEN } from "../../core/src/judge/limits/bands.ts";
import { BARRED_HEAD, WOOD_HEAD } from "../../core/src/reach/bend/head-priors.ts";
import { BARRED_CAPS, PRESS_CAPS } from "../../core/src/reach/caps.ts";
import { CANTLE, HINGE, MOULDED, SPRING, WOODEN } from "../../core/src/reach/frame/unknown.ts";
import { RECORD_SIZES, type SizeLimit } from "../../core/src/records/limits.ts";
import { aboutPath } from "../../core/src/survey/about-path.ts";
import { INSTRUMENT_RECORDS } from "../../core/src/survey/instrument-records.ts";
import { SURVEY_SIZES } from "../../core/src/survey/sizes.ts";
import type { Assumed } from "../../core/src/terms/assumed.ts";

const costWords: Readonly<Record<LimitRule["cost"], string>> = {
  press: "a press: inside with half of U to spare, hands and template agree",
  exchange: "an exchange: the best estimate; a ridden check decides",
  leave: "leaving it as it is: hands and a ridden check as well",
  withdraw: "use: doubt is enough to stop",
};

const cell = (text: string): string => text.replaceAll("|", "\\|").replace(/\s+/g, " ");
const row = (cells: readonly string[]): string => `| ${cells.map(cell).join(" | ")} |`;

function range([lo, hi]: readonly [number, number], unit: string): string {
  if (lo <= -OPEN) return `up to ${hi} ${unit}`;
  if (hi >= OPEN) return `from ${lo} ${unit}`;
  return lo === -hi ? `± ${hi} ${unit}` : `${lo} to ${hi} ${unit}`;
}

function beyond([lo, hi]: readonly [number, number], unit: string): string {
  const ends = [lo <= -OPEN ? "" : `below ${lo}`, hi >= OPEN ? "" : `above ${hi}`].filter(
    (end) => end !== "",
  );
  return `${ends.join(" or ")} ${unit}`;
}

function limitText(rule: LimitRule): string {
  return [
    `### ${rule.id}`,
    rule.says,
    [
      row(["", ""]),
      "| --- | --- |",
      row(["quantity", rule.quantity]),
      row(["state", rule.state || "any"]),
      row(["inside", range(rule.inside, rule.unit)]),
      row(["outside", beyond(rule.outside, rule.unit)]),
      row(["judged as for", costWords[rule.cost]]),
      row(["source", rule.sourceRef]),
      row([
        "readings",
        rule.readings.map((path) => `\`${path}\` ${aboutPath(path)}`).join("; ") || "computed",
      ]),
    ].join("\n"),
  ].join("\n\n");
}

const instruments = INSTRUMENT_RECORDS.map(({ instrument, says, provenance }) =>
  row([instrument, says, provenance]),
);

/** What was taken as given, one row each; a record that words its own source has it after the provenance. */
function assumedTable(all: Readonly<Record<string, Assumed & { readonly source?: string }>>): string {
  const rows = Object.values(all).map(({ id, says, base, lo, hi, provenance, source }) =>
    row([
      `\`${id}\``,
      says,
      String(base),
      `${lo} to ${hi}`,
      source ? `${provenance}: ${source}` : provenance,
    ]),
  );
  return ["| id | what | base | drawn from | provenance |", "| --- | --- | --- | --- | --- |", ...rows].join(
    "\n",
  );
}

const caps = [...Object.values(PRESS_CAPS), ...Object.values(BARRED_CAPS)].map(
  ({ id, says, limit, unit, provenance }) => row([id, says, `${limit} ${unit}`, provenance]),
);

const sizes = Object.values<SizeLimit>({ ...SURVEY_SIZES, ...RECORD_SIZES }).map(
  ({ says, least, most, unit }) => row([says, least === undefined ? "" : String(least), String(most), unit]),
);

/** Every limit, instrument and assumption with its source, from the records that the program itself uses. */
export function limitsPage(): string {
  const parts = [
    "# Limits and their sources",
    'Made from the rule records by `npm run docs`: do not edit. What lies between inside and outside wants another look:\nonly setting up or the panel is offered there. A figure counts with its U, half of the central 95 % of its draws.\nNothing here is a published limit unless its source says "published".',
    "## Limits",
    ...LIMITS.map(limitText),
    "## How far a press may go",
    "On laminated wood with plates, and on polymer with a metal bar; any other head is not pressed.",
    ["| id | what | at most | provenance |", "| --- | --- | --- | --- |", ...caps].join("\n"),
    "## How much may be typed and kept",
    "Working limits, no source. Whatever is more is refused with what was read and what is allowed, and nothing of it is cut off.",
    ["| what | at least | at most | unit |", "| --- | --- | --- | --- |", ...sizes].join("\n"),
    "## What a reading is worth",
    ["| instrument | standard uncertainty | provenance |", "| --- | --- | --- |", ...instruments].join("\n"),
    "## What is assumed of sitting",
    "The base set was fitted to six published numbers; it is not thereby validated.",
    assumedTable(ASSUMED),
    "## What is assumed of loads and tissue",
    "Where the case file holds a reading of one of them, the reading takes its place.",
    assumedTable(ASSUMED_LOADS),
    "## What is assumed of a hidden head",
    "The last word of an id is its unit. Where the tree's reinforcement was measured, the reading takes its place.",
    "### Laminated beech with plates, bent",
    assumedTable(WOOD_HEAD),
    "### Polymer with a metal bar, bent",
    assumedTable(BARRED_HEAD),
    "## What is assumed of the whole tree",
    "Every head hinges within the same range; what follows differs by build.",
    assumedTable({ HINGE, ...CANTLE }),
    "### Laminated beech, the tree behind the head",
    assumedTable(WOODEN),
    "### Moulded polymer, the tree behind the head",
    assumedTable(MOULDED),
    "### Spring steel along the rails",
    assumedTable(SPRING),
  ];
  return `${parts.join("\n\n")}\n`;
}
