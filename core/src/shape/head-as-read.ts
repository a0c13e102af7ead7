import type { SurveyedSaddle } from "../survey/case.ts";
import { Doubts } from "./doubt.ts";
import { headOf } from "./head.ts";
import { headOutline, type Outline } from "./head-outline.ts";

/** The inside of a head as it was read, at the best estimate; undefined where one of its readings is missing. */
export function headAsRead(saddle: SurveyedSaddle): Outline | undefined {
  const doubts = new Doubts();
  const head = headOf(saddle, doubts);
  return doubts.lacking.length > 0 ? undefined : headOutline(head({}), "inside");
}
