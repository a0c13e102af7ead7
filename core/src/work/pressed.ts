import { log } from "../engine/number/index.ts";
import type { Particle } from "./belief.ts";
import { HOLD_MIN, PASS_NOISE } from "./doubts.ts";
import { type HalfCurve, read } from "./half-curve.ts";

/** One head after one pass, and what it was like in the press. mm, N. */
export interface Pressed {
  readonly keptMm: readonly [near: number, off: number];
  /** Standard uncertainty of each beside the head's own curve. */
  readonly keptU: readonly [near: number, off: number];
  /** Furthest that each half was ever held at in this job. */
  readonly heldMm: readonly [near: number, off: number];
  readonly forceN: number;
  /** Greatest stretch of the wood in the press, without unit. */
  readonly stretch: number;
}

/** What a pass does: travel of both tips from first touch, or of each; and how long it is held. */
export interface PassMade {
  readonly travelMm: number | readonly [near: number, off: number];
  readonly holdMin: number;
  /** Passes before it in this job. */
  readonly before: number;
}

/** One head through one pass. Both halves bear the same force, so the weaker one moves more; travel read on each side is each side's. */
export function pressed(head: Particle, { travelMm, holdMin, before }: PassMade): Pressed {
  const heldMm = typeof travelMm === "number" ? shared(head, travelMm) : apart(head, travelMm);
  const hold = head.relaxes * (1 + log(Math.max(1, holdMin) / HOLD_MIN) / log(10));
  const springs = head.springBack * (1 - Math.max(0, hold));
  const nearForce = Math.sqrt(head.nearStronger) * read(head.curve.forceN, heldMm[0]);
  return {
    keptMm: [kept(head, heldMm[0], 0, springs, before), kept(head, heldMm[1], 1, springs, before)],
    keptU: [keptU(head, heldMm, 0), keptU(head, heldMm, 1)],
    heldMm: [Math.max(heldMm[0], head.heldMm[0]), Math.max(heldMm[1], head.heldMm[1])],
    forceN: nearForce,
    stretch: read(head.curve.stretch, Math.max(heldMm[0], heldMm[1])),
  };
}

function kept(head: Particle, heldMm: number, k: 0 | 1, springs: number, before: number): number {
  const factor = springs * (k === 0 ? head.halfSpringBack : 1 / head.halfSpringBack);
  return Math.max(head.keptMm[k], heldMm - factor * (heldMm - tableAfter(head, heldMm, before)));
}

function keptU(head: Particle, heldMm: readonly [number, number], k: 0 | 1): number {
  const beyond = PASS_NOISE.perMmBeyond * Math.max(0, heldMm[k] - head.heldMm[k]);
  return Math.sqrt(PASS_NOISE.mm * PASS_NOISE.mm + beyond * beyond);
}

/** What the table keeps: joints that slipped in a pass before keep less. */
function tableAfter({ curve, slip }: Particle, heldMm: number, before: number): number {
  const first = read(curve.keptFirstMm, heldMm);
  return before === 0 ? first : first - slip * (first - read(curve.keptLaterMm, heldMm));
}

function apart(
  { keptMm, slackMm }: Particle,
  travelMm: readonly [number, number],
): readonly [number, number] {
  const held = (k: 0 | 1) => keptMm[k] + Math.max(0, travelMm[k] - slackMm / 2);
  return [held(0), held(1)];
}

/** Splits what both are held at so that both bear the same force. */
function shared(
  { curve, keptMm, slackMm, nearStronger }: Particle,
  travelMm: number,
): readonly [number, number] {
  const all = keptMm[0] + keptMm[1] + Math.max(0, travelMm - slackMm);
  let [lo, hi] = [0, all];
  for (let i = 0; i < HALVINGS; i++) {
    const near = (lo + hi) / 2;
    if (forceOf(curve, near, keptMm[0]) * nearStronger < forceOf(curve, all - near, keptMm[1])) lo = near;
    else hi = near;
  }
  const near = (lo + hi) / 2;
  return [near, all - near];
}
/** Splits to a five-hundredth of the travel, far below what a pass is known to. */
const HALVINGS = 9;

/** On the curve, or on the elastic way up to it from what is kept already. */
function forceOf(curve: HalfCurve, heldMm: number, keptMm: number): number {
  const elastic = (heldMm - keptMm) * (read(curve.forceN, 1) - read(curve.forceN, 0));
  return Math.min(read(curve.forceN, heldMm), elastic);
}
