import { existsSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import { ROOMS, scoreOf } from "./rooms.mjs";

// What the last runs of `node evidence/mutation/run.mjs ROOM --write` recorded. This cannot see that code or tests have
// changed since: the run itself (`npm run test:slow -- mutation`) does.

const survivor = z.strictObject({ at: z.int().positive(), change: z.string(), reason: z.string().min(12) });
const file = z.strictObject({ mutants: z.int().nonnegative(), survivors: z.array(survivor) });
const room = z.strictObject({ least: z.number(), files: z.record(z.string(), file) });
const recorded = z
  .partialRecord(z.enum(["judge", "fit", "reach"]), room)
  .parse(JSON.parse(readFileSync(new URL("./score.json", import.meta.url), "utf8")));

test.each(Object.entries(recorded))(
  "%s: what was run of it is at its least score or above, and each change that its tests did not see has a reason",
  (name, { least, files }) => {
    const { score, mutants, missed } = scoreOf(files);
    console.log(
      `${name}: ${score} % of ${mutants} mutants of ${Object.keys(files).length} files, ${missed} not seen`,
    );
    expect(least).toBe(ROOMS[name as keyof typeof ROOMS].least);
    expect(score).toBeGreaterThanOrEqual(least);
    for (const path of Object.keys(files))
      expect(existsSync(new URL(`../../${path}`, import.meta.url))).toBe(true);
  },
);

test("a survivor without a reason is refused", () => {
  expect(survivor.safeParse({ at: 1, change: "x", reason: "" }).success).toBe(false);
});
