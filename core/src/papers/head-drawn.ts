import { clearanceRead, headAtClearance, type Placed } from "../answer/placed.ts";
import type { Answer } from "../answer/result.ts";
import type { JudgedLimit } from "../judge/judgement.ts";
import { limitRule } from "../judge/limits/all.ts";
import type { SectionDrawing } from "../report/sheet-data.ts";

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
  const read = clearanceRead(answers.limitsToday);
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

function lifted(placed: Placed | undefined, clearance: JudgedLimit | undefined): Placed["head"] | undefined {
  if (placed === undefined || placed.head.length === 0 || clearance?.value === undefined) return undefined;
  return headAtClearance(placed.head, clearance.value);
}

function spreadOf(head: Placed["head"], spreadMm: number): SectionDrawing["spread"] {
  const near = head[0];
  const off = head[head.length / 2 - 1];
  return near && off && { figure: { value: spreadMm, u: undefined }, tips: { near, off } };
}

/** A run that ends where it began. */
export const closed = (run: Placed["back"]): Placed["back"] =>
  run[0] === undefined ? run : [...run, run[0]];
