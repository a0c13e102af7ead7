import type { JudgedLimit } from "../judgement.ts";
import type { LimitId } from "../limits/limit-ids.ts";

export type Cure = "set-up" | "panel";

interface Curable {
  /** What cures it when it lies between, and when it lies outside; nothing here leaves the head, or another saddle. */
  readonly between: Cure | undefined;
  readonly outside: Cure | undefined;
  /** Without it no fit is called whole. */
  readonly needed: boolean;
  /** It tells of the head: it moves with the head's setting. */
  readonly ofHead: boolean;
  /** It tells of head or rails: a setting has to answer for it, whatever the panel may do. */
  readonly ofFrame: boolean;
}

const head = (needed: boolean): Curable => ({
  between: "panel",
  outside: undefined,
  needed,
  ofHead: true,
  ofFrame: true,
});
const panel = (needed: boolean): Curable => ({
  between: "panel",
  outside: "panel",
  needed,
  ofHead: false,
  ofFrame: false,
});
const setUp = (needed: boolean): Curable => ({
  between: "set-up",
  outside: "set-up",
  needed,
  ofHead: false,
  ofFrame: false,
});
const frame: Curable = { between: "panel", outside: undefined, needed: true, ofHead: false, ofFrame: true };

/** Found by calculation: it forbids a whole, and its absence is no part of one. */
const closes: Curable = {
  between: undefined,
  outside: undefined,
  needed: false,
  ofHead: true,
  ofFrame: true,
};

/** What cures what (common practice, no source). Limits that are not here are read by the gates or only said. */
export const CURES: { readonly [R in LimitId]?: Curable } = {
  "clearance-girthed": head(true),
  "clearance-rider-up": head(true),
  "clearance-half-seat": head(true),
  "clearance-side": head(true),
  "face-front": head(true),
  "spread-wanted": head(false),
  feeler: head(false),
  "channel-over-ridge": frame,
  "channel-width": frame,
  "face-rail": frame,
  rock: frame,
  bridge: panel(true),
  "seat-slope": panel(true),
  "saddle-panel-sides": panel(false),
  fill: { between: "panel", outside: undefined, needed: false, ofHead: true, ofFrame: true },
  "girth-groove": setUp(true),
  "side-offset": setUp(false),
  "point-behind-blade": setUp(true),
  "panel-rear-edge": setUp(true),
  "pressure-head-walk": closes,
  "ridge-touch": closes,
};

export function curable(rule: string): Curable | undefined {
  return rule in CURES ? CURES[rule as LimitId] : undefined;
}

/** What cures this limit as it was judged; undefined when nothing short of the head does, or nothing at all. */
export function cureOf(limit: JudgedLimit): Cure | undefined {
  const at = curable(limit.rule);
  return limit.outcome === "between" ? at?.between : limit.outcome === "outside" ? at?.outside : undefined;
}
