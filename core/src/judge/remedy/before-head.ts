import { limitRule } from "../limits/all.ts";
import type { Choice, FitWish } from "./choice.ts";
import { lacksForNothing } from "./evidence.ts";
import { type Fault, isWhole } from "./faults.ts";
import type { Assume } from "./judged.ts";
import type { Known } from "./known.ts";
import { hasRoomToMove } from "./place.ts";
import { isWasted } from "./wasted.ts";

const WRONG_PANEL: readonly string[] = ["flat", "lumpy", "wrong-shape"];
const PLACE_RULES: readonly string[] = ["point-behind-blade", "panel-rear-edge"];
const cures = (faults: readonly Fault[]): FitWish[] => [
  ...new Set(faults.flatMap((fault) => fault.cure ?? [])),
];

/** A panel that is wrong in itself is put right before a head is judged. */
export function panelFirst({ survey }: Known): boolean {
  const { state, square } = survey.saddle.panel;
  return WRONG_PANEL.includes(state) || square === "doubtful" || square === "failed";
}

/** On the blade or behind the last rib, and no room to move it: no head cures that. */
export function wrongPlace(known: Known, faults: readonly Fault[]): boolean {
  return (
    faults.some((fault) => PLACE_RULES.includes(fault.rule) && fault.outcome === "outside") &&
    hasRoomToMove(known.today) === false
  );
}

/** Nothing to do: nothing between or outside that anything cures, and the hands agree. */
export function nothing(known: Known, faults: readonly Fault[]): Choice | undefined {
  if (!isWhole(faults) || faults.some((fault) => fault.cure !== undefined)) return undefined;
  return lacksForNothing(known.horse, known.path) ?? { wish: "nothing", rules: ["fit-all-inside"], also: [] };
}

/** Girthing, placing, padding: where what is left after it has nothing outside and at most one between. */
export function setUp(faults: readonly Fault[]): Choice | undefined {
  const left = faults.filter((fault) => fault.cure !== "set-up");
  if (left.length === faults.length || !isWhole(left)) return undefined;
  return { wish: "set-up", rules: ["fit-set-up"], also: cures(left) };
}

/** Whether the fill that each side needs is small enough to be a cure; what cannot be told is taken as assumed. */
function fillCures({ fillMm }: Known, assume: Assume): boolean {
  const [, most] = limitRule("fill").inside;
  return [fillMm.near, fillMm.off].every((mm) => (mm === undefined ? assume === "inside" : mm <= most));
}

/** The panel: the head inside but for one between at the most, everything else its to cure. */
export function panel(known: Known, faults: readonly Fault[], assume: Assume): Choice | undefined {
  const ofHead = faults.filter((fault) => fault.ofHead);
  const left = faults.filter((fault) => fault.cure !== "panel");
  if (left.length === faults.length || !isWhole(ofHead) || !isWhole(left) || !fillCures(known, assume))
    return undefined;
  const rules = isWasted(known, "inside") ? ["fit-wasted", "fit-panel"] : ["fit-panel"];
  return { wish: "panel", rules, also: cures(left) };
}
