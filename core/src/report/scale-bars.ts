import { moved, stacked } from "../engine/drawing/block.ts";
import { line, words } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { At, Item, Measure } from "../engine/drawing.ts";
import { FIGURE, SMALL } from "./looks.ts";

/** Length of the bars, mm; the inch is 25.4 mm exactly (international yard and pound, 1959). */
const BAR = 100;
const FOUR_INCHES = 4 * 25.4;
const STEP = 10;
export const SCALE_BARS_HIGH = 23;

const MEASURE_ME =
  "Measure all three bars with a steel rule before you cut. Print at actual size, without fitting to the page. " +
  "A bar that is off by more than 0.5 mm spoils this sheet: print it again.";
const THEY_MEASURED = "Measured:  level ............  upright ............";

/** Level bars in mm and inches, laid out from their upper left corner, with the sentence that asks to measure them. */
export function levelBars([x, y]: At, width: number, measure: Measure): readonly Item[] {
  const asked = stacked(
    [MEASURE_ME, THEY_MEASURED].map((said) =>
      paragraph("scale bars, request", said, SMALL, width - FOUR_INCHES - 6, measure),
    ),
    1.5,
  );
  return [
    ...levelBar("bar of 100 mm, level", "100 mm", [x, y + 7], BAR, STEP),
    ...levelBar("bar of 4 inches", "4 in", [x, y + 18], FOUR_INCHES, 25.4),
    ...moved(asked.items, [x + FOUR_INCHES + 6, y + 1]),
  ];
}

/** One level bar for a sheet at a smaller scale: how long it is on paper, and what it stands for on the horse. */
export function scaledBar(at: At, scale: number): readonly Item[] {
  const said = `100 mm on paper, ${BAR * scale} mm on the horse (1 : ${scale})`;
  return levelBar("bar of 100 mm, level", said, at, BAR, STEP);
}

/** A heavy line of the bar's exact length; its marks stand inside it, so that nothing lengthens it. */
function levelBar(name: string, said: string, [x, y]: At, length: number, step: number): readonly Item[] {
  const marks = Array.from({ length: Math.round(length / step) - 1 }, (_, i) => x + (i + 1) * step);
  return [
    line(name, "heavy", [
      [x, y],
      [x + length, y],
    ]),
    ...marks.map((at) =>
      line(`${name}, mark`, "thin", [
        [at, y],
        [at, y + 2.5],
      ]),
    ),
    words(`${name}, words`, FIGURE, [x, y - 2], said),
  ];
}

/** The upright bar of 100 mm, from its upper end. */
export function uprightBar([x, y]: At): readonly Item[] {
  const name = "bar of 100 mm, upright";
  const marks = Array.from({ length: BAR / STEP - 1 }, (_, i) => y + (i + 1) * STEP);
  return [
    line(name, "heavy", [
      [x, y],
      [x, y + BAR],
    ]),
    ...marks.map((at) =>
      line(`${name}, mark`, "thin", [
        [x, at],
        [x - 2.5, at],
      ]),
    ),
    words(`${name}, words`, FIGURE, [x + 4, y + BAR / 2], "100 mm", { anchor: "middle", turn: -90 }),
  ];
}
