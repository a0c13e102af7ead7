import type { Answer } from "@treewright/core/answer.ts";
import type { Rest } from "@treewright/core/fit/fit.ts";
import { refusalSays } from "@treewright/core/fit/refusal-words.ts";
import { printed, type Unit } from "@treewright/core/report/figures.ts";
import { wrap } from "./columns.ts";

const wayWords = {
  "as-found": "as found",
  exchange: "exchange of plate or inserts",
  heat: "by heat, at the maker's people",
  press: "at the press",
  imagined: "by nothing at hand",
} as const;

function settingLines({ answers }: Answer): string[] {
  const { setting } = answers;
  if (!setting || setting.way === "as-found") return [];
  const way = setting.changeMm < 0 ? "closing" : "opening";
  const change = `${way} ${Math.abs(setting.changeMm).toFixed(1)} mm, to ${setting.spreadMm.toFixed(1)} mm inside the tips`;
  return ["The setting looked at", ...wrap(`${wayWords[setting.way]}: ${change}`, 2, 2), ""];
}

/** What the change moves, against today. */
function movedLines({ follows }: Answer): string[] {
  if (!follows) return [];
  const { moved, doubt } = follows;
  const rows: readonly (readonly [
    what: string,
    value: number | undefined,
    u: number | undefined,
    unit: Unit,
  ])[] = [
    ["clearance over the withers", moved.clearanceMm, doubt.clearanceMm, "mm"],
    ["clearance beside the withers", moved.besideMm, doubt.besideMm, "mm"],
    ["slope of the seat, head end up", moved.seatDeg, doubt.seatDeg, "deg"],
    ["channel, front", moved.channelMm.front, doubt.channelMm.front, "mm"],
    ["channel, mid", moved.channelMm.mid, doubt.channelMm.mid, "mm"],
    ["channel, rear", moved.channelMm.rear, doubt.channelMm.rear, "mm"],
  ];
  const lines = rows.flatMap(([what, value, u, unit]) =>
    value === undefined ? [] : [`  ${printed({ value, u }, unit).padEnd(16)}${what}`],
  );
  return lines.length === 0 ? [] : ["What follows, against today", ...lines, ""];
}

function thirds(rest: Rest, side: "near" | "off"): string {
  return rest.thirds
    .filter((one) => one.side === side)
    .map((one) => `${one.meanKPa.toFixed(1)} kPa`.padEnd(12))
    .join("")
    .trimEnd();
}

function restLines(title: string, rest: NonNullable<Answer["today"]>["rest"]): string[] {
  if (!rest) return [];
  if (!rest.ok) return wrap(`${title}: ${refusalSays(rest.why)}`, 2, 2);
  return [
    `  ${`${title}, near`.padEnd(16)}${thirds(rest, "near")}`,
    `  ${`${title}, off`.padEnd(16)}${thirds(rest, "off")}`,
  ];
}

/** Mean pressures by third, for comparing two settings on this back and for nothing else. */
function pressureLines({ today, chosen }: Answer): string[] {
  const lines = [...restLines("today", today?.rest), ...restLines("after", chosen?.rest)];
  if (lines.length === 0) return [];
  return [
    "Mean pressure at rest",
    `  ${"".padEnd(16)}${"front".padEnd(12)}${"middle".padEnd(12)}rear`,
    ...lines,
    ...wrap(
      "Only for comparing settings on this back under this load: stiffness is assumed, and a low figure promises nothing.",
      2,
    ),
    "",
  ];
}

export const followLines = (result: Answer): string[] => [
  ...settingLines(result),
  ...movedLines(result),
  ...pressureLines(result),
];
