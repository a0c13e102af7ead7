import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Prints, printsOf } from "../number/prints.ts";
import { FILE, partsOf, RIDES } from "./judged-figures.ts";

/*
 * Every answer, limit and reason at the means of every horse of the examples is the one given before. This tells that
 * something moved, never that it is right: that is for the gates and the laws.
 */
const before: { readonly [ride: string]: Prints } = JSON.parse(readFileSync(FILE, "utf8"));

test.each(RIDES)("$name, horse $horse: judged as frozen", (ride) => {
  expect(printsOf(partsOf(ride))).toEqual(before[`${ride.name} ${ride.horse}`]);
});
