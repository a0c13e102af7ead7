import type { SurveyedSaddle } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";

/**
 * How the inserts stand: both sides in one position; in two, which is put right first and never used as a cure; or not
 * known. A position that is not in the list is not known.
 */
export type InsertsStand =
  | { readonly how: "alike" /** Index into the positions. */; readonly position: number }
  | { readonly how: "unlike" | "not-known" };

export function insertsStand({ near, off, positions }: SurveyedSaddle["inserts"]): InsertsStand {
  if (!isRead(near) || !isRead(off)) return { how: "not-known" };
  if (near.value !== off.value) return { how: "unlike" };
  return near.value <= positions.length ? { how: "alike", position: near.value - 1 } : { how: "not-known" };
}
