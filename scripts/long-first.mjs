// The order of test files: those known to take long first, so that none runs alone at the end. The rest by size, as vitest does.
import { BaseSequencer } from "vitest/node";

/** Half a minute and more each on two cores; a name that is gone does no harm, one that is missing costs time only. */
const LONG = [
  "evidence/visit/trainer.test.ts",
  "evidence/page/same-figures.test.ts",
  "evidence/webkit/figures.test.ts",
  "evidence/visit/visit.test.ts",
  "evidence/visit/access.test.ts",
  "evidence/words/screens.test.ts",
  "evidence/page/page.test.ts",
  "evidence/visit/true-size.test.ts",
  "evidence/visit/controls.test.ts",
  "evidence/work/coverage.test.ts",
  "evidence/visit/script.test.ts",
  "evidence/page/looks.test.ts",
  "evidence/gates/worse.test.ts",
  "evidence/cli/paper.test.ts",
  "evidence/cli/answer.test.ts",
  "evidence/release/command.test.ts",
];

const rank = ({ moduleId }) => {
  const at = LONG.findIndex((name) => moduleId.endsWith(name));
  return at < 0 ? LONG.length : at;
};

export class LongFirst extends BaseSequencer {
  async sort(files) {
    const sorted = await super.sort(files);
    return sorted.toSorted((a, b) => rank(a) - rank(b));
  }
}
