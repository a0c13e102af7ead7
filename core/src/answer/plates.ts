import { canonicalJson } from "../engine/canonical-json.ts";
import { spreadOf } from "../engine/quantile.ts";
import { horseShutsFit } from "../judge/horse-flag.ts";
import { headKind } from "../reach/build.ts";
import { type MountingCheck, type MountingMatch, mountingChecks, sameMounting } from "../reach/mounting.ts";
import { apartMm } from "../reach/plates/apart.ts";
import { type Offered, type Ranked, rankedPlates, worstOf } from "../reach/plates/ranking.ts";
import { isLacking } from "../shape/back.ts";
import { drawDeviations } from "../shape/draw.ts";
import type { Deviations } from "../shape/model.ts";
import { angleWithPlate, buildPlate, buildStockPlate, type PlateBelief } from "../shape/plate.ts";
import type { Plate, Survey } from "../survey/case.ts";
import type { StockPlate } from "../survey/stock.ts";
import type { Seen } from "../terms/knowing.ts";
import { type Forms, formsOf } from "./forms.ts";
import { wantedFor } from "./whole.ts";

/** Where a plate stands in its list; its names are looked up there and never compared. */
export interface PlateId {
  readonly list: "at-hand" | "stock";
  readonly index: number;
}

interface Figure {
  readonly value: number;
  readonly u: number;
}

/** One plate by what was measured on it. */
export interface PlateSeen {
  readonly id: PlateId;
  readonly mounting: MountingMatch;
  readonly checks: readonly MountingCheck[];
  readonly sound: Seen;
  /** The head it makes once it is in: inside the tips, mm, and its half-angle, rad; undefined where that was not read. */
  readonly makes: { readonly spreadMm: Figure; readonly halfAngleRad: Figure | undefined } | undefined;
  /** Readings without which it makes no head. */
  readonly lacking: readonly string[];
}

/** What one horse wants of a plate: the difference to what each makes. */
export interface ForHorse {
  readonly horseIndex: number;
  readonly temper: "cold" | "warm";
  /** By the places of `plates`: plate's spread less wanted, mm, and half-angle less wanted, rad. */
  readonly against: readonly {
    readonly id: PlateId;
    readonly spreadMm: number;
    readonly halfAngleRad: number;
  }[];
  readonly ranked: readonly Ranked<PlateId>[];
}

export interface PlatesSeen {
  readonly plates: readonly PlateSeen[];
  readonly horses: readonly ForHorse[];
  /** Horses that no plate is ranked for: the vet first, or head and front trace were not read. */
  readonly unranked: readonly { readonly horseIndex: number; readonly why: "flag" | "not-read" }[];
  /** By the horse that each plate serves worst; with one horse, its own ranking. */
  readonly ranked: readonly Ranked<PlateId>[];
}

/** Draws behind a ranking. */
const DRAWS = 300;

/**
 * The plates at hand and of a stock for one saddle: which fit its mounting, what head each makes as fitted, and which of
 * those that fit and are sound come nearest to the head that each of its horses wants. Undefined where its head takes no
 * plates. The same seed gives the same figures.
 */
export function platesSeen(
  survey: Survey,
  stock: readonly StockPlate[],
  seed: number,
): PlatesSeen | undefined {
  if (headKind(survey.saddle.build) !== "plate-exchanged") return undefined;
  const atHand = inOrder(survey.platesAtHand);
  const inStock = inOrder(stock);
  const listed = [
    ...survey.platesAtHand.map((plate, index) =>
      seenOf(survey, plate, { list: "at-hand", index }, seed, (at) =>
        buildPlate(plate, at ?? atHand[index] ?? index, survey.saddle),
      ),
    ),
    ...stock.map((plate, index) =>
      seenOf(survey, plate, { list: "stock", index }, seed, (at) =>
        buildStockPlate(plate, at ?? inStock[index] ?? index, survey.saddle),
      ),
    ),
  ];
  const usable = listed.filter(
    ({ seen }) => seen.mounting === "same" && seen.sound === "sound" && seen.makes,
  );
  const each = survey.horses.map((_, horseIndex) => forHorse(survey, horseIndex, usable, seed));
  const horses = each.flatMap((one) => ("why" in one ? [] : [one]));
  const everyone = usable.flatMap(({ seen: { id } }) => {
    const all = horses.map(({ offered }) => offered.find((one) => one.id === id));
    const known = all.filter((one) => one !== undefined);
    return known.length === 0 || known.length < all.length ? [] : [worstOf(id, known)];
  });
  return {
    plates: listed.map(({ seen }) => seen),
    horses: horses.map(({ offered, ...rest }) => ({ ...rest, ranked: rankedPlates(offered) })),
    unranked: each.flatMap((one) => ("why" in one ? [one] : [])),
    ranked: rankedPlates(everyone),
  };
}

