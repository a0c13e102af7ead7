import { type Figure, type FigureUnit, printed, show, type UnitsChosen, unitCalled } from "../road.ts";

/** A worked-out length of which no doubt is known is shown to this, mm: finer than any rule is read in a yard (assumption). */
const UNTOLD_MM = 0.5;
/** A range's ends are shown to this, in mm and kg. */
const RANGE_END = 0.5;

/** A length of the drawing or the answers, to the last place that `uMm` carries. */
export function shownMm(mm: number, uMm: number, units: UnitsChosen): string {
  return show(mm, "length", unitCalled(units.length, "length"), uMm).replace("-", "−");
}

/** A figure with its doubt, in the device's unit where it is a length. */
export function shownFigure(figure: Figure | undefined, unit: FigureUnit, units: UnitsChosen): string {
  if (unit !== "mm" || units.length === "mm" || figure === undefined) return printed(figure, unit);
  const { value, u } = figure;
  if (u === undefined) return shownMm(value, UNTOLD_MM, units);
  const alone = shownMm(value, u, units).replace(/ in$/, "");
  // A doubt is shown twice as fine as it is, so that its own rounding does not count.
  return `${alone} ± ${shownMm(u, u / 2, units)}`;
}

/** A field's range in the unit that stands beside it. */
export function shownRange(
  [lo, hi]: readonly [number, number],
  kind: "length" | "mass",
  units: UnitsChosen,
): string {
  const unit = unitCalled(units[kind], kind);
  return `${show(lo, kind, unit, RANGE_END)} to ${show(hi, kind, unit, RANGE_END)}`;
}
