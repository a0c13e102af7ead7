import { defineConfig } from "vitest/config";
import { testsToLeaveOut } from "./scripts/left-out.mjs";
import { LongFirst } from "./scripts/long-first.mjs";

export default defineConfig({
  test: {
    include: [
      "core/src/**/*.test.ts",
      "bridges/*/src/**/*.test.ts",
      "apps/*/src/**/*.test.{ts,tsx}",
      "evidence/**/*.test.ts",
    ],
    exclude: ["**/node_modules/**", "**/dist/**", ...testsToLeaveOut()],
    // A test is never timed: this is a guard against a hang on a slow machine, not a figure.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    retry: 0,
    // As many as there are cores: left alone, vitest keeps one back, and of two that is half.
    maxWorkers: "100%",
    sequence: { sequencer: LongFirst },
  },
});
