/*
 * Milliseconds of what bending costs an answer: a head's press settings at the means, one pass held and let go, and the
 * interval of one travel. Figures to read, no test. Run: npx tsx evidence/bench/bending.ts
 */
import { openingMm, passFor } from "../../core/src/engine/bending/index.ts";
import { type Bend, bendOf } from "../../core/src/reach/bend/bend-of.ts";
import { travelRange } from "../../core/src/reach/bend/travel.ts";
import type { SurveyedSaddle } from "../../core/src/survey/case.ts";
import full from "../../core/src/survey/fixtures/full.json" with { type: "json" };
import { readCase } from "../../core/src/survey/read-case.ts";

const ROUNDS = 12;

function saddleOf(woodThickness: number, changes: readonly number[]): SurveyedSaddle {
  const saddle = {
    ...full.saddle,
    reinforcement: { woodThickness },
    past: {
      ...full.saddle.past,
      alterationsKnown: "listed",
      alterations: changes.map((change) => ({ date: "2030", change, by: "bench", way: "press" })),
    },
    head: { ...full.saddle.head, asMadeSpreadTips: "unknown" },
  };
  const read = readCase(JSON.stringify({ ...full, saddle }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.survey.saddle;
}

function bent(woodThickness: number, changes: readonly number[]): Bend {
  const bend = bendOf(saddleOf(woodThickness, changes));
  if (bend === undefined) throw new Error("nothing bends");
  return bend;
}

/** Median of processor time, ms; every round bends another head, so that nothing is remembered. */
function ms(work: (round: number) => () => unknown): string {
  const times = Array.from({ length: ROUNDS }, (_, round) => {
    const run = work(round);
    const before = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  });
  return (times.sort((a, b) => a - b)[ROUNDS / 2] ?? 0).toFixed(1);
}

const sweep = (changes: readonly number[]) => (round: number) => {
  const saddle = saddleOf(8 + round / 10, changes);
  return () => {
    const bend = bendOf(saddle);
    for (let mm = -20; mm <= 20; mm++) bend?.strainAt(mm);
  };
};

const interval = (changes: readonly number[], mm: number) =>
  ms((round) => {
    const bend = bent(8 + round / 10, changes);
    return () => travelRange(bend, mm, 1);
  });

console.log(`41 settings of a new head            ${ms(sweep([]))} ms`);
console.log(`41 settings of one bent +5, -3 mm    ${ms(sweep([5, -3]))} ms`);
console.log(
  `one pass of 5 mm, held and let go    ${ms((round) => {
    const { head, state } = bent(8 + round / 10, []);
    return () => passFor(head.arch, state, openingMm(head.arch, state) + 5);
  })} ms`,
);
console.log(`interval of one travel, new          ${interval([], 5)} ms`);
console.log(`interval of one travel, bent twice   ${interval([5, -3], 3)} ms`);
