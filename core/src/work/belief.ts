import { exp } from "../engine/number/index.ts";
import { drawNormal, drawUniform } from "../engine/random.ts";
import { BELIEVED_WIDER, DOUBT, SLACK_MM } from "./doubts.ts";
import type { HalfCurve } from "./half-curve.ts";

/** One head that may be the one in the press, and where it stands now. Half 0 is near, 1 is off. */
export interface Particle {
  readonly curve: HalfCurve;
  /** Travel from first touch that bends nothing: jaws and faces bedding in, both sides together. mm */
  readonly slackMm: number;
  /** Springs back this much more than its table says, and each half against the other. */
  readonly springBack: number;
  readonly halfSpringBack: number;
  /** Near half stronger than the off one by this factor. */
  readonly nearStronger: number;
  /** Force on the gauge over the force at the tips. */
  readonly gauge: number;
  /** How much of the loss by slip that the table shows happens here. */
  readonly slip: number;
  /** Part of the spring-back that a hold of ten minutes takes away. */
  readonly relaxes: number;
  /** Error of the spread read before the first pass, which all kept changes share. */
  readonly datumMm: number;
  /** Kept so far, and the furthest each half was held at, since before the job. mm */
  readonly keptMm: readonly [near: number, off: number];
  readonly heldMm: readonly [near: number, off: number];
}

/** What is believed of one head, dressed or bare, never both: heads alike in weight. */
export interface PressBelief {
  readonly dressed: boolean;
  readonly seed: number;
  readonly passes: number;
  readonly particles: readonly Particle[];
}

/** Heads of one table: alike in plates and wood, apart in all else. */
const EACH = 8;

/** Before the first pass: some heads for each curve. datumU: uncertainty of the spread read before it, mm. */
export function firstBelief(
  curves: readonly HalfCurve[],
  dressed: boolean,
  datumU: number,
  seed: number,
): PressBelief {
  const particles = Array.from({ length: curves.length * EACH }, (_, i): Particle => {
    const curve = curves[i % curves.length];
    if (curve === undefined) throw new RangeError("no head is believed");
    return unpressed(curve, dressed, datumU, seed, i, BELIEVED_WIDER);
  });
  return { dressed, seed, passes: 0, particles };
}

/** A head of a table before its first pass, all else of it drawn; factors so much `wider` than they are said to be, the datum, a reading, as it was read. */
export function unpressed(
  curve: HalfCurve,
  dressed: boolean,
  datumU: number,
  seed: number,
  i: number,
  wider = 1,
): Particle {
  const normal = (name: string) => wider * drawNormal(seed, i, `${name} of a head`);
  const uniform = (name: string, [lo, hi]: readonly [number, number]) =>
    lo + (hi - lo) * drawUniform(seed, i, `${name} of a head`);
  return {
    curve,
    slackMm: uniform("slack", dressed ? SLACK_MM.dressed : SLACK_MM.bare),
    springBack: exp(DOUBT.springBack * normal("spring-back")),
    halfSpringBack: exp(DOUBT.halfSpringBack * normal("half spring-back")),
    nearStronger: exp(DOUBT.nearStronger * normal("near stronger")),
    gauge: exp(DOUBT.gauge * normal("gauge")),
    slip: uniform("slip", DOUBT.slip),
    relaxes: uniform("relaxes", DOUBT.relaxes),
    datumMm: datumU * drawNormal(seed, i, "datum of a head"),
    keptMm: [0, 0],
    heldMm: [0, 0],
  };
}
