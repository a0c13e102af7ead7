import { CREEP } from "../reach/creep.ts";

/*
 * What the table of a head does not know about the head in the press. All of it assumption, from memory of the bench where
 * it says so; nothing here is a limit.
 */

/** Travel after first touch that bends nothing, both sides together, mm. Assumption, from memory: leather and panel bed in, bare wood hardly. */
export const SLACK_MM = { bare: [0, 1.5], dressed: [1, 6] } as const;

/**
 * What is believed of a head, what was measured of its plates among it, is drawn so much wider than said; the spread read before
 * the first pass is not. Ranges are memory, and a head of another kind must be caught up with within a pass. Derived from
 * simulated jobs: at 1 the 90 % intervals hold 80 to 84 of 100 later passes on heads from shifted and wider ranges, at 1.4
 * 87 to 91, and 94 on heads from the ranges themselves.
 */
export const BELIEVED_WIDER = 1.4;

/** Standard deviations of factors (of their logarithm), and ranges. */
export const DOUBT = {
  /** Spring-back beside the table's: the arch is no row of pieces. Assumption. */
  springBack: 0.1,
  halfSpringBack: 0.05,
  /** One half against the other. Assumption: plates alike, wood within a few parts in a hundred, rivets not. */
  nearStronger: 0.08,
  /** Gauge of a press against the force at the tips. Assumption. */
  gauge: 0.15,
  /** Part of the table's loss by slip. Assumption. */
  slip: [0.6, 1.2],
  /** Part of the spring-back that is gone after ten minutes' hold: wood relaxes with the logarithm of time. From memory. */
  relaxes: [0, 0.06],
} as const;

/**
 * What a pass keeps beside what a head of known curve would, mm a half: always, and with each mm that it goes beyond what
 * the half was held at before, for there the curve is carried on and not read. Assumption.
 */
export const PASS_NOISE = { mm: 0.2, perMmBeyond: 0.07 } as const;
/** How near a hand sets a travel that it was told, mm. Assumption. */
export const TRAVEL_SET_MM = 0.3;
/** A force that was read agrees with the table's to this part. Assumption. */
export const FORCE_NOISE = 0.05;
/** Hold that `relaxes` is told for, min, and what a pass is held where nobody wrote it down. Common practice, no source: 5 to 15. */
export const HOLD_MIN = 10;
/** One reading of a press's gauge, as part of the force. Assumption. */
export const GAUGE_OWN = 0.03;
/** Walks back in the day after the last pass. From memory: wood 1 to 3 mm at the tips, polymer with a bar 20 to 40 % of the change. */
export const WALKS_BACK = {
  wood: "1 to 3 mm at the tips walk back within 24 h (from memory)",
  polymer: `${CREEP.partBack.map((part) => 100 * part).join(" to ")} % of the change walks back within a day to a week (${CREEP.provenance})`,
} as const;
