// What is mutated, which tests must see it, and how many of the mutants they must see.
import { fileURLToPath } from "node:url";

/** Reference values of every room; each is a test, so only those that pass through a mutant are run. */
const PUBLISHED = "evidence/published/published.test.ts";

/** Rooms by name: files, tests, and the least score in per cent. */
export const ROOMS = {
  judge: {
    mutate: ["core/src/judge/**/*.ts"],
    tests: ["evidence/gates", "evidence/horse/weight.test.ts"],
    // 20 and 8 s a change: what is seen is seen without them too, or is not counted.
    without: ["evidence/gates/worse.test.ts", "evidence/gates/judged.test.ts"],
    least: 90,
  },
  fit: {
    mutate: ["core/src/fit/**/*.ts"],
    tests: ["evidence/fit", "evidence/panel/fill.test.ts", PUBLISHED],
    least: 80,
  },
  reach: {
    mutate: ["core/src/reach/**/*.ts"],
    tests: [...["reach", "frame", "bending", "heat", "plates"].map((room) => `evidence/${room}`), PUBLISHED],
    least: 80,
  },
};

/** Words are read by eye and by tests of their own: a mutant of a text is not one of the calculation. */
const NOT_MUTATED = ["StringLiteral"];
/** A mutant that loops for ever is stopped this long after its tests took what they took unmutated, ms. */
const HANGS_AFTER_MS = 20_000;

/** Settings of Stryker for one room, or for a few of its files. */
export function settingsOf(room, files) {
  return {
    packageManager: "npm",
    plugins: [fileURLToPath(new URL("./at-once/runner.mjs", import.meta.url))],
    testRunner: "at-once",
    mutate: [...files, "!**/*.test.ts"],
    mutator: { excludedMutations: NOT_MUTATED },
    // Each mutant meets only the tests that pass through it, and stops at the first that sees it.
    coverageAnalysis: "perTest",
    concurrency: 2,
    timeoutMS: HANGS_AFTER_MS,
    timeoutFactor: 2,
    tempDirName: ".cache/mutation",
    ignorePatterns: [".cache", "docs", "dist"],
    reporters: ["json", "progress-append-only"],
    jsonReporter: { fileName: reportOf(room) },
    allowConsoleColors: false,
    disableTypeChecks: false,
  };
}

export const reportOf = (room) => `.cache/mutation-${room}.json`;

/** Of all mutants of these files those that were seen, in per cent with one digit. */
export function scoreOf(byFile) {
  const all = Object.values(byFile);
  const mutants = all.reduce((sum, one) => sum + one.mutants, 0);
  const missed = all.reduce((sum, one) => sum + one.survivors.length, 0);
  return { score: Math.floor((1000 * (mutants - missed)) / mutants) / 10, mutants, missed };
}
