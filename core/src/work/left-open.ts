import type { Answers } from "../judge/judgement.ts";
import type { SurveyedJob } from "../survey/job.ts";
import type { Act } from "../terms/answers.ts";

/** A job may go this much beyond the change that was answered, mm: what a hand cannot tell apart (assumption). */
const BEYOND_MM = 1;

type Answered = Pick<Answers, "permitted" | "setting" | "work">;

/**
 * Why the answers for one horse leave this job no pass; undefined where they permit a press of a tree in this state and
 * ask for this change. Asked for every horse of the saddle: what is bent is bent for all of them.
 */
export function whyNoPass(
  { permitted, setting, work }: Answered,
  { state, wantedMm }: Pick<SurveyedJob, "state" | "wantedMm">,
): string | undefined {
  const act: Act = state === "bare" ? "press-bare" : "press-dressed";
  if (!permitted.includes(act)) return `the case does not permit a press of the ${state} tree: ${work.id}`;
  if (setting?.way !== "press") return `the case does not answer with a press: ${work.id}`;
  const sameWay = setting.changeMm * wantedMm > 0;
  return sameWay && Math.abs(wantedMm) <= Math.abs(setting.changeMm) + BEYOND_MM
    ? undefined
    : `the case answers with ${setting.changeMm} mm, the job wants ${wantedMm} mm`;
}
