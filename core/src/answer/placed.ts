import { U_PER_SD } from "../engine/central.ts";
import { cos, sin } from "../engine/number/index.ts";
import type { Seat } from "../fit/fit.ts";
import { buildFront, isLacking } from "../shape/back.ts";
import { headOutline } from "../shape/head-outline.ts";
import type { Section, Tree } from "../shape/model.ts";
import type { Survey } from "../survey/case.ts";
import { type BySide, type ByStation, SIDES, type Side, type Station } from "../terms/places.ts";
import type { Forms } from "./forms.ts";
import type { Whole } from "./whole.ts";

type Place = readonly [number, number];

/** One section ready to be drawn: [y to the off side, z up] in mm, the top of the back's midline at (0, 0), seen from behind. */
export interface Placed {
  readonly back: readonly Place[];
  /** Between these two lines the back lies in 95 of 100 cases, as far as the trace's own doubt goes. */
  readonly band: readonly [readonly Place[], readonly Place[]];
  readonly panel: BySide<readonly Place[]>;
  /** Closed outline of the head in its own thickness; empty away from the front, and where nothing rests. */
  readonly head: readonly Place[];
}

/** Back, panel and head at each station, as they rest. */
export function placedAlong(forms: Forms, whole: Whole): ByStation<Placed | undefined> {
  const at = (station: Station) => placedAt(forms, whole, station);
  return { front: at("front"), mid: at("mid"), rear: at("rear") };
}

/** Back, panel and head at one station, as they rest. Undefined where there is no trace. */
function placedAt(forms: Forms, whole: Whole, station: Station): Placed | undefined {
  const front = forms.fronts.cold ?? forms.fronts.warm;
  const section = forms.back?.sections[station] ?? (station === "front" ? front : undefined);
  if (section === undefined) return undefined;
  const rest = whole.rest?.ok ? whole.rest : undefined;
  const { tree } = whole;
  const rests = tree && rest && forms.back;
  const topMm = rests ? rests.midlineMm(section.xMm) : 0;
  return {
    back: section.outline,
    band: bandOf(section),
    panel: rests
      ? { near: panelOf(tree, "near", station, rest, topMm), off: panelOf(tree, "off", station, rest, topMm) }
      : { near: [], off: [] },
    head: rests && station === "front" ? headOf(tree, rest, topMm) : [],
  };
}

/**
 * The front trace by itself as it is drawn, and the state of the horse it was taken in; the cold one where there is one.
 * Undefined where none was taken or none can be used. Source of the curve: `shape/section.ts`.
 */
export function frontTrace(
  survey: Survey,
  horseIndex: number,
): { readonly outline: readonly Place[]; readonly temper: "cold" | "warm" } | undefined {
  const horse = survey.horses[horseIndex];
  if (horse === undefined) return undefined;
  for (const temper of ["cold", "warm"] as const) {
    const front = buildFront(horse, temper);
    if (!isLacking(front)) return { outline: front.outline, temper };
  }
  return undefined;
}

function bandOf({ outline, widthOwnMm, widthSharedMm }: Section): Placed["band"] {
  // The width's doubt is shared by both sides; near the top a wider back is no lower.
  const aside = (U_PER_SD * Math.sqrt(widthOwnMm * widthOwnMm + widthSharedMm * widthSharedMm)) / 2;
  const shifted = (way: number) =>
    outline.map(([y, z]): Place => [y + way * aside * Math.max(-1, Math.min(1, y / 20)), z]);
  return [shifted(1), shifted(-1)];
}

/** From the saddle's frame to the section's: the body turns about the middle of its length (engine/contact). */
function inPlace(tree: Tree, rest: Seat, topMm: number, x: number): (place: Place) => Place {
  const { heaveMm, headUpRad, rollRad } = rest;
  const pitched = heaveMm - (x - tree.lengthMm / 2) * sin(headUpRad) - topMm;
  return ([y, z]) => [
    y * cos(rollRad) - z * sin(rollRad),
    pitched + (y * sin(rollRad) + z * cos(rollRad)) * cos(headUpRad),
  ];
}

/** The panel's face and, its thickness above it, its back: a closed outline from inner to outer edge and round. */
function panelOf(tree: Tree, side: Side, station: Station, rest: Seat, topMm: number): readonly Place[] {
  const half = tree.halves[side];
  const x = tree.stationsMm[station];
  const angle = half.faceAngleRad(x);
  const width = half.widthMm(x);
  const { inner, middle, outer } = half.thicknessMm[station];
  const out = side === "near" ? -1 : 1;
  const at = (across: number, thick: number): Place => [
    out * (half.innerEdgeMm(x) + across * width * cos(angle) + thick * sin(angle)),
    half.heightMm(x) - (across - 0.5) * width * sin(angle) + thick * cos(angle),
  ];
  const outline = [at(0, 0), at(1, 0), at(1, outer), at(0.5, middle), at(0, inner)];
  return outline.map(inPlace(tree, rest, topMm, x));
}

function headOf(tree: Tree, rest: Seat, topMm: number): readonly Place[] {
  const [inside, outside] = [headOutline(tree.head, "inside"), headOutline(tree.head, "outside")];
  const across = (outline: BySide<readonly Place[]>) => [
    ...[...outline[SIDES[0]]].reverse(),
    ...outline[SIDES[1]],
  ];
  const whole = [...across(inside), ...across(outside).reverse()];
  const place = inPlace(tree, rest, topMm, tree.stationsMm.front);
  return whole.map(([y, z]) => place([y, z + tree.crownHeightMm]));
}

/**
 * The head set so high that its crown clears the back by so much. Nobody reads how high a head stands over its panel,
 * so the computed height is not shown. The outline runs inside from tip to tip and back outside.
 */
export function headAtClearance(head: Placed["head"], clearanceMm: number): Placed["head"] {
  const crown = Math.max(...head.slice(0, head.length / 2).map(([, z]) => z));
  return head.map(([y, z]) => [y, z + clearanceMm - crown] as const);
}

const CLEARANCES = ["clearance-girthed", "clearance-rider-up", "clearance-half-seat"];

/** The first clearance that was read, in the order of the work. */
export function clearanceRead<Limit extends { readonly rule: string; readonly value: number | undefined }>(
  limits: readonly Limit[],
): Limit | undefined {
  return CLEARANCES.flatMap((rule) =>
    limits.filter((one) => one.rule === rule && one.value !== undefined),
  )[0];
}
