import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Prints, printsOf } from "../number/prints.ts";
import { FILE, NAMES, partsOf } from "./whole-figures.ts";

/*
 * Every digit of what a head can become, what the press takes and what the frame makes of it is the one that was worked out
 * before, on every example. This tells that something moved, never that it is right: that is for the other checks.
 */
const before: { readonly [name: string]: Prints } = JSON.parse(readFileSync(FILE, "utf8"));

test.each(NAMES)("%s: every digit of what its head can become is as frozen", (name) => {
  const parts = partsOf(name);
  expect(printsOf(parts)).toEqual(before[name]);
  expect(printsOf(parts, 1.05)).not.toEqual(before[name]);
});
