import type { Answer } from "@treewright/core/answer.ts";
import { panelSheetOf } from "@treewright/core/papers/panel.ts";
import { printed } from "@treewright/core/report/figures.ts";
import type { FillAcross, PanelSheet } from "@treewright/core/report/panel-data.ts";
import { STATIONS } from "@treewright/core/terms/places.ts";
import { wrap } from "./columns.ts";

/** The panel's wedges, what is added and taken out of it in mm, and how even it is before and after. */
export function panelLines({ panel }: Answer): string[] {
  const sheet = panelSheetOf(panel);
  if (sheet === undefined) return [];
  const { wedges, fill, says, rows } = sheet;
  return [
    "Panel",
    ...says.flatMap((text) => wrap(`- ${text}`, 2, 2)),
    ...(fill ? mapLines(fill) : []),
    ...rows.map(
      ({ what, unit, before, after }) =>
        `  ${printed(before, unit).padStart(9)} to ${printed(after, unit).padEnd(10)}${what}`,
    ),
    ...wrap(wedges.join(" "), 2),
    "",
  ];
}

/** Seen from above: the near panel from outer to inner edge, then the off panel from inner to outer. */
function mapLines(fill: NonNullable<PanelSheet["fill"]>): string[] {
  const row = (mm: readonly number[]) => mm.map((one) => signed(one).padStart(6)).join("");
  const near = ({ inner, middle, outer }: FillAcross) => row([outer, middle, inner]);
  const off = ({ inner, middle, outer }: FillAcross) => row([inner, middle, outer]);
  return [
    "  mm to add (+) or take out (−): near from outer to inner, off from inner to outer",
    ...STATIONS.map(
      (station) => `  ${station.padEnd(7)}${near(fill.near[station])}   |${off(fill.off[station])}`,
    ),
  ];
}

const signed = (mm: number): string => (mm === 0 ? "0" : `${mm > 0 ? "+" : "−"}${Math.abs(mm)}`);
