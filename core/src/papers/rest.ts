import type { PlacementSweep } from "../answer/placement.ts";
import type { Answer } from "../answer/result.ts";
import { ASSUMED } from "../fit/assumed.ts";
import type { Fit, Rest } from "../fit/fit.ts";
import { refusalSays } from "../fit/refusal-words.ts";
import type { RestWords } from "../report/sheet-data.ts";

/** How the saddle comes to rest in the calculation, in how many draws, and what was assumed for it. */
export function restWordsOf(answer: Answer): RestWords {
  const { today, chosen, draws } = answer;
  const said =
    today === undefined
      ? [noFit(answer)]
      : [
          ...stands("Today", today, answer.placement?.today),
          ...stands("After the change", chosen, answer.placement?.after),
        ];
  const parts = [
    share("today", draws.resting.today, draws.count),
    share("after the change", draws.resting.after, draws.count),
  ].filter((part) => part !== "");
  const shares = parts.length === 0 ? [] : [`In the draws it came to rest ${parts.join("; ")}.`];
  const tried = today?.rest !== undefined;
  return {
    says: [...said, ...shares],
    assumed: tried
      ? Object.values(ASSUMED).map(({ says, id, base, lo, hi }) =>
          `${says}: ${withUnit(base, id)} (${lo} to ${hi})`.replace("(-", "(−"),
        )
      : [],
    made:
      draws.of === 0
        ? `Engine ${answer.engine}; nothing was drawn.`
        : `Engine ${answer.engine}; ${draws.count} draws of ${draws.of}, seed ${answer.seed}.`,
  };
}

function noFit({ answers: { horse } }: Answer): string {
  return horse.id.startsWith("vet-")
    ? "No fit is worked out, and no template made, for a horse that wants the vet first."
    : "No fit was worked out: not even the head was read.";
}

function stands(
  when: string,
  fit: Fit | undefined,
  placement: PlacementSweep | undefined,
): readonly string[] {
  if (fit === undefined) return [];
  if (fit.rest === undefined)
    return [
      `${when}: how it rests was not worked out; that takes three traces, a profile and the bearing's readings.`,
    ];
  const shifted = placement === undefined ? [] : [toAndFro(placement)];
  return [fit.rest.ok ? `${when}: ${atRest(fit.rest)}` : `${when}: ${refusalSays(fit.rest.why)}`, ...shifted];
}

/** How surely it rests, what is left over along the back, and what a hand would find without load. */
function atRest({ smallestEigenvalue, unbalancedXN, bridgeMm, rockMm }: Rest): string {
  const left = `${Math.abs(unbalancedXN).toFixed(0)} N ${unbalancedXN < 0 ? "forward" : "rearward"}`;
  return `it comes to rest (least stiffness ${smallestEigenvalue.toFixed(0)} N/mm; ${left} along the back is held). Unloaded and hard: gap ${bridgeMm.toFixed(1)} mm, rock ${rockMm.toFixed(1)} mm.`;
}

/** The worst that comes of where the saddle lies. */
function toAndFro({ fromMm, toMm, refused, hardest, seatSpanDeg }: PlacementSweep): string {
  const span = `Put ${Math.abs(fromMm)} mm forward to ${toMm} mm back:`;
  const tips = refused.map(({ placeMm, why }) =>
    `at ${placeMm} mm, ${refusalSays(why)}`.replace("at -", "at −"),
  );
  const most =
    hardest === undefined
      ? []
      : [
          `the ${hardest.third} third, ${hardest.side}, carries ${hardest.meanKPa.toFixed(1)} kPa at most, the seat turns by ${seatSpanDeg.toFixed(1)}°.`,
        ];
  return [span, ...tips, ...most].join(" ");
}

function share(when: string, part: number | undefined, count: number): string {
  return part === undefined || count === 0 ? "" : `${when}: ${Math.round(part * count)} of ${count}`;
}

/** The unit that ends an assumption's id; a plain number has none. */
function withUnit(base: number, id: string): string {
  const unit = id.split(".").at(-1) ?? "";
  return ["mm", "N", "kg", "MPa"].includes(unit) ? `${base} ${unit}` : String(base);
}
