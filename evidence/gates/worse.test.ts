import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Road, roadOf, roadWith, toJudge } from "../../core/src/answer/road.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import type { Answers } from "../../core/src/judge/judgement.ts";
import type { Survey } from "../../core/src/survey/case.ts";
import { getAt, stepsOf } from "../../core/src/survey/path.ts";
import { type Question, questions } from "../../core/src/survey/questions.ts";
import { readCase } from "../../core/src/survey/read-case.ts";
import { isRead, type Measured } from "../../core/src/survey/reading.ts";
import { withAnswer } from "../../core/src/survey/with-answer.ts";
import type { WorkAnswer } from "../../core/src/terms/answers.ts";

/*
 * The law from the readings to the answer: each reading and answer of a whole case in turn made worse, older, less known
 * or less qualified. It does not see two of them changed at once: the gates by enumeration do.
 */
const SEED = 1;
/** Yes is the better answer to these; to every other question it is the worse. */
const GOOD_YES =
  /serialIsOfRecord|ownerConsents|makerPermits|ownedSinceNew|countersigned|trunkUnchanged|onlyThisHorse|wearsBehindTips|asFitted$/;
const WORD_CHAINS: readonly (readonly string[])[] = [
  ["sound", "cannot-be-seen", "doubtful", "failed"],
  ["sound", "not-looked"],
  ["doubtful", "not-looked", "failed"],
  ["qualified", "unknown", "no"],
  ["qualified", "trainee", "no"],
  ["bare", "dressed", "not-looked"],
  ["none", "listed", "unknown"],
  ["listed", "not-asked"],
  ["seen-bare", "makers-letter", "seen-through-access", "owners-word", "not-told"],
  ["15-C-and-over", "not-looked", "below-15-C"],
  ["good", "not-looked"],
];
const BAD_YES: readonly (readonly string[])[] = [
  ["no", "cannot-be-seen", "yes"],
  ["no", "unknown", "yes"],
  ["no", "not-asked", "yes"],
  ["no", "not-looked", "yes"],
];
/** Marks of doubt that do not stop a ride: a mark that nobody looked for may hide a worse one, and comes last. */
const MARKS = /looked\.(rust|musty)$/;
const MARK: readonly (readonly string[])[] = [["no", "cannot-be-seen", "yes", "not-looked"]];
const NOT_KNOWN: readonly string[] = ["unknown", "not-asked", "not-looked", "not-told", "not-said"];
/** A higher figure is worse, or a lower one. */
const HIGHER =
  /past\.age$|hollow|bridge|\.rock$|benchRock|stringOffCentre|sideOffset|riddenSigns|offWorkWeeks|massDressed|tackMass/;
const LOWER = /clearance|horses\[0\]\.mass$/;

const isMeasured = (found: unknown): found is Measured =>
  typeof found === "object" && found !== null && ("absent" in found || "instrument" in found);

/** What a place may be made, each worse than or as bad as the one before; from what stands on. */
function worseThan(stands: unknown, question: Question): readonly (readonly (string | number)[])[] {
  if (isMeasured(stands)) return isRead(stands) ? measuredChains(stands.typed, question) : [];
  if (typeof stands !== "string") return [];
  const chains = GOOD_YES.test(question.path)
    ? BAD_YES.map((chain) => [...chain].reverse())
    : [
        ...(MARKS.test(question.path) ? MARK : BAD_YES),
        ...WORD_CHAINS,
        ...NOT_KNOWN.map((word) => [stands, word]),
      ];
  return chains
    .filter((chain) => chain.includes(stands) && chain.every((word) => question.words?.includes(word)))
    .map((chain) => chain.slice(chain.indexOf(stands) + 1))
    .filter((chain) => chain.length > 0);
}

function measuredChains(typed: string, { path, range }: Question): readonly (readonly (string | number)[])[] {
  const [lo, hi] = range ?? [0, 0];
  const from = Number(typed);
  const end = HIGHER.test(path) ? hi : LOWER.test(path) ? lo : undefined;
  const steps =
    end === undefined || Number.isNaN(from)
      ? []
      : [0.02, 0.1, 0.3, 1].map((part) => from + part * (end - from));
  return [["not-looked"], ...(steps.length > 0 ? [steps] : [])];
}

/** How far an answer goes into the head; 0 where it leaves it. */
const INTO_HEAD: { readonly [W in WorkAnswer]?: number } = {
  "change-insert": 1,
  "change-plate": 1,
  "alter-stripped": 2,
  "set-back": 2,
  "alter-dressed": 3,
};

/** What is bolder after than before; undefined where nothing is. */
function bolder(before: Answers, after: Answers): string | undefined {
  const more = after.permitted.filter((act) => !before.permitted.includes(act));
  if (more.length > 0) return `permits ${more.join(", ")}`;
  if (after.work.id === "nothing" && before.work.id !== "nothing") return `${before.work.id} to nothing`;
  const into = (answers: Answers) => INTO_HEAD[answers.work.id] ?? 0;
  return into(after) > into(before) ? `${before.work.id} to ${after.work.id}` : undefined;
}

const judged = (road: Road): Answers => judgeCase(toJudge(road)).answers;

function surveyOf(name: string): Survey {
  const read = readCase(readFileSync(new URL(`../../examples/cases/${name}.json`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(name);
  return read.survey;
}

/** Every step of every chain of every place: what came out bolder, and how many steps were taken. */
function walk(survey: Survey): { readonly found: readonly string[]; readonly count: number } {
  const road = roadOf(survey, 0, SEED);
  const base = judged(road);
  const found: string[] = [];
  let count = 0;
  for (const question of questions(1)) {
    for (const chain of worseThan(getAt(survey, stepsOf(question.path)), question)) {
      let before = base;
      for (const value of chain) {
        const changed = withAnswer(survey, question.path, value);
        if (changed === undefined) continue;
        const after = judged(roadWith(road, changed, question.path, SEED));
        const wrong = bolder(before, after);
        if (wrong !== undefined) found.push(`${question.path} to ${value}: ${wrong}`);
        before = after;
        count++;
      }
    }
  }
  return { found, count };
}

describe("worse, older, less known, less qualified, one place after another", () => {
  it.each(["08-nothing-to-do", "09-alter-in-the-saddle", "05-readings-in-inches"])(
    "%s: nothing more is permitted, and no answer is bolder",
    (name) => {
      const { found, count } = walk(surveyOf(name));
      console.log(`${name}: ${count} steps`);
      expect(found).toEqual([]);
      expect(count).toBeGreaterThan(200);
    },
    120_000,
  );
  it("the check sees an answer that grows bolder", () => {
    const good = judged(roadOf(surveyOf("08-nothing-to-do"), 0, SEED));
    const shut = { ...good, permitted: good.permitted.filter((act) => act !== "flock") };
    expect(bolder(shut, good)).toContain("flock");
    expect(bolder({ ...good, work: { ...good.work, id: "measure-more" } }, good)).toContain("to nothing");
  });
});
