import { U_PER_SD } from "../engine/central.ts";
import { atan, cos, tan } from "../engine/number/index.ts";
import type { MeasuredLimit } from "../judge/input.ts";
import type { Head } from "../shape/model.ts";
import { STRAIGHT_BELOW_CROWN_MM } from "../shape/wanted-head.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import { isRead, type Reading } from "../survey/reading.ts";
import { SIDES, type Side } from "../terms/places.ts";
import { DEG_PER_RAD } from "./figures.ts";

/** How well a card template is held against a head: one standard deviation, mm (assumption 0.5 to 2). */
const HELD_MM = 1;

/** Feelers of one side, each held square to the point, and how far along the point the top one lies from the tip, mm. */
interface Feelers {
  readonly tip: Reading;
  readonly middle: Reading;
  readonly top: Reading;
  readonly alongMm: number;
}

function feelersOf(horse: SurveyedHorse, side: Side, head: Head): Feelers | undefined {
  const at = (place: "Tip" | "Middle" | "Top") => horse.template[`${side}${place}`];
  const [tip, middle, top] = [at("Tip"), at("Middle"), at("Top")];
  if (!isRead(tip) || !isRead(middle) || !isRead(top)) return undefined;
  const heightMm = head.depthMm - STRAIGHT_BELOW_CROWN_MM;
  return { tip, middle, top, alongMm: heightMm / cos(head.halfAngleRad[side]) };
}

/** True where a card template of this horse was offered up with feelers at all places of both sides. */
export function templateOffered(horse: SurveyedHorse, head: Head): boolean {
  return SIDES.every((side) => feelersOf(horse, side, head) !== undefined);
}

/**
 * The front section as the card template tells it: a template cut to the horse and held against the head compares the
 * two faces by themselves, far surer than two angles subtracted. Positive: the head is steeper (tight at the tip).
 */
export function templateFaces(horse: SurveyedHorse, head: Head): readonly MeasuredLimit[] {
  return SIDES.flatMap((side) => {
    const feelers = feelersOf(horse, side, head);
    if (feelers === undefined) return [];
    const { top, tip, alongMm } = feelers;
    const sd = Math.sqrt(top.own * top.own + tip.own * tip.own + HELD_MM * HELD_MM) / alongMm;
    const value = atan((top.value - tip.value) / alongMm) * DEG_PER_RAD;
    return [
      {
        rule: "face-front",
        at: `${side}, template`,
        value,
        u: U_PER_SD * sd * DEG_PER_RAD,
        missing: [],
        station: "front",
        side,
      },
    ];
  });
}

/**
 * What feelers and template faces would read after the head has moved: each half turns against the template, so a
 * feeler at the top of the straight part loses the length of that part times the turn, one half way up half of it.
 * What the tip goes out by is the same at all three, and no part of how uneven they are. `turnUDeg`: how sure the turn
 * is; it is added to today's doubts, since nobody knows where the head hinges. Derived.
 */
export function feelersAfter(
  horse: SurveyedHorse,
  today: Head,
  after: Head,
  turnUDeg: number | undefined,
): readonly MeasuredLimit[] {
  const turnRad = (side: Side) => after.halfAngleRad[side] - today.halfAngleRad[side];
  const uneven = SIDES.flatMap((side): MeasuredLimit[] => {
    const feelers = feelersOf(horse, side, today);
    if (feelers === undefined) return [];
    const { tip, middle, top, alongMm } = feelers;
    const lostMm = alongMm * tan(turnRad(side));
    const read = [tip.value, middle.value - lostMm / 2, top.value - lostMm];
    const ownU = U_PER_SD * Math.sqrt(2) * tip.own;
    const u = turnUDeg === undefined ? undefined : both(ownU, alongMm * tan(turnUDeg / DEG_PER_RAD));
    return [{ rule: "feeler", at: side, side, value: Math.max(...read) - Math.min(...read), u, missing: [] }];
  });
  return [...uneven, ...templateFaces(horse, today).map((face) => turned(face, turnRad, turnUDeg))];
}

function turned(
  face: MeasuredLimit,
  turnRad: (side: Side) => number,
  turnUDeg: number | undefined,
): MeasuredLimit {
  const { value, u, side = "near" } = face;
  if (value === undefined || u === undefined) return face;
  const after = value - turnRad(side) * DEG_PER_RAD;
  return { ...face, value: after, u: turnUDeg === undefined ? undefined : both(u, turnUDeg) };
}

/** Two doubts that know nothing of one another. */
const both = (a: number, b: number): number => Math.sqrt(a * a + b * b);
