import { cos } from "../engine/number/index.ts";
import type { MeasuredLimit } from "../judge/input.ts";
import type { Head } from "../shape/model.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import { isRead } from "../survey/reading.ts";

/**
 * What the feelers under a template would read after the head has moved: its tips by half the change, square to the
 * point; half way up by half of that; nothing at the top. Derived; the doubt stays today's.
 */
export function feelersAfter(horse: SurveyedHorse, head: Head, changeMm: number, today: readonly MeasuredLimit[]): readonly MeasuredLimit[] {
  return today
    .filter((limit) => limit.rule === "feeler" && limit.value !== undefined && limit.side !== undefined)
    .map((limit) => {
      const side = limit.side ?? "near";
      const tip = (changeMm / 2) * cos(head.halfAngleRad[side]);
      const shifts = { Top: 0, Middle: tip / 2, Tip: tip };
      const read = (["Top", "Middle", "Tip"] as const).map((place) => {
        const measured = horse.template[`${side}${place}`];
        return (isRead(measured) ? measured.value : Number.NaN) + shifts[place];
      });
      return { ...limit, value: Math.max(...read) - Math.min(...read) };
    });
}
