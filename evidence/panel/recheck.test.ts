import fc from "fast-check";
import { expect, test } from "vitest";
import { daysAfter } from "../../core/src/terms/day.ts";
import { propertySeed } from "../number/seed.ts";

const seed = propertySeed("panel");

test("days after a day are the calendar's", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40000 }), fc.integer({ min: 0, max: 400 }), (from, days) => {
      const iso = (day: number) => new Date(day * 86400000).toISOString().slice(0, 10);
      expect(daysAfter(iso(from), days)).toBe(iso(from + days));
    }),
    { seed },
  );
});
