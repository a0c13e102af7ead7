import type { Placed } from "../answer/placed.ts";
import type { Answer } from "../answer/result.ts";
import type { JudgedLimit } from "../judge/judgement.ts";
import { limitRule } from "../judge/limits/all.ts";
import type { SectionDrawing } from "../report/sheet-data.ts";

const CLEARANCES = ["clearance-girthed", "clearance-rider-up", "clearance-half-seat"];

/**
 * The head at the front as it is drawn: so high that its crown clears the back by what was read (after a change: read
 * and moved by the computed difference). The computed height is never shown, and where no clearance was read no head.
 */
export function headDrawn({
  answers,
  placed,
  wanted,
  chosen,
}: Answer): Pick<SectionDrawing, "head" | "spread"> {
  const read = clearanceOf(answers.limitsToday);
  const today = lifted(placed?.today.front, read);
  if (today === undefined || read === undefined) return { head: undefined, spread: undefined };
  const later = answers.limitsAfter.find((one) => one.rule === read.rule);
  const after = lifted(placed?.chosen?.front, later);
  const stands = `the head stands at its clearance as read ${limitRule(read.rule).state.replace(/-/g, " ")}`;
  return {
    head: { today: closed(today), chosen: after && closed(after), stands },
    spread:
      wanted &&
      spreadOf(after ?? today, wanted.today.spreadMm + (after === undefined ? 0 : (chosen?.changeMm ?? 0))),
  };
}

/** The first clearance that was read, in the order of the work. */
function clearanceOf(limits: readonly JudgedLimit[]): JudgedLimit | undefined {
  return CLEARANCES.flatMap((rule) =>
    limits.filter((one) => one.rule === rule && one.value !== undefined),
  )[0];
}

/** An outline runs from the near tip inside to the off tip inside, and back outside. */
function lifted(placed: Placed | undefined, clearance: JudgedLimit | undefined): Placed["head"] | undefined {
  if (placed === undefined || placed.head.length === 0 || clearance?.value === undefined) return undefined;
  const crown = Math.max(...placed.head.slice(0, placed.head.length / 2).map(([, z]) => z));
  const up = clearance.value - crown;
  return placed.head.map(([y, z]) => [y, z + up] as const);
}

function spreadOf(head: Placed["head"], spreadMm: number): SectionDrawing["spread"] {
  const near = head[0];
  const off = head[head.length / 2 - 1];
  return near && off && { figure: { value: spreadMm, u: undefined }, tips: { near, off } };
}

/** A run that ends where it began. */
export const closed = (run: Placed["back"]): Placed["back"] =>
  run[0] === undefined ? run : [...run, run[0]];
