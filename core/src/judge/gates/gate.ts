import { ACTS, type Act, type WorkAnswer } from "../../terms/answers.ts";

/** What finding shuts which acts, under which rule, and the work answer for somebody who wanted such an act. */
export interface Bar<F> {
  readonly rule: string;
  when(findings: F): boolean;
  readonly shuts: readonly Act[];
  readonly leadsTo: WorkAnswer;
}

export interface Shut {
  readonly act: Act;
  readonly rule: string;
  readonly leadsTo: WorkAnswer;
}

/** What one gate leaves open and what it shuts, with the rule of each. */
export interface Passed {
  readonly permits: readonly Act[];
  readonly shut: readonly Shut[];
  readonly rules: readonly string[];
}

export const PRESSES: readonly Act[] = ["press-dressed", "press-bare"];
/** What changes the saddle. */
export const CHANGES: readonly Act[] = ["flock", "exchange", "strip", "press-dressed", "press-bare"];
/** Work for this horse; stripping is not: it tells of the saddle. */
export const WORK: readonly Act[] = ["set-up", "flock", "exchange", "press-dressed", "press-bare"];
export const ALL_BUT_STRIP: readonly Act[] = ACTS.filter((act) => act !== "strip");

/** Every bar that holds takes its acts away; none gives one back, so no gate can overrule another. */
export function pass<F>(bars: readonly Bar<F>[], findings: F): Passed {
  const held = bars.filter((bar) => bar.when(findings));
  const shut = held.flatMap((bar) => bar.shuts.map((act) => ({ act, rule: bar.rule, leadsTo: bar.leadsTo })));
  const closed = new Set(shut.map((one) => one.act));
  return { permits: ACTS.filter((act) => !closed.has(act)), shut, rules: held.map((bar) => bar.rule) };
}
