import type { Survey, SurveyedHorse } from "../../survey/case.ts";
import type { Build } from "../findings/orders.ts";
import type { CaseToJudge, MeasuredLimit } from "../input.ts";
import type { Tried } from "./best-setting.ts";
import type { Judged } from "./judged.ts";

/** What the choice of a remedy looks at, gathered once. */
export interface Known {
  readonly survey: Survey;
  readonly horse: SurveyedHorse;
  /** Path of the horse in the case. */
  readonly path: string;
  readonly build: Build;
  readonly today: readonly Judged[];
  readonly tried: readonly Tried[];
  readonly template: MeasuredLimit | undefined;
  readonly fillMm: CaseToJudge["fillMm"];
  /** Why today's saddle was not brought to rest in the calculation. */
  readonly notAtRest: CaseToJudge["notAtRest"];
  readonly lacking: readonly string[];
}
