import { type Arch, type ArchState, openingMm, passFor, unbentArch } from "../../engine/bending/index.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import { isRead } from "../../survey/reading.ts";
import { pressHistory } from "../history.ts";

/** The head as earlier alterations left it, as far as they are on record. */
export interface Past {
  readonly state: ArchState;
  /** Change of each pass that was worked through, oldest first, mm at the tips. */
  readonly changesMm: readonly number[];
  /** A change on record is more than the section could keep: what comes after it stands on less than was done. */
  readonly cutShort: boolean;
}

/**
 * The changes that bent it, oldest first: those on record, and before them what record and measure differ by, since
 * that was done as well. An exchange bends nothing.
 */
export function changesThatBent(saddle: SurveyedSaddle): readonly number[] {
  const recorded = saddle.past.alterations.flatMap(({ way, change }) =>
    way === "exchange" || !isRead(change) || change.value === 0 ? [] : [change.value],
  );
  const [net = 0, measured = net] = pressHistory(saddle).netsMm;
  const unrecorded = measured - net;
  return Math.abs(unrecorded) < LEAST_MM ? recorded : [unrecorded, ...recorded];
}
/** Less than this between record and measure is reading, not bending, mm (assumption). */
const LEAST_MM = 1;

/** The head bent through its past, each change in one pass: the last held strain of several smaller passes is the same. */
export function throughPast(arch: Arch, changesMm: readonly number[]): Past {
  let state = unbentArch(arch);
  for (const changeMm of changesMm) {
    const pass = passFor(arch, state, openingMm(arch, state) + changeMm);
    if (pass === undefined) return { state, changesMm, cutShort: true };
    state = pass.free;
  }
  return { state, changesMm, cutShort: false };
}
