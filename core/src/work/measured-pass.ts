/** A number that was read, with its standard uncertainty. */
export interface Known {
  readonly value: number;
  readonly u: number;
}

/**
 * One pass as it was measured. Lengths in mm, in the way the job goes (closing counts above zero too), kept ones since
 * before the first pass of the job.
 */
export interface MeasuredPass {
  /** Travel from first touch: of both tips together, or of each. */
  readonly travel: { readonly both: Known } | { readonly near: Known; readonly off: Known };
  /** Force at the tips at the end of the travel, N. */
  readonly forceN: Known | undefined;
  readonly holdMin: number;
  /** After it was let go: spread at the tips and at the upper level, and how far each half has turned, rad. */
  readonly keptTips: Known;
  readonly keptUpper: Known | undefined;
  readonly turnNear: Known | undefined;
  readonly turnOff: Known | undefined;
  /** Spread at the tips a day later, before anything else was done. */
  readonly keptNextDay: Known | undefined;
}

/** Travel of both tips together. */
export function travelOf({ travel }: MeasuredPass): Known {
  if ("both" in travel) return travel.both;
  const { near, off } = travel;
  return { value: near.value + off.value, u: Math.sqrt(near.u * near.u + off.u * off.u) };
}
