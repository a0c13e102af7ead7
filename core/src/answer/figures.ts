import { PI } from "../engine/number/index.ts";
import type { SectionFit } from "../fit/fit.ts";
import type { MeasuredLimit } from "../judge/input.ts";
import type { Section } from "../shape/model.ts";
import type { Side, Station } from "../terms/places.ts";
import type { Forms } from "./forms.ts";
import type { Whole } from "./whole.ts";

export const DEG_PER_RAD = 180 / PI;

/** One computed figure that a limit is held against: which limit, where, and its value in the limit's unit. */
export interface Figure {
  readonly key: string;
  readonly rule: string;
  readonly at: string;
  readonly value: number;
  readonly station?: Station;
  readonly side?: Side;
  readonly temper?: "cold" | "warm";
}

/** Depths below the top of the back between which a horse's two sides are compared, mm (the trade's 60 to 90 mm). */
const SIDES_FROM_MM = 60;
const SIDES_TO_MM = 90;

/** All figures of one setting in one draw that are held against a limit as they stand. */
export function figuresOf(whole: Whole): readonly Figure[] {
  return [
    ...(["cold", "warm"] as const).flatMap((temper) => [
      ...whole.sections[temper].map((fit) => faceFigure(fit, temper)),
      ...spreadFigure(whole, temper),
    ]),
  ];
}

function faceFigure({ station, side, misfitRad }: SectionFit, temper: "cold" | "warm"): Figure {
  const rule = station === "front" ? "face-front" : "face-rail";
  return named({
    rule,
    at: `${station}, ${side}, ${temper}`,
    value: misfitRad * DEG_PER_RAD,
    station,
    side,
    temper,
  });
}

function spreadFigure(whole: Whole, temper: "cold" | "warm"): readonly Figure[] {
  const wanted = whole.wanted[temper];
  if (wanted === undefined) return [];
  return [
    named({
      rule: "spread-wanted",
      at: `computed, ${temper}`,
      value: whole.head.spreadMm - wanted.spreadMm,
      temper,
    }),
  ];
}

/** Left against right of the horse itself, cold, at the front; no setting changes it. */
export function horseSides(forms: Forms, deviations: Readonly<Record<string, number>>): readonly Figure[] {
  const front = forms.fronts.cold;
  if (front === undefined) return [];
  const widths = sidesAt(front, deviations);
  if (widths === undefined) return [];
  const angle = (side: Side) =>
    front.faceAngleRad(side, Math.min(...widths[side]), Math.max(...widths[side]), deviations);
  const mean = (side: Side) => (widths[side][0] + widths[side][1]) / 2;
  return [
    named({ rule: "horse-sides-angle", at: "", value: (angle("near") - angle("off")) * DEG_PER_RAD }),
    named({ rule: "horse-sides-width", at: "", value: mean("near") - mean("off") }),
  ];
}

function sidesAt(front: Section, deviations: Readonly<Record<string, number>>) {
  const at = (side: Side) => {
    const upper = front.halfWidthMm(side, SIDES_FROM_MM, deviations);
    const lower = front.halfWidthMm(side, SIDES_TO_MM, deviations);
    return upper === undefined || lower === undefined ? undefined : ([upper, lower] as const);
  };
  const near = at("near");
  const off = at("off");
  return near && off ? { near, off } : undefined;
}

function named(figure: Omit<Figure, "key">): Figure {
  return { key: `${figure.rule} ${figure.at}`, ...figure };
}

/** A figure with its doubt, as the judge takes it. */
export function asLimit(figure: Figure, u: number | undefined): MeasuredLimit {
  const { rule, at, value, station, side, temper } = figure;
  return { rule, at, value, u, missing: [], station, side, temper };
}
