import { applyAnswer, emptyCase } from "@treewright/core/survey/answer-question.ts";
import { putAt, stepsOf } from "@treewright/core/survey/path.ts";
import type { Problem } from "@treewright/core/survey/problem.ts";
import { questions } from "@treewright/core/survey/questions.ts";
import { readCaseValue } from "@treewright/core/survey/read-case.ts";

/** What a cold hand may type at any question. */
const SLIPS = [
  "abc",
  "uknown",
  "999999",
  "-999999",
  "7.5",
  "3 fingers",
  "3 furlongs",
  "1,425",
  "8 1/0",
  "7.77 in",
  "x".repeat(500),
  "x".repeat(20_000),
  "12345678901234567890123456789",
  "2026-02-30",
  "1; 999999",
  "1; abc; 2",
];
/** Numbers of horses, each wrong in its own way. */
const NUMBERS = [
  "000000000012345",
  "999000000012345",
  "276999999999999",
  "276",
  "000 020 12345",
  "276020 1234567890",
  "276 020 12#45",
  "276?",
];
/** Lines across a back or along it, each wrong in its own way; the two units are judged apart. */
const LINES = [
  "-9 -6; -6 -4; -3 -1; 0 0; 3 -1; 6 -4; 9 -6",
  "-0.9 -0.6; -0.6 -0.4; -0.3 -0.1; 0 0; 0.3 -0.1; 0.6 -0.4; 0.9 -0.6",
  "-90 -60; 0 0; 90 -60; x 3",
  "-90 -60; 0 0; 90 9999",
  "-90 -60; 0 0; 90 1,425",
  "-900 -60; -60 -20; -30 -9; 0 0; 30 -9; 60 -20; 900 -60",
  "-90 -600; -60 -20; -30 -9; 0 0; 30 -9; 60 -20; 90 -600",
  "90 -60; 60 -20; 30 -9; 0 0; -30 -9; -60 -20; -90 -60",
  "-10 -60; -8 -20; -5 -9; 0 0; 30 -9; 60 -20; 90 -60",
  "-90 -60; -60 60; -30 50; 0 50; 30 -9; 60 -20; 90 -60",
  "-90 -60; -60 -50; -30 -40; 0 -40; 30 -41; 60 -50; 90 -60",
  "-90 -60; -60 -20; -60 -20; 0 0; 30 -9; 60 -20; 90 -60",
  "-90 -60; -20 0; -60 -10; -40 -60; 0 0; 60 -20; 90 -60",
  "0 0; 200 -20; 100 -30; 400 -20",
  "0 0; 10 -2; 20 -3; 30 -4; 40 -4",
  "0 0; 200 -20; 600 -400; 700 -20; 800 0",
  "0 0; 200 -20; 600 -40; 1700 -20; 1800 0",
  "0",
];

/** A tracing that is drawn again, in another unit than the first, and wrong by itself. */
function ofDrawingAgain(): readonly Problem[] {
  const first = applyAnswer(emptyCase("Visit", "2026-03-02"), "horses[0].traces[0].points", GOOD_LINE);
  if (!first.ok) throw new Error("the first drawing is taken");
  return ["in ", "cm ", "mm "].flatMap((unit) =>
    [GOOD_LINE, ...LINES].flatMap((line) => {
      const again = applyAnswer(first.draft, "horses[0].traces[0].repeats[0]", unit + line);
      return again.ok ? [] : [again.problem];
    }),
  );
}
const GOOD_LINE = "-120 -72; -80 -32; -40 -8; 0 0; 40 -8; 80 -32; 120 -72";

/** Every refusal that these slips draw out of core, at every question, and out of a draft read whole. */
export function refusals(): readonly Problem[] {
  const draft = emptyCase("Visit", "2026-03-02");
  const atQuestions = questions(1).flatMap(({ path, kind }) => {
    const lines =
      kind === "points" ? ["", "in ", "cm "].flatMap((unit) => LINES.map((line) => unit + line)) : [];
    return [...SLIPS, ...NUMBERS, ...lines].flatMap((typed) => {
      const answered = applyAnswer(draft, path, typed);
      return answered.ok ? [] : [answered.problem];
    });
  });
  return [...atQuestions, ...ofDrawingAgain(), ...ofWhole()];
}

/** Two horses of one name, the same trace twice, a horse without a name: what no single question can see. */
function ofWhole(): readonly Problem[] {
  const points = [-90, -50, -20, 0, 20, 50, 90].map((y) => [y, -Math.abs(y) / 2]);
  const line = { station: "front", points };
  let file: unknown = emptyCase("Visit", "2026-03-02");
  file = putAt(file, stepsOf("horses[0].traces"), [line, line]);
  file = putAt(file, stepsOf("horses[1]"), { name: "horse" });
  const nameless = putAt(file, stepsOf("horses[2]"), {});
  return [file, nameless].flatMap((one) => {
    const read = readCaseValue(one);
    return read.ok ? [] : read.problems;
  });
}
