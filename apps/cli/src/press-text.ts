import type { Answer } from "@treewright/core/answer.ts";
import { pressOf } from "@treewright/core/papers/press.ts";
import { wrap } from "./columns.ts";

/** Rows of the table are so many millimetres of change apart. */
const ROWS_MM = 2;

/** What a press does to this head: for the bench. */
export function pressLines(result: Answer): string[] {
  const press = pressOf(result);
  if (press === undefined || result.bend === undefined) return [];
  return [
    "At the press",
    ...press.says.flatMap((text) => wrap(`- ${text}`, 2, 2)),
    ...press.look.flatMap((text) => wrap(`- look at: ${text}`, 2, 2)),
    "",
    "  change  travel   back  force  stretch  crushed   steel   plate",
    ...result.bend.settings.filter(({ changeMm }) => changeMm % ROWS_MM === 0).map(row),
    "",
    ...wrap(`Stands on: ${press.assumed.join("; ")}.`),
    "",
  ];
}

type Row = NonNullable<Answer["bend"]>["settings"][number];

function row(one: Row): string {
  const cell = (value: number, digits: number, unit: string, width: number) =>
    `${value.toFixed(digits)}${unit}`.padStart(width);
  return [
    cell(one.changeMm, 0, " mm", 8),
    cell(one.travelMm, 1, "", 8),
    cell(one.springBackMm, 1, "", 7),
    cell(one.forceN / 1000, 1, "", 7),
    cell(100 * one.stretch, 2, " %", 9),
    cell(100 * one.crushed, 2, " %", 9),
    cell(100 * one.steelStrain, 2, " %", 8),
    cell(one.plateN / 1000, 1, " kN", 8),
  ].join("");
}
