import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { z } from "zod";
import { ROOMS } from "./rooms.mjs";

// What the last runs of `node evidence/mutation/run.mjs ROOM --write` recorded. This cannot see that code or tests have
// changed since: the run itself (`npm run test:slow -- mutation`) does.

const survivor = z.strictObject({ at: z.string(), change: z.string(), reason: z.string().min(12) });
const run = z.strictObject({
  score: z.number(),
  mutants: z.int().positive(),
  least: z.number(),
  survivors: z.array(survivor),
});
const recorded = z
  .partialRecord(z.enum(["judge", "fit", "reach"]), run)
  .parse(JSON.parse(readFileSync(new URL("./score.json", import.meta.url), "utf8")));

test("each recorded room is at its least score or above, and each change that its tests did not see has a reason", () => {
  for (const [room, { score, least, mutants, survivors }] of Object.entries(recorded)) {
    expect([room, least]).toEqual([
      room,
      room in ROOMS ? ROOMS[room as keyof typeof ROOMS].least : "no such room",
    ]);
    expect(score).toBeGreaterThanOrEqual(least);
    expect(Math.abs(100 * (1 - survivors.length / mutants) - score)).toBeLessThan(0.2);
  }
});

test("a survivor without a reason is refused", () => {
  expect(survivor.safeParse({ at: "a.ts:1", change: "x", reason: "" }).success).toBe(false);
});
