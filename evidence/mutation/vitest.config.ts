import { resolve } from "node:path";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";
import { ROOMS } from "./rooms.mjs";

/** The tests that must see the mutants of one room; the room's name comes in the environment. */
const room = process.env.MUTATED_ROOM;
const tests = room !== undefined && room in ROOMS ? ROOMS[room as keyof typeof ROOMS].tests : [];

/** Those that try out much come last, the longest at the very end: most mutants are seen before. */
const LONG = ["gates/gates", "fit/whole", "gates/judged", "reach/whole", "gates/worse"];

class LongLast extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const rank = ({ moduleId }: TestSpecification) =>
      LONG.findIndex((name) => moduleId.endsWith(`${name}.test.ts`));
    return [...sorted].sort((a, b) => rank(a) - rank(b));
  }
}

export default defineConfig({
  // The packages' own names would lead out of the mutated copy, to the code as it stands.
  resolve: {
    alias: [{ find: /^@treewright\/core\//, replacement: `${resolve("core/src")}/` }],
  },
  test: {
    include: tests,
    exclude: ["**/node_modules/**"],
    testTimeout: 300_000,
    retry: 0,
    // The room is pure: its files need no fresh modules each, and loading them takes longer than most tests.
    isolate: false,
    sequence: { sequencer: LongLast },
  },
});
