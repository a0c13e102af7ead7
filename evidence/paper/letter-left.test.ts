import { expect, test } from "vitest";
import { leftInWords } from "../../core/src/papers/follows.ts";
import { letterDataOf } from "../../core/src/papers/letter.ts";
import { ENGLISH } from "../../core/src/report/tongue.ts";
import { firstAnswer, RIDES, surveyOf } from "../answer/examples.ts";

/* An owner reads how far a head is off, how far it is moved and what is left, and can add it up. */

/** Narrow is less. */
const signed = ([, mm = "", way = ""]: RegExpExecArray): number => (/narrow/.test(way) ? -1 : 1) * Number(mm);

test("what is off, what is moved and what is left add up in every letter, to the roundings of three figures", () => {
  let count = 0;
  for (const { name, horse } of RIDES) {
    const survey = surveyOf(name);
    const { work, follows } = letterDataOf(survey, firstAnswer(survey, horse), ENGLISH);
    const off = /about (\d+) mm too (narrow|wide)/.exec(work.because.join(" "));
    const moved = /becomes about (\d+) mm (wider|narrower) inside/.exec(follows.join(" "));
    if (!off || !moved) continue;
    const left = /then about (\d+) mm (wider|narrower) than/.exec(follows.join(" "));
    if (!left) continue;
    expect(Math.abs(signed(off) + signed(moved) - signed(left)), name).toBeLessThanOrEqual(1.5);
    count += 1;
  }
  expect(count).toBeGreaterThan(5);
});

test("is said only of a head that was off and is then allowed", () => {
  const spread = (value: number, outcome: string, at = "computed") =>
    // biome-ignore lint/suspicious/noExplicitAny: as much of a limit as is looked at
    [{ rule: "spread-wanted", at, value, outcome }] as any;
  const off = spread(-8, "outside");
  expect(leftInWords(off, spread(-3, "inside"), 5)).toEqual([
    "It is then about 3 mm narrower than this back would want, which is within what is allowed.",
  ]);
  for (const after of [
    spread(-3, "between"),
    spread(-3, "outside"),
    spread(-0.4, "inside"),
    spread(-3, "inside", "template"),
    [],
  ])
    expect(leftInWords(off, after, 5)).toEqual([]);
  // Another plate's tips lie deeper: the three figures do not add up, and none is said of what is left.
  expect(leftInWords(off, spread(-3, "inside"), 9)).toEqual([]);
  expect(leftInWords(spread(-3, "inside"), spread(-1, "inside"), 2)).toEqual([]);
});
