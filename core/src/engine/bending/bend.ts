import { exp } from "../number/index.ts";
import { type Balance, balanceAt, kept } from "./balance.ts";
import { rootOf } from "./root.ts";
import { bendingStiffness, type Section, type SectionState } from "./section.ts";

/** Longest step of strain at a section's faces; the path within a step is taken as straight. */
const STEP_STRAIN = 1e-3;
/** A moment is met to this part of the elastic moment of a strain of 0.001 at the faces. */
const MET = 1e-9;

/** Thrown where layers cannot be brought into balance: a section that has nothing left to give. */
export class NoBalance extends Error {}

function balanced(section: Section, state: SectionState, curvature: number): Balance {
  const balance = balanceAt(section, state, curvature);
  if (balance) return balance;
  throw new NoBalance(`no strain balances the section at a curvature of ${curvature} per mm`);
}

/** Half of the section's height about its faces' middle, mm. */
function halfHeightMm({ layers }: Section): number {
  const up = Math.max(...layers.map((layer) => layer.middleMm + layer.thicknessMm / 2));
  const down = Math.min(...layers.map((layer) => layer.middleMm - layer.thicknessMm / 2));
  return (up - down) / 2;
}

const stepPerMm = (section: Section): number => STEP_STRAIN / halfHeightMm(section);

/** Bent on to a curvature, per mm, from where the state stands. Throws `NoBalance` where the section gives way. */
export function bendTo(section: Section, state: SectionState, curvaturePerMm: number): SectionState {
  const steps = Math.ceil(Math.abs(curvaturePerMm - state.curvaturePerMm) / stepPerMm(section));
  let now = state;
  for (let i = 1; i <= steps; i++) {
    const part = i / steps;
    const to = state.curvaturePerMm + part * (curvaturePerMm - state.curvaturePerMm);
    now = kept(section, now, balanced(section, now, i === steps ? curvaturePerMm : to));
  }
  return now;
}

/** Bent on, or back, until it carries a moment, N mm. Throws `NoBalance` where it cannot carry it. */
export function bendToMoment(section: Section, state: SectionState, momentNmm: number): SectionState {
  const longest = stepPerMm(section);
  const within = MET * bendingStiffness(section, section.composite) * longest;
  let now = state;
  for (let i = 0; i < STEPS_MOST; i++) {
    const from = now;
    let last: Balance | undefined;
    const to = rootOf(
      (curvature) => {
        last = balanced(section, from, curvature);
        return { y: last.momentNmm - momentNmm, slope: last.stiffness };
      },
      from.curvaturePerMm,
      within,
    );
    if (to === undefined || last === undefined) break;
    const way = to - from.curvaturePerMm;
    if (Math.abs(way) <= longest) return kept(section, from, last);
    now = kept(section, from, balanced(section, from, from.curvaturePerMm + Math.sign(way) * longest));
  }
  throw new NoBalance(`the section carries no moment of ${momentNmm} N mm`);
}
const STEPS_MOST = 400;

/** Let go: bent back to no moment. What yielded, crushed and slipped stays, and joints that slipped hold less from now on. */
export function release(section: Section, state: SectionState): SectionState {
  const free = bendToMoment(section, state, 0);
  return { ...free, composite: wornComposite(section, free) };
}

/** The composite factor after the slip so far: that of the layer that slipped most. */
function wornComposite({ composite, wear }: Section, { slip }: SectionState): number {
  if (wear === undefined) return composite;
  const most = slip.reduce((largest, one) => Math.max(largest, one), 0);
  return wear.composite + (composite - wear.composite) * exp(-most / wear.slipStrain);
}
