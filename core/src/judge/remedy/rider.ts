import { massOfHorse } from "../../shape/weight.ts";
import { valueOf } from "../findings/answered.ts";
import type { Known } from "./known.ts";

/** Rider and tack over this part of the horse's mass come before any saddle work (a choice, not a finding; see the rule). */
export const LOAD_MOST = 0.2;
/** One stirrup hole apart is a finding (common practice, no source). */
const HOLES_APART = 1;

type Case = Pick<Known, "survey" | "horse">;

/**
 * Rider, dressed, and tack as part of the horse's mass: weighed, else by tape, else guessed. Undefined where rider or
 * tack was not read, or the horse's mass is not known in any way.
 */
export function loadPart({ survey, horse }: Case): number | undefined {
  const [rider, tack] = [valueOf(survey.rider.massDressed), valueOf(survey.rider.tackMass)];
  const mass = massOfHorse(horse)?.best.kg;
  return rider === undefined || tack === undefined || mass === undefined ? undefined : (rider + tack) / mass;
}

/** Why the rider comes before the saddle: rules, empty where nothing was found. */
export function riderFaults(known: Case): readonly string[] {
  const { rider } = known.survey;
  const [near, off] = [valueOf(rider.stirrupHolesNear), valueOf(rider.stirrupHolesOff)];
  const uneven = near !== undefined && off !== undefined && Math.abs(near - off) >= HOLES_APART;
  const heavy = (loadPart(known) ?? 0) > LOAD_MOST;
  return [
    ...(heavy ? ["fit-rider-heavy"] : []),
    ...(rider.seatTooSmall === "yes" || uneven ? ["fit-rider-first"] : []),
  ];
}

/** What was not asked of the rider, and would come before the saddle if it were found. */
export function riderNotAsked({ survey }: Pick<Known, "survey">): readonly string[] {
  const { seatTooSmall, stirrupHolesNear, stirrupHolesOff } = survey.rider;
  return [
    ...(seatTooSmall === "yes" || seatTooSmall === "no" ? [] : ["rider.seatTooSmall"]),
    ...(valueOf(stirrupHolesNear) === undefined ? ["rider.stirrupHolesNear"] : []),
    ...(valueOf(stirrupHolesOff) === undefined ? ["rider.stirrupHolesOff"] : []),
  ];
}
