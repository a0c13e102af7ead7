import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "@treewright/core/terms/answers.ts";

export const HORSE_IDS = HORSE_ANSWERS;
export const SADDLE_IDS = SADDLE_ANSWERS;
export const WORK_IDS = WORK_ANSWERS;

/** What was kept as one of these ids; undefined for one that this version does not know. */
export const idIn = <Id extends string>(ids: readonly Id[], kept: unknown): Id | undefined =>
  ids.find((one) => one === kept);
