import { PI } from "../../engine/number/index.ts";
import type { NoRest, Rest, SectionFit } from "../../fit/fit.ts";
import { limitRule } from "../../judge/limits/all.ts";

/** A saddle as it was tried in the calculation: its faces, and how it rests. */
export interface Tried {
  readonly sections: readonly SectionFit[];
  readonly rest: Rest | NoRest | undefined;
}

/** What hands and level read of the saddle as it stands; undefined where they did not. */
export interface ReadToday {
  readonly bridgeMm: number | undefined;
  readonly rockMm: number | undefined;
  readonly seatDeg: number | undefined;
  /** Clearance that may be lost before one that is inside is so no longer, mm; nothing where none was read. */
  readonly spareMm: number;
}

/** One thing that a panel can even out: its value, and its inside. */
export interface Term {
  readonly id: "face-front" | "face-rail" | "middle-third" | "bridge" | "rock" | "seat-slope" | "roll";
  readonly at: string;
  readonly value: number;
  readonly unit: "deg" | "mm" | "%";
  readonly inside: readonly [number, number];
}

const DEG_PER_RAD = 180 / PI;
/**
 * The middle third carries a third of the force where the pressure runs straight along the saddle: where it is heavier at one end,
 * statics alone decides that, and no fill does. Assumption: 5 in 100 more or less is even.
 */
const MIDDLE_PART = 100 / 3;
const MIDDLE_INSIDE: Term["inside"] = [-5, 5];
/** Lean of the saddle to one side, at rest in the calculation; assumption: up to 1 degree is even. */
const ROLL_INSIDE: Term["inside"] = [-1, 1];

/**
 * Everything that a fill is judged by. What was read is carried on: reading plus computed difference to the saddle as
 * found. Without the reading there is no such term; the computed absolute of bridge, rock and seat is never used.
 */
export function termsOf(tried: Tried, found: Tried, read: ReadToday): readonly Term[] {
  const faces = tried.sections.map(({ station, side, misfitRad }): Term => {
    const id = station === "front" ? "face-front" : "face-rail";
    return {
      id,
      at: `${station}, ${side}`,
      value: misfitRad * DEG_PER_RAD,
      unit: "deg",
      inside: limitRule(id).inside,
    };
  });
  return tried.rest?.ok && found.rest?.ok ? [...faces, ...restTerms(tried.rest, found.rest, read)] : faces;
}

function restTerms(now: Rest, before: Rest, read: ReadToday): readonly Term[] {
  const carried = (
    id: "bridge" | "rock" | "seat-slope",
    value: number | undefined,
    by: number,
  ): readonly Term[] =>
    value === undefined
      ? []
      : [
          {
            id,
            at: "",
            value: id === "seat-slope" ? value + by : Math.max(0, value + by),
            unit: id === "seat-slope" ? "deg" : "mm",
            inside: limitRule(id).inside,
          },
        ];
  return [
    {
      id: "middle-third",
      at: "",
      value: middleShare(now) - MIDDLE_PART,
      unit: "%",
      inside: MIDDLE_INSIDE,
    },
    { id: "roll", at: "", value: now.rollRad * DEG_PER_RAD, unit: "deg", inside: ROLL_INSIDE },
    ...carried("bridge", read.bridgeMm, now.bridgeMm - before.bridgeMm),
    ...carried("rock", read.rockMm, now.rockMm - before.rockMm),
    ...carried("seat-slope", read.seatDeg, (now.headUpRad - before.headUpRad) * DEG_PER_RAD),
  ];
}

/** Part of the force under the middle third of both panels, per cent. */
const middleShare = ({ thirds }: Rest): number =>
  100 * thirds.reduce((sum, { third, share }) => sum + (third === "middle" ? share : 0), 0);

/** A value as part of the end of its inside that it lies toward: 1 at the limit. */
export function ratioOf({ value, inside: [lo, hi] }: Term): number {
  return value >= 0 ? value / hi : value / lo;
}

/** Within this part of its limits a thing is even: no hand feels the difference, and the readings leave as much open (assumption). */
export const EVEN_PART = 0.5;

/** What a fill makes small: squares of what lies past even. Each side has its own fill, so no mean of two sides is chosen here. */
export const unevenness = (terms: readonly Term[]): number =>
  terms.reduce((sum, term) => sum + past(term) * past(term), 0);

const past = (term: Term): number => Math.max(0, ratioOf(term) - EVEN_PART);
