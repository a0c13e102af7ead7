import type { Mesh } from "../fit/panel-cells.ts";
import type { Survey } from "../survey/case.ts";
import { type DrawTable, drawRange, FIRST_DRAWS, TRIAL_MM } from "./draws.ts";
import { type Forms, formsOf } from "./forms.ts";
import { type Whole, wholeAt } from "./whole.ts";

const AS_FOUND = { changeMm: 0, halfTurnRad: undefined };

/** One horse of a case, ready to be tried under any setting: its forms, today's whole, and a first look at the doubts. */
export interface Ready {
  readonly horseIndex: number;
  readonly forms: Forms;
  readonly today: Whole | undefined;
  readonly first: DrawTable;
}

/** `first`: doubts that were looked at already, when only a reading's value is tried. */
export function readyFor(survey: Survey, horseIndex: number, seed: number, mesh: Mesh, first?: DrawTable): Ready {
  const forms = formsOf(survey, horseIndex);
  const today = wholeAt(forms, AS_FOUND, { deviations: {}, mesh });
  const trial = { changeMm: TRIAL_MM, halfTurnRad: undefined };
  const starts = { today: today?.pose, after: today?.pose };
  return { horseIndex, forms, today, first: first ?? drawRange(forms, trial, seed, 0, FIRST_DRAWS, starts) };
}
