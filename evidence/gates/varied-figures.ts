import { readFileSync } from "node:fs";
import { roadOf, toJudge } from "@treewright/core/answer/road.ts";
import { drawUniform } from "@treewright/core/engine/random.ts";
import { bodyAdvice } from "@treewright/core/judge/body-advice.ts";
import type { Candidate, CaseToJudge, MeasuredLimit } from "@treewright/core/judge/input.ts";
import { judgeCase } from "@treewright/core/judge/judge-case.ts";
import { measureLimits } from "@treewright/core/judge/measure.ts";
import { type Question, questions } from "@treewright/core/survey/questions.ts";
import { withAnswer } from "@treewright/core/survey/with-answer.ts";
import { RIDES, SEED, surveyOf } from "../answer/examples.ts";

export const FILE = new URL("./varied.json", import.meta.url);
export { RIDES };

/** Ways in which one horse of an example is made another, and how many stand in one print. */
const VARIED = 60;
const IN_ONE_PRINT = 6;
/** Settings tried of each example: every so many of a way that has many, so that a judgement takes little. */
const EVERY = 5;

type Ride = (typeof RIDES)[number];
type Draw = (what: string) => number;
type Change = (input: CaseToJudge, draw: Draw) => CaseToJudge;

const pick = <One>(all: readonly One[], at: number): One | undefined => all[Math.floor(at * all.length)];

/** What the road once worked out for each ride, beside its survey: numbers to judge by, which need not follow the engine. */
export const WORKED_OUT = new URL("./worked-out.json", import.meta.url);
type WorkedOut = Omit<CaseToJudge, "survey">;

/** For `WORKED_OUT`: a few settings of each ride, with six digits. */
export function workedOut({ name, horse }: Ride): WorkedOut {
  const { survey: _, ...whole } = toJudge(roadOf(surveyOf(name), horse, SEED));
  const few = (way: string) => whole.candidates.filter(({ setting }) => setting.way === way).length <= EVERY;
  const candidates = whole.candidates.filter(({ setting }, at) => at % EVERY === 0 || few(setting.way));
  const short = (_name: string, value: unknown) =>
    typeof value === "number" ? Number(value.toPrecision(6)) : value;
  return JSON.parse(JSON.stringify({ ...whole, candidates }, short));
}

const inputs = new Map<string, CaseToJudge>();

function inputOf({ name, horse }: Ride): CaseToJudge {
  if (inputs.size === 0) {
    const kept: Record<string, WorkedOut> = JSON.parse(readFileSync(WORKED_OUT, "utf8"));
    for (const ride of RIDES) {
      const one = kept[nameOf(ride)];
      if (one) inputs.set(nameOf(ride), { ...one, survey: surveyOf(ride.name) });
    }
  }
  const input = inputs.get(nameOf({ name, horse }));
  if (!input) throw new Error(`${name}: not worked out; see freeze-judged.ts`);
  return input;
}

export const nameOf = ({ name, horse }: Ride): string => `${name} ${horse}`;

/** Places that nothing is judged by themselves: what the road makes of them is varied instead. */
const NOT_JUDGED =
  /traces|profile|bearing|forming|reinforcement|mounting|inserts|platesAtHand|body|identity|practice|\.rides/;

const asked = [1, 2].map((horses) => questions(horses).filter(({ path }) => !NOT_JUDGED.test(path)));

function answersTo({ words, range, kind }: Question): readonly (string | number)[] {
  if (words) return words;
  if (!range || kind === "points") return [];
  const [lo, hi] = range;
  return ["not-looked", lo, hi, ...[0.2, 0.4, 0.5, 0.6, 0.8].map((part) => lo + part * (hi - lo))];
}

/** A reading or a finding is another, near to what it was where it is a figure. */
const another: Change = (input, draw) => {
  const question = pick(asked[input.survey.horses.length - 1] ?? [], draw("question"));
  const typed = question && pick(answersTo(question), draw("answer"));
  const survey =
    typed === undefined || !question ? undefined : withAnswer(input.survey, question.path, typed);
  return survey ? { ...input, survey } : input;
};

