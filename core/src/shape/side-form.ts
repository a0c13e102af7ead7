import type { Curve } from "../engine/curve/curve.ts";
import { jetAt } from "../engine/curve/spline.ts";

/** Nodes of one side of a section, evenly along it; 2 mm apart on a usual trace. */
export const NODES = 121;
/** Over this distance from the midline a wider or tilted side comes in, so that the midline itself stays (assumption 20 to 40). */
const BLEND_MM = 30;
/** A tilted side turns about the place this far from the midline, the middle of a usual bearing (assumption 60 to 90). */
const TILT_ABOUT_MM = 75;
/** Steepest slope of the back as a height over the ground plan: 75 degrees. Steeper or doubled back, the last such slope goes on. */
export const STEEPEST = 3.7320508075688772;
/** The slope with which a side goes on past its end is taken over its last stretch, mm. */
const END_STRETCH_MM = 15;

/** One side of a section: u away from the midline, z up from its top, mm, at even steps along the trace. */
export interface SideForm {
  readonly u: Float64Array;
  readonly z: Float64Array;
  /** Unit tangent, away from the midline. */
  readonly du: Float64Array;
  readonly dz: Float64Array;
  readonly lengthMm: number;
  /** Slope dz/du with which the side goes on past its end; never up. */
  readonly endSlope: number;
  /** A tilted side turns about this place. */
  readonly about: { readonly u: number; readonly z: number };
}

/** Deviation of one side: wider by widthMm, steeper by tiltRad. */
export interface SideShift {
  readonly widthMm: number;
  readonly tiltRad: number;
}

/** From the top's place on the curve to the side's end, heights counted from `topMm`; the off side runs with y, the near side against it. */
export function sideForm(curve: Curve, from: number, to: number, topMm: number): SideForm {
  const sign = to > from ? 1 : -1;
  const form = {
    u: new Float64Array(NODES),
    z: new Float64Array(NODES),
    du: new Float64Array(NODES),
    dz: new Float64Array(NODES),
  };
  for (let i = 0; i < NODES; i++) {
    const s = from + ((to - from) * i) / (NODES - 1);
    const [y, dy] = jetAt(curve.y, s);
    const [z, dz] = jetAt(curve.z, s);
    const size = Math.sqrt(dy * dy + dz * dz);
    form.u[i] = sign * y;
    form.z[i] = z - topMm;
    form.du[i] = dy / size;
    form.dz[i] = (sign * dz) / size;
  }
  return { ...form, ...endsOf(form.u, form.z, Math.abs(to - from)) };
}

/** What follows from the nodes: the slope past the end and the place to tilt about. */
export function endsOf(
  u: Float64Array,
  z: Float64Array,
  lengthMm: number,
): Pick<SideForm, "lengthMm" | "endSlope" | "about"> {
  const last = u.length - 1;
  const back = Math.max(0, last - Math.max(1, Math.round((END_STRETCH_MM / lengthMm) * last)));
  const about = nodeAt(u, TILT_ABOUT_MM);
  return {
    lengthMm,
    endSlope: slopeOf(u[last]! - u[back]!, z[last]! - z[back]!),
    about: { u: u[about]!, z: z[about]! },
  };
}

/** A slope that goes down, at most as steep as allowed. */
export function slopeOf(du: number, dz: number): number {
  return du * STEEPEST <= -dz ? -STEEPEST : Math.min(0, dz / du);
}

function nodeAt(u: Float64Array, wanted: number): number {
  for (let i = 0; i < u.length; i++) if (u[i]! >= wanted) return i;
  return u.length >> 1;
}

/** How much of a deviation has come in at u: 0 on the midline, 1 from 30 mm on, smooth between. */
export function blend(u: number): number {
  const t = Math.min(1, Math.max(0, u / BLEND_MM));
  return t * t * (3 - 2 * t);
}

/** One side as a deviation moves it. */
export interface ShiftedSide {
  readonly u: Float64Array;
  readonly z: Float64Array;
  /** Slope with which it goes on past its end. */
  readonly beyondSlope: number;
}

/** Every node of the side moved by a shift: outward by the width, turned about its place by the tilt. Linear in the shift. */
export function shiftedSide(form: SideForm, { widthMm, tiltRad }: SideShift): ShiftedSide {
  const u = new Float64Array(NODES);
  const z = new Float64Array(NODES);
  for (let i = 0; i < NODES; i++) {
    const part = blend(form.u[i]!);
    u[i] = form.u[i]! + part * (widthMm + tiltRad * (form.z[i]! - form.about.z));
    z[i] = form.z[i]! - part * tiltRad * (form.u[i]! - form.about.u);
  }
  return { u, z, beyondSlope: form.endSlope - tiltRad * (1 + form.endSlope * form.endSlope) };
}
