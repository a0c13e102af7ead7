import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Prints, printsOf } from "../number/prints.ts";
import { CASES, FILE, partsOf } from "./whole-figures.ts";

/*
 * Every digit of a whole saddle on a back – at rest, ridden, in the other states, at its sections – is the one that was
 * worked out before. This tells that something moved, never that it is right: that is for the other checks.
 */
const before: { readonly [name: string]: Prints } = JSON.parse(readFileSync(FILE, "utf8"));

test.each(CASES)("%s: every digit of the whole is as frozen", (name) => {
  const parts = partsOf(name);
  expect(parts.length).toBe(54);
  expect(printsOf(parts)).toEqual(before[name]);
  const larger = Object.entries(printsOf(parts, 1.05));
  const same = larger.filter(([place, print]) => print === before[name]?.[place]);
  expect(same.length).toBeLessThan(parts.length / 3);
});
