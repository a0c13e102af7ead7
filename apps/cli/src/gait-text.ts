import type { Answer } from "@treewright/core/answer.ts";
import { gaitsOf } from "@treewright/core/papers/gaits.ts";
import { printed } from "@treewright/core/report/figures.ts";
import type { GaitRow, GaitThird } from "@treewright/core/report/gait-data.ts";
import type { Survey } from "@treewright/core/survey/case.ts";
import { wrap } from "./columns.ts";

const changed = ({ change }: GaitThird): string =>
  change === undefined ? "" : `  ${printed(change, "kPa").replace(" kPa", "")}`;

function sideLine(third: string, side: string, found: GaitThird): string {
  const { meanKPa, mostKPa, areaCm2, sharePercent } = found;
  const figures = [
    meanKPa.toFixed(1).padStart(8),
    mostKPa.toFixed(1).padStart(10),
    areaCm2.toFixed(0).padStart(10),
    sharePercent.toFixed(0).padStart(6),
  ].join("");
  return `  ${third.padEnd(8)}${side.padEnd(5)}${figures}${changed(found)}`;
}

function gaitLines({ name, peak, thirds, why }: GaitRow): string[] {
  const rows = thirds.flatMap(({ third, near, off }) => [
    sideLine(third, "near", near),
    sideLine("", "off", off),
  ]);
  return [...wrap(`${name}: ${peak}`, 2, 2), ...rows, ...(why === undefined ? [] : wrap(why, 4))];
}

/** Each gait at its peak, the rider out of the saddle, and what that stands on. */
export function riddenLines(survey: Survey, result: Answer): string[] {
  const gaits = gaitsOf(survey, result);
  if (gaits === undefined) return [];
  return [
    "Ridden, in the calculation: pressures at the peak, kPa",
    `  ${"".padEnd(13)}${"mean".padStart(8)}${"over 4 cm²".padStart(10 + 1)}${"cm²".padStart(9)}${"%".padStart(6)}  change`,
    ...gaits.rows.flatMap(gaitLines),
    ...gaits.says.flatMap((says) => wrap(says, 2)),
    ...wrap(`Assumed, with its range: ${gaits.assumed.join("; ")}.`, 2),
    "",
  ];
}
