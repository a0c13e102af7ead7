import { quantile } from "../engine/quantile.ts";
import type { Taken } from "../reach/beliefs.ts";
import { type FrameFigures, frameFigures } from "../reach/frame/figures.ts";
import { frameInDraw } from "../reach/frame/in-draw.ts";
import type { Setting } from "../reach/setting.ts";
import { eachStation } from "../shape/along.ts";
import { drawDeviations } from "../shape/draw.ts";
import type { ByStation } from "../terms/places.ts";
import { DEG_PER_RAD } from "./figures.ts";
import type { Settled } from "./settle.ts";
import { movingOf } from "./sweep.ts";

/** A figure at the base values, and the central 95 % of its draws over the unknown sections of the tree. */
export interface Ranged {
  readonly value: number;
  readonly lo: number;
  readonly hi: number;
}

/** The whole tree that the chosen setting makes, along it and within it; the readings at their best estimate. */
export interface FrameAnswer {
  readonly stations: ByStation<{
    readonly spreadMm: Ranged;
    readonly turnDeg: Ranged;
    readonly upMm: Ranged;
  }>;
  readonly profileMm: Ranged;
  readonly rearPercent: Ranged;
  readonly keptDeg: Ranged;
  /** What stays in the tree when it is let go; undefined for what it does not have. */
  readonly locked: { readonly [K in keyof FrameFigures["locked"]]: Ranged | undefined };
  readonly draws: number;
  readonly taken: readonly Taken[];
}

/** Draws over the unknown sections. */
const FRAME_DRAWS = 200;

/** Undefined where nothing is changed, or where the tree was not read. */
export function frameAnswer(
  settled: Settled | undefined,
  setting: Setting | undefined,
  seed: number,
): FrameAnswer | undefined {
  const { tree, forms } = settled?.ready.means ?? {};
  if (tree === undefined || forms === undefined || setting === undefined) return undefined;
  const moving = movingOf(setting, forms);
  const move = moving.at(tree.head, {});
  if (move.changeMm === 0 && (move.halfTurnRad ?? 0) === 0) return undefined;
  const { sections } = forms;
  const at = (deviations: Readonly<Record<string, number>>) => {
    const travel = frameInDraw(sections, tree, deviations).travel(moving.hingeOffMm);
    return travel && frameFigures(travel, move);
  };
  const best = at({});
  if (best === undefined) return undefined;
  const drawn = Array.from(
    { length: FRAME_DRAWS },
    (_, index) => at(drawDeviations(sections.uncertain, seed, index)) ?? [],
  ).flat();
  return { ...ranges(best, drawn), draws: drawn.length, taken: sections.taken };
}

function ranges(best: FrameFigures, drawn: readonly FrameFigures[]): Omit<FrameAnswer, "draws" | "taken"> {
  const of = (read: (one: FrameFigures) => number): Ranged => {
    const sorted = drawn.map(read).sort((a, b) => a - b);
    const value = read(best);
    if (sorted.length === 0) return { value, lo: value, hi: value };
    return { value, lo: quantile(sorted, 0.025), hi: quantile(sorted, 0.975) };
  };
  const locked = (what: keyof FrameFigures["locked"]) =>
    best.locked[what] === undefined ? undefined : of((one) => one.locked[what] ?? 0);
  return {
    stations: eachStation((station) => ({
      spreadMm: of((one) => one.stations[station].spreadMm),
      turnDeg: of((one) => one.stations[station].turnRad * DEG_PER_RAD),
      upMm: of((one) => one.stations[station].upMm),
    })),
    profileMm: of((one) => one.profileMm),
    rearPercent: of((one) => 100 * one.rearPart),
    keptDeg: of((one) => one.keptRad * DEG_PER_RAD),
    locked: {
      headMPa: locked("headMPa"),
      railMPa: locked("railMPa"),
      plateMPa: locked("plateMPa"),
      springMPa: locked("springMPa"),
      rivetN: locked("rivetN"),
    },
  };
}
