import type { JudgedLimit } from "../judge/judgement.ts";
import { limitRule } from "../judge/limits/all.ts";
import { OPEN } from "../judge/limits/bands.ts";
import type { LimitId } from "../judge/limits/limit-ids.ts";

/** A limit that is not kept, as an owner is told it. `v`: the worst value read, in the rule's unit. */
const FAULTS: { readonly [L in LimitId]: (v: number) => string } = {
  "clearance-girthed": low("over the withers"),
  "clearance-rider-up": (v) =>
    v > limitRule("clearance-rider-up").inside[1]
      ? "It stands high over the withers with the rider up."
      : low("over the withers with the rider up")(v),
  "clearance-half-seat": low("over the withers when the rider stands in the stirrups"),
  "clearance-side": low("beside the withers"),
  "channel-over-ridge": () => "The channel between its panels leaves too little room for the spine.",
  "channel-width": () => "The channel between its panels is narrow.",
  "girth-groove": (v) =>
    `The girth wants to lie about ${mm(v)} ${v > 0 ? "further forward" : "further back"} than its straps hang.`,
  "point-behind-blade": () => "The points of the tree lie close behind the shoulder blade.",
  "panel-rear-edge": () => "The panel reaches too far back, towards the last rib.",
  "side-offset": () => "Ridden, it stays off to one side.",
  "face-front": (v) =>
    v > 0
      ? "In front the tree is steeper than the horse's sides, so that its tips press first."
      : "In front the tree is flatter than the horse's sides, so that it presses high up.",
  "face-rail": (v) =>
    `Along its rails the tree is ${v > 0 ? "steeper" : "flatter"} than the back, so that it bears on its edges.`,
  "spread-wanted": (v) => `The head is about ${mm(v)} too ${v < 0 ? "narrow" : "wide"} at its tips.`,
  feeler: () => "A template of the head that this back wants does not lie evenly in this head.",
  hollow: (v) => `Behind the shoulder there is a hollow of about ${mm(v)}.`,
  "horse-sides-angle": () => "The horse's two sides are not alike in front.",
  "horse-sides-width": () => "The horse's two sides are not alike in front.",
  bridge: () => "There is a gap under the middle of the panel: it bears in front and behind.",
  rock: () => "It rocks on the back when it is pressed by hand.",
  "seat-slope": (v) =>
    `With the rider up the seat tips ${v < 0 ? "forward" : "back"}, by about ${Math.abs(v).toFixed(0)} degrees.`,
  "pressure-head-walk": () => "By our calculation far too much of the load comes under the head of the tree.",
  "ridge-touch": () => "By our calculation its panels press on the spine.",
  fill: (v) => `With this head a fill of about ${mm(v)} a side would be needed.`,
  "saddle-half-angles": crooked(),
  "saddle-diagonals-dressed": crooked(),
  "saddle-diagonals-bare": crooked(),
  "saddle-point-lengths": crooked(),
  "saddle-bench-rock": crooked(),
  "saddle-string": crooked(),
  "saddle-panel-sides": () => "The panel is thicker on one side than on the other.",
};

function low(where: string): (v: number) => string {
  return (v) => (v > 0 ? `There is little room ${where}: about ${mm(v)}.` : `There is no room ${where}.`);
}

function crooked(): () => string {
  return () => "The saddle's two sides are not quite alike.";
}

function mm(value: number): string {
  return `${Math.round(Math.abs(value))} mm`;
}

/** A limit's worst place; undefined where it is kept, not read or no limit. */
export function worstOf(rule: string, limits: readonly JudgedLimit[]): JudgedLimit | undefined {
  const of = limits.filter((one) => one.rule === rule && one.value !== undefined);
  // A template held into the head says more than two readings subtracted.
  const offered = of.filter((one) => one.at.includes("template"));
  return (offered.length > 0 ? offered : of)
    .filter((one) => one.outcome !== "inside")
    .reduce<JudgedLimit | undefined>(
      (most, one) => (most && rank(most) >= rank(one) ? most : one),
      undefined,
    );
}

/** What is wrong at that place, in the owner's words. */
export function faultSays({ rule, value }: JudgedLimit): string | undefined {
  return value === undefined || !isLimit(rule) ? undefined : FAULTS[rule](value);
}

const rank = ({ outcome, value = 0 }: JudgedLimit): number =>
  (outcome === "outside" ? OPEN : 0) + Math.abs(value);

const isLimit = (rule: string): rule is LimitId => rule in FAULTS;
