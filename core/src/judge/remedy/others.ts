import type { Candidate, CaseToJudge } from "../input.ts";
import { measureLimits } from "../measure.ts";
import type { Tried } from "./best-setting.ts";
import type { Choice } from "./choice.ts";
import { curable } from "./cures.ts";
import { faultsOf, unknowns, withNeeded } from "./faults.ts";
import type { Judged } from "./judged.ts";
import type { Known } from "./known.ts";
import { afterChange, judgeAll } from "./whole.ts";

const isSignedAlone = ({ survey, horseIndex }: CaseToJudge): boolean =>
  survey.horses[horseIndex]?.onlyThisHorse === "yes";

/** Other horses of this saddle that a change would put outside; none where this horse is signed for alone. */
export function harmed(candidate: Candidate, input: CaseToJudge): readonly number[] {
  if (isSignedAlone(input)) return [];
  const worse = candidate.others.filter(({ after }) =>
    faultsOf(judgeAll(after, "exchange", undefined), "inside").some(
      (fault) => fault.ofFrame && fault.outcome === "outside",
    ),
  );
  return worse.map((other) => other.horseIndex);
}

/** Limits that a head answers for and that cannot be told of another horse. */
const openOf = (limits: readonly Judged[]): readonly Judged[] =>
  unknowns(withNeeded(limits)).filter(({ rule }) => curable(rule)?.ofFrame === true);

/** Other horses of which a change's harm cannot be told: not calculated (a vet sees them first, or not measured), or with readings missing. */
export function untold(candidate: Candidate, input: CaseToJudge): Tried["untold"] {
  if (isSignedAlone(input)) return [];
  return input.survey.horses.flatMap((_, horseIndex) => {
    if (horseIndex === input.horseIndex) return [];
    const other = candidate.others.find((one) => one.horseIndex === horseIndex);
    if (other === undefined) return [{ horseIndex, missing: [] }];
    const whole = afterChange(measureLimits(input.survey, horseIndex), { ...candidate, after: other.after });
    const open = openOf(judgeAll(whole, "exchange", undefined));
    return open.length === 0 ? [] : [{ horseIndex, missing: open.flatMap(({ missing }) => missing) }];
  });
}

/** No head is pressed while another horse that wears it could not be judged under it, unless this one is signed for alone. */
export function lacksOfOthers({ tried, path }: Known, setting: Candidate | undefined): Choice | undefined {
  const others = tried.find(({ candidate }) => candidate === setting)?.untold ?? [];
  if (others.length === 0) return undefined;
  const missing = [...others.flatMap((other) => other.missing), `${path}.onlyThisHorse`];
  return { wish: "measure-more", rules: ["right-other-horses"], also: [], missing };
}
