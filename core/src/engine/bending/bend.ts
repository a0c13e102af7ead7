import { exp } from "../number/index.ts";
import { kept } from "./balance.ts";
import { balanced, bendToMoment, stepPerMm } from "./path.ts";
import type { Section, SectionState } from "./section.ts";

/** Bent on to a curvature, per mm, from where the state stands. Throws `NoBalance` where the section gives way. */
export function bendTo(section: Section, state: SectionState, curvaturePerMm: number): SectionState {
  const steps = Math.ceil(Math.abs(curvaturePerMm - state.curvaturePerMm) / stepPerMm(section));
  let now = state;
  for (let i = 1; i <= steps; i++) {
    const to = state.curvaturePerMm + (i / steps) * (curvaturePerMm - state.curvaturePerMm);
    now = kept(section, now, balanced(section, now, i === steps ? curvaturePerMm : to));
  }
  return now;
}

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
