import { type Balance, balanceAt, kept } from "./balance.ts";
import type { SectionReading } from "./read-section.ts";
import { rootOf } from "./root.ts";
import { bendingStiffness, type Section, type SectionState } from "./section.ts";

/** Longest step of strain at a section's faces; the path within a step is taken as straight. */
const STEP_STRAIN = 1e-3;
/** A section whose faces have come so far is not followed on: no law here holds there. */
const STEPS_MOST = 60;
/** A moment is met to this part of the elastic moment of one step. */
const MET = 1e-8;

/** Thrown where layers cannot be brought into balance, or bear no such moment: a section that gives way. */
export class NoBalance extends Error {}

/** A place on a path: where the section stands, the moment there, and, once asked for, where it is when let go and what it bears. */
export interface Node {
  readonly state: SectionState;
  readonly momentNmm: number;
  free?: SectionState;
  reading?: SectionReading;
}

/** One way on from a state, followed step by step as far as it was asked for. */
interface Path {
  readonly nodes: Node[];
}

/** Curvature of one step, per mm. */
export function stepPerMm({ layers }: Section): number {
  const up = Math.max(...layers.map((layer) => layer.middleMm + layer.thicknessMm / 2));
  const down = Math.min(...layers.map((layer) => layer.middleMm - layer.thicknessMm / 2));
  return STEP_STRAIN / ((up - down) / 2);
}

export function balanced(section: Section, state: SectionState, curvature: number): Balance {
  const balance = balanceAt(section, state, curvature);
  if (balance) return balance;
  throw new NoBalance(`no strain balances the section at a curvature of ${curvature} per mm`);
}

/** Paths that were followed before, so that many pieces and many forces share one walk. They change no answer. */
const FOLLOWED = new WeakMap<SectionState, WeakMap<Section, Ways>>();
interface Ways {
  up?: Path;
  down?: Path;
}

function pathFrom(section: Section, state: SectionState, way: "up" | "down"): Path {
  const ofState = FOLLOWED.get(state) ?? new WeakMap<Section, Ways>();
  FOLLOWED.set(state, ofState);
  const both = ofState.get(section) ?? {};
  ofState.set(section, both);
  const known = both[way];
  if (known) return known;
  const { momentNmm } = balanced(section, state, state.curvaturePerMm);
  const path: Path = { nodes: [{ state, momentNmm }] };
  both[way] = path;
  return path;
}

/** The next node of a path, walked if it was not yet; undefined where the section gives way. */
function nodeAt(section: Section, { nodes }: Path, way: "up" | "down", at: number): Node | undefined {
  const known = nodes[at];
  if (known) return known;
  const last = nodes[at - 1];
  if (last === undefined || at > STEPS_MOST) return undefined;
  const step = stepPerMm(section) * (way === "up" ? 1 : -1);
  const balance = balanceAt(section, last.state, last.state.curvaturePerMm + step);
  if (balance === undefined) return undefined;
  const node = { state: kept(section, last.state, balance), momentNmm: balance.momentNmm };
  nodes.push(node);
  return node;
}

/** The two nodes of the path on from a state between which it carries a moment; undefined where it cannot carry it. */
export function nodesAt(
  section: Section,
  state: SectionState,
  momentNmm: number,
): { readonly from: Node; readonly to: Node; readonly part: number } | undefined {
  const up = pathFrom(section, state, "up");
  const start = up.nodes[0]?.momentNmm ?? 0;
  const way = momentNmm >= start ? "up" : "down";
  const sign = way === "up" ? 1 : -1;
  const path = way === "up" ? up : pathFrom(section, state, way);
  for (let i = 0; ; i++) {
    const from = nodeAt(section, path, way, i);
    const to = nodeAt(section, path, way, i + 1);
    if (from === undefined || to === undefined) return undefined;
    if (sign * (to.momentNmm - momentNmm) < 0) continue;
    return { from, to, part: (momentNmm - from.momentNmm) / (to.momentNmm - from.momentNmm) };
  }
}

/** Bent on, or back, until it carries a moment, N mm. Throws `NoBalance` where it cannot carry it. */
export function bendToMoment(section: Section, state: SectionState, momentNmm: number): SectionState {
  const place = nodesAt(section, state, momentNmm);
  if (place === undefined) throw new NoBalance(`the section carries no moment of ${momentNmm} N mm`);
  const { from, to, part } = place;
  const within = MET * bendingStiffness(section, section.composite) * stepPerMm(section);
  const a = from.state.curvaturePerMm;
  let last: Balance | undefined;
  const found = rootOf(
    (curvature) => {
      last = balanced(section, from.state, curvature);
      return { y: last.momentNmm - momentNmm, slope: last.stiffness };
    },
    a + part * (to.state.curvaturePerMm - a),
    within,
    stepPerMm(section),
  );
  if (found === undefined || last === undefined)
    throw new NoBalance(`the section carries no moment of ${momentNmm} N mm`);
  return kept(section, from.state, last);
}
