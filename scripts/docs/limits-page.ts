import { ASSUMED } from "../../core/src/fit/assumed.ts";
import type { LimitRule } from "../../core/src/judge/judgement.ts";
import { LIMITS } from "../../core/src/judge/limits/all.ts";
import { OPEN } from "../../core/src/judge/limits/bands.ts";
import { BARRED_CAPS, PRESS_CAPS } from "../../core/src/reach/caps.ts";
import { aboutPath } from "../../core/src/survey/about-path.ts";
import { INSTRUMENT_RECORDS } from "../../core/src/survey/instrument-records.ts";

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
const assumed = Object.values(ASSUMED).map(({ id, says, base, lo, hi, provenance }) =>
  row([`\`${id}\``, says, String(base), `${lo} to ${hi}`, provenance]),
);
const caps = [...Object.values(PRESS_CAPS), ...Object.values(BARRED_CAPS)].map(
  ({ id, says, limit, unit, provenance }) => row([id, says, `${limit} ${unit}`, provenance]),
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
    "## What a reading is worth",
    ["| instrument | standard uncertainty | provenance |", "| --- | --- | --- |", ...instruments].join("\n"),
    "## What is assumed of sitting",
    "The base set was fitted to six published numbers; it is not thereby validated.",
    ["| id | what | base | drawn from | provenance |", "| --- | --- | --- | --- | --- |", ...assumed].join(
      "\n",
    ),
  ];
  return `${parts.join("\n\n")}\n`;
}
