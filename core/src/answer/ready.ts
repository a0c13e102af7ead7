import type { Mesh } from "../fit/panel-cells.ts";
import { AS_FOUND } from "../reach/move.ts";
import type { Survey } from "../survey/case.ts";
import type { DrawTable } from "./draw-table.ts";
import { firstLook } from "./draws.ts";
import { type Forms, formsOf } from "./forms.ts";
import { type FormsInDraw, inDraw, type Whole, wholeAt } from "./whole.ts";

/** One horse of a case, ready to be tried under any setting: its forms, today's whole, and a first look at the doubts. */
export interface Ready {
  readonly horseIndex: number;
  readonly forms: Forms;
  /** The forms at the best estimate of every reading. */
  readonly means: FormsInDraw;
  readonly today: Whole | undefined;
  readonly first: DrawTable;
}

/** `before`: the same with one reading otherwise; its doubts were looked at already and stand in where they tell of as much. */
export function readyFor(
  survey: Survey,
  horseIndex: number,
  seed: number,
  mesh: Mesh,
  before?: Ready,
): Ready {
  const forms = formsOf(survey, horseIndex);
  const means = inDraw(forms, {});
  const today = wholeAt(means, AS_FOUND, { mesh });
  const first =
    before !== undefined && sameParts(before.forms, forms)
      ? before.first
      : firstLook(forms, today?.pose, seed);
  return { horseIndex, forms, means, today, first };
}

/** Whether both have form for the same things: where one could not be built, nobody looked at its doubts. */
function sameParts(a: Forms, b: Forms): boolean {
  const parts = ({ back, tree, head, fronts }: Forms) => [back, tree, head, fronts.cold, fronts.warm];
  const [of, other] = [parts(a), parts(b)];
  return of.every((part, i) => (part === undefined) === (other[i] === undefined));
}
