import { type Balance, balanceAt, kept } from "./balance.ts";
import { rootOf } from "./root.ts";
import { bendingStiffness, type Section, type SectionState } from "./section.ts";
import type { SectionReading } from "./section-reading.ts";

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

/** Both ways on from a state, each followed step by step as far as it was asked for; the state itself comes first. */
interface Ways {
  readonly up: Node[];
  readonly down: Node[];
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
const FOLLOWED = new WeakMap<SectionState, { readonly section: Section; readonly ways: Ways }>();

function waysFrom(section: Section, state: SectionState): Ways {
  const known = FOLLOWED.get(state);
  if (known?.section === section) return known.ways;
  const node: Node = { state, momentNmm: balanced(section, state, state.curvaturePerMm).momentNmm };
  const ways = { up: [node], down: [node] };
  FOLLOWED.set(state, { section, ways });
  return ways;
}

/** Walks one step further; undefined where the section gives way. */
function walkOn(section: Section, nodes: Node[], sign: number): Node | undefined {
  const last = nodes.at(-1);
  if (last === undefined || nodes.length > STEPS_MOST) return undefined;
  const balance = balanceAt(section, last.state, last.state.curvaturePerMm + sign * stepPerMm(section));
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
  const ways = waysFrom(section, state);
  const sign = momentNmm >= ways.up[0]!.momentNmm ? 1 : -1;
  const nodes = sign > 0 ? ways.up : ways.down;
  while (nodes.length < 2 || sign * (nodes.at(-1)!.momentNmm - momentNmm) < 0)
    if (walkOn(section, nodes, sign) === undefined) return undefined;
  let [below, above] = [0, nodes.length - 1];
  while (above - below > 1) {
    const middle = (below + above) >> 1;
    if (sign * (nodes[middle]!.momentNmm - momentNmm) < 0) below = middle;
    else above = middle;
  }
  const [from, to] = [nodes[below]!, nodes[above]!];
  return { from, to, part: (momentNmm - from.momentNmm) / (to.momentNmm - from.momentNmm) };
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
