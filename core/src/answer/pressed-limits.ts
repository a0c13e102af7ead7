import type { MeasuredLimit } from "../judge/input.ts";
import { closing } from "../judge/limits/pressed.ts";
import type { Whole } from "./whole.ts";

/** What is told of the pressures under a whole: only what closes. */
export const pressedLimits = (whole: Whole): readonly MeasuredLimit[] => closing(figuresUnder(whole));

/** After a change: what closes then, and what closed today, which must not be taken to stand. */
export function pressedAfter(today: Whole, after: Whole): readonly MeasuredLimit[] {
  const before = pressedLimits(today);
  const figures = figuresUnder(after);
  const over = closing(figures);
  return figures.filter(
    (one) => over.includes(one) || before.some(({ rule, at }) => rule === one.rule && at === one.at),
  );
}

function figuresUnder(whole: Whole): readonly MeasuredLimit[] {
  const gaits = whole.ridden().gaits.flatMap((gait) => (gait.ok ? [gait] : []));
  if (gaits.length === 0) return [];
  const walk = gaits.find(({ gait }) => gait === "walk");
  const fronts = walk?.thirds.filter(({ third }) => third === "front") ?? [];
  const figure = (rule: string, at: string, value: number) => ({
    rule,
    at,
    value,
    u: undefined,
    missing: [],
  });
  return [
    ...fronts.map(({ side, meanKPa }) => ({ ...figure("pressure-head-walk", side, meanKPa), side })),
    figure("ridge-touch", "", Math.max(...gaits.map(({ ridgeCm2 }) => ridgeCm2))),
  ];
}