/**
 * Places by which plates are drawn, from what was measured on them: a list in another order, or with other names, then
 * gives the same draws.
 */
function inOrder(plates: readonly (Plate | StockPlate)[]): readonly number[] {
  const measured = plates.map((plate, index) => {
    const bare = { ...plate, maker: undefined, label: undefined, word: undefined, mark: undefined };
    return { index, text: canonicalJson(bare) };
  });
  const sorted = [...measured].sort((a, b) => (a.text < b.text ? -1 : a.text > b.text ? 1 : 0));
  return plates.map((_, index) => sorted.findIndex((one) => one.index === index));
}

interface Listed {
  readonly seen: PlateSeen;
  readonly belief: PlateBelief | undefined;
}

type AnyPlate = Pick<StockPlate, "mounting" | "sound">;

function seenOf(
  { saddle }: Survey,
  { mounting, sound }: AnyPlate,
  id: PlateId,
  seed: number,
  build: (at: number | undefined) => ReturnType<typeof buildPlate>,
): Listed {
  const built = build(undefined);
  const belief = isLacking(built) ? undefined : built;
  const inList = build(id.index);
  return {
    belief,
    seen: {
      id,
      mounting: sameMounting(saddle.mounting, mounting),
      checks: mountingChecks(saddle.mounting, mounting),
      sound,
      makes: belief && madeBy(belief, seed),
      lacking: isLacking(inList) ? inList.lacking : [],
    },
  };
}

function madeBy(belief: PlateBelief, seed: number): NonNullable<PlateSeen["makes"]> {
  const { spreadMm, halfAngleRad } = belief.at({});
  const drawn = drawsOf(belief.uncertain, seed).map((one) => belief.at(one));
  const angles = drawn.flatMap((one) => one.halfAngleRad ?? []);
  return {
    spreadMm: { value: spreadMm, u: spreadOf(drawn.map((one) => one.spreadMm)) },
    halfAngleRad: halfAngleRad === undefined ? undefined : { value: halfAngleRad, u: spreadOf(angles) },
  };
}

const drawsOf = (uncertain: PlateBelief["uncertain"], seed: number): readonly Deviations[] =>
  Array.from({ length: DRAWS }, (_, i) => drawDeviations(uncertain, seed, i));

type Unranked = PlatesSeen["unranked"][number];
type Drawn = Omit<ForHorse, "ranked"> & { readonly offered: readonly Offered<PlateId>[] };

function forHorse(
  survey: Survey,
  horseIndex: number,
  plates: readonly Listed[],
  seed: number,
): Drawn | Unranked {
  if (horseShutsFit(survey, horseIndex)) return { horseIndex, why: "flag" };
  const forms = formsOf(survey, horseIndex);
  const temper = forms.fronts.warm === undefined ? "cold" : "warm";
  const draws = drawsOf(
    [...forms.uncertain, ...plates.flatMap(({ belief }) => belief?.uncertain ?? [])],
    seed,
  );
  const tried = plates.flatMap(({ seen: { id }, belief }) => {
    if (belief === undefined) return [];
    const here = inPlace(forms, belief, {});
    const drawn = draws.flatMap((one) => inPlace(forms, belief, one)?.apartMm ?? Number.NaN);
    return here === undefined || drawn.some(Number.isNaN) ? [] : [{ id, here, drawn }];
  });
  if (tried.length < plates.length) return { horseIndex, why: "not-read" };
  return {
    horseIndex,
    temper,
    against: tried.map(({ id, here }) => ({ id, spreadMm: here.spreadMm, halfAngleRad: here.halfAngleRad })),
    offered: tried.map(({ id, here, drawn }) => ({ id, apartMm: here.apartMm, drawn })),
  };
}

/** A plate's head against the head that the template shows: wanted at the height where today's stands. */
function inPlace(forms: Forms, belief: PlateBelief, deviations: Deviations) {
  const front = forms.fronts.warm ?? forms.fronts.cold;
  const tree = forms.tree?.at(deviations);
  const today = tree?.head ?? forms.head?.at(deviations);
  const wanted = front && today && wantedFor(front, today, tree, deviations);
  if (today === undefined || wanted === undefined) return undefined;
  const plate = belief.at(deviations);
  const head = { spreadMm: plate.spreadMm, halfAngleRad: angleWithPlate(today, plate) };
  return {
    apartMm: apartMm(head, wanted),
    spreadMm: head.spreadMm - wanted.spreadMm,
    halfAngleRad: head.halfAngleRad - wanted.halfAngleRad,
  };
}
