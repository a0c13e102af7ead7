import type { Pose } from "./problem.ts";

/** Where a body came to rest at one value of whatever is being changed step by step. */
export interface Passed {
  readonly at: number;
  readonly pose: Pose;
}

/**
 * A start for the next step of a sweep: on the straight line through the last two poses, or the only one. What a
 * start is moves no answer, only how soon it is found.
 */
export function poseAhead(passed: readonly Passed[], at: number): Pose | undefined {
  const [before, last] = [passed.at(-2), passed.at(-1)];
  if (before === undefined || last === undefined || before.at === last.at) return last?.pose;
  const part = (at - last.at) / (last.at - before.at);
  const on = (of: keyof Pose) => last.pose[of] + part * (last.pose[of] - before.pose[of]);
  return { heave: on("heave"), pitch: on("pitch"), roll: on("roll") };
}
