import { type Forms, formsOf } from "@treewright/core/answer/forms.ts";
import { inDraw, wholeAt } from "@treewright/core/answer/whole.ts";
import { MESHES } from "@treewright/core/fit/panel-cells.ts";
import { opened } from "@treewright/core/reach/move.ts";
import { drawDeviations } from "@treewright/core/shape/draw.ts";
import type { Deviations } from "@treewright/core/shape/model.ts";
import { surveyOf } from "../answer/examples.ts";

/** Invented cases that differ in what they rest on: a fair fit, a flat panel, a flat tree on a sharp back, a wasted back. */
export const CASES = [
  "09-alter-in-the-saddle",
  "06-panel-flat",
  "11-flat-tree-sharp-back",
  "03-wasted-back",
] as const;
export const CHANGES_MM = [-6, 0, 6] as const;
export const FILE = new URL("./whole.json", import.meta.url);

/** At the means, and with every reading and every assumption off its mean. */
function drawsOf(forms: Forms): readonly (readonly [name: string, deviations: Deviations])[] {
  return [
    ["means", {}],
    ["a draw", drawDeviations(forms.uncertain, 7, 3)],
    ["another", drawDeviations(forms.uncertain, 7, 11)],
  ];
}

/** What fit says of a whole, part by part. */
export function partsOf(name: (typeof CASES)[number]): readonly (readonly [place: string, part: unknown])[] {
  const forms = formsOf(surveyOf(name), 0);
  return drawsOf(forms).flatMap(([draw, deviations]) =>
    CHANGES_MM.flatMap((changeMm) => {
      const whole = wholeAt(inDraw(forms, deviations), opened(changeMm), { mesh: MESHES.sweep });
      if (whole === undefined) return [];
      const { sections, wanted, rest } = whole;
      const parts = {
        sections,
        wanted,
        rest,
        pressed: whole.pressed(),
        ridden: whole.ridden(),
        states: whole.states(),
      };
      return Object.entries(parts).map(
        ([part, value]) => [`${draw}, ${changeMm} mm: ${part}`, value] as const,
      );
    }),
  );
}
