import { ASSUMED_UNCERTAIN } from "../fit/assumed.ts";
import { type MassBelief, massOf } from "../fit/load.ts";
import { type LoadsRead, loadsRead } from "../fit/loads-read.ts";
import { type SectionsBelief, sectionsOfTree } from "../reach/frame/sections.ts";
import { buildBack, buildFront, isLacking } from "../shape/back.ts";
import { buildHead } from "../shape/head.ts";
import { buildInsert } from "../shape/insert.ts";
import type { Back, HeadBelief, Section, TreeBelief, Uncertain } from "../shape/model.ts";
import { buildPlate, type PlateBelief } from "../shape/plate.ts";
import { buildTree } from "../shape/tree.ts";
import type { Survey } from "../survey/case.ts";

/** Everything that the readings of one case give form to, for one horse. What could not be built is undefined. */
export interface Forms {
  /** The back as the whole fit is computed on it. */
  readonly back: Back | undefined;
  /** Front sections by temper; the warm one may be all there is of a warm back. */
  readonly fronts: { readonly cold: Section | undefined; readonly warm: Section | undefined };
  readonly tree: TreeBelief | undefined;
  readonly head: HeadBelief | undefined;
  /** The unknown sections of the tree. */
  readonly sections: SectionsBelief;
  /** By their place among the plates at hand. */
  readonly plates: readonly (PlateBelief | undefined)[];
  /** By their place among the positions of the inserts. */
  readonly inserts: readonly (PlateBelief | undefined)[];
  readonly mass: MassBelief;
  readonly loads: LoadsRead;
  /** Paths of the readings that are missing. */
  readonly lacking: readonly string[];
  readonly uncertain: readonly Uncertain[];
}

/** Readings become form: back, head and tree of one horse and saddle, or the names of what is missing. */
export function formsOf(survey: Survey, horseIndex: number): Forms {
  const horse = survey.horses[horseIndex];
  if (horse === undefined) throw new RangeError(`horse: ${horseIndex} is not one of ${survey.horses.length}`);
  const back = buildBack(horse, "cold");
  const cold = buildFront(horse, "cold");
  const warm = buildFront(horse, "warm");
  const tree = buildTree(survey.saddle);
  const head = buildHead(survey.saddle);
  const sections = sectionsOfTree(survey.saddle);
  const plates = survey.platesAtHand.map((plate, index) => buildPlate(plate, index, survey.saddle));
  const inserts = survey.saddle.inserts.positions.map((position, index) =>
    buildInsert(position, index, survey.saddle),
  );
  const mass = massOf(survey.rider);
  const loads = loadsRead(survey, horse);
  const ofHorse = isLacking(back) ? back.lacking.map((path) => `horses[${horseIndex}].${path}`) : [];
  return {
    back: kept(back),
    fronts: { cold: kept(cold), warm: kept(warm) },
    tree: kept(tree),
    head: kept(head),
    sections,
    plates: plates.map(kept),
    inserts: inserts.map(kept),
    mass,
    loads,
    lacking: [...ofHorse, ...(isLacking(tree) ? tree.lacking : [])],
    uncertain: once([
      ...[back, cold, warm, tree, head, ...plates, ...inserts].flatMap((one) =>
        isLacking(one) ? [] : one.uncertain,
      ),
      ...sections.uncertain,
      ...mass.uncertain,
      ...loads.uncertain,
      ...ASSUMED_UNCERTAIN,
    ]),
  };
}

function kept<T extends object>(built: T | { readonly lacking: readonly string[] }): T | undefined {
  return isLacking(built) ? undefined : built;
}

/** Each input once: a doubt shared by back and tree is one doubt. */
function once(all: readonly Uncertain[]): readonly Uncertain[] {
  return [...new Map(all.map((one) => [one.id, one])).values()];
}