function moved(limit: MeasuredLimit, draw: Draw): MeasuredLimit {
  const kind = draw("kind of move");
  if (kind < 0.25) return { ...limit, value: undefined, u: undefined, missing: ["saddle.head.depth"] };
  if (kind < 0.35) return { ...limit, value: undefined, u: undefined, missing: [] };
  const shift = 30 * (draw("shift") - 0.5);
  return { ...limit, value: (limit.value ?? 0) + shift, u: (limit.u ?? 1) * 3 * draw("u") };
}

const movedOne = (limits: readonly MeasuredLimit[], draw: Draw): readonly MeasuredLimit[] => {
  const which = Math.floor(draw("limit") * limits.length);
  return limits.map((one, at) => (at === which ? moved(one, draw) : one));
};

const today: Change = (input, draw) => ({ ...input, computedToday: movedOne(input.computedToday, draw) });

const changedCandidate = (candidate: Candidate, draw: Draw): Candidate => {
  const kind = draw("kind of setting");
  const shut = kind < 0.2 ? ["cap-total"] : kind < 0.4 ? ["no-such-plate"] : [];
  return {
    ...candidate,
    setting: { ...candidate.setting, shutBy: [...candidate.setting.shutBy, ...shut] } as Candidate["setting"],
    after: movedOne(candidate.after, draw),
    others: candidate.others.map((other) => ({ ...other, after: movedOne(other.after, draw) })),
  };
};
const settings: Change = (input, draw) => {
  const part = draw("part of settings");
  const all = draw("all settings") < 0.1;
  return {
    ...input,
    candidates: input.candidates
      .map((one, at) => (all || draw(`setting ${at}`) < part ? changedCandidate(one, draw) : one))
      .filter((_, at) => part < 0.9 || at % 2 === 0),
  };
};

const side: Change = (input, draw) => ({
  ...input,
  largerSide: pick(["near", "off", undefined] as const, draw("side")),
});
const fill: Change = (input, draw) => {
  const mm = (what: string) => pick([0, 2, 5, 8, 12, 25, undefined], draw(what));
  return { ...input, fillMm: { near: mm("near"), off: mm("off") } };
};
const rest: Change = (input, draw) => ({
  ...input,
  notAtRest: pick(["tips", "no-contact", undefined] as readonly CaseToJudge["notAtRest"][], draw("rest")),
});
const lacking: Change = (input, draw) => ({
  ...input,
  lacking: draw("lacking") < 0.5 ? ["horses[0].girthed.clearanceTop"] : [],
});

const CHANGES: readonly Change[] = [
  another,
  another,
  another,
  today,
  today,
  settings,
  side,
  fill,
  rest,
  lacking,
];

/** The ride made another in one to six ways at once. */
function variedInput(ride: Ride, at: number): CaseToJudge {
  const draw = (what: string) => drawUniform(SEED, at, `${ride.name} ${ride.horse} ${what}`);
  const count = 1 + Math.floor(6 * draw("count"));
  return Array.from({ length: count }, (_, i) => i).reduce((input, i) => {
    const change = pick(CHANGES, draw(`change ${i}`));
    return change ? change(input, (what) => draw(`${i} ${what}`)) : input;
  }, inputOf(ride));
}

export interface Varied {
  /** What was judged of each variation, some in one part. */
  readonly parts: readonly (readonly [place: string, judged: unknown])[];
  /** How many of the variations have which answer to the work. */
  readonly answers: Readonly<Record<string, number>>;
}

export function varied(ride: Ride): Varied {
  const answers: Record<string, number> = {};
  const parts = Array.from({ length: VARIED / IN_ONE_PRINT }, (_, part) => {
    const judged = Array.from({ length: IN_ONE_PRINT }, (_, i) => {
      const input = variedInput(ride, part * IN_ONE_PRINT + i);
      const judgedCase = judgeCase(input);
      const { id } = judgedCase.answers.work;
      answers[id] = (answers[id] ?? 0) + 1;
      return [
        judgedCase,
        measureLimits(input.survey, input.horseIndex),
        bodyAdvice(input.survey, input.horseIndex),
      ];
    });
    return [`${part}`, judged] as const;
  });
  return { parts, answers };
}
