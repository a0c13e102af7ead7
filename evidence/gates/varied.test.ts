import { readFileSync } from "node:fs";
import { WORK_ANSWERS } from "@treewright/core/terms/answers.ts";
import { expect, test } from "vitest";
import { type Prints, printsOf } from "../number/prints.ts";
import { FILE, nameOf, RIDES, type Varied, varied } from "./varied-figures.ts";

/*
 * Every horse of the examples made another in 60 ways, one to six changes at once, in what was read and in what was worked
 * out: each is judged as before. This tells that something moved, never that it is right: that is for the gates and the laws.
 */
interface Frozen {
  readonly prints: Prints;
  readonly answers: Varied["answers"];
}
const before: { readonly [ride: string]: Frozen } = JSON.parse(readFileSync(FILE, "utf8"));

test.each(RIDES)("$name, horse $horse, made another in many ways: judged as frozen", (ride) => {
  const { parts, answers } = varied(ride);
  expect({ prints: printsOf(parts), answers }).toEqual(before[nameOf(ride)]);
});

test("the variations reach nearly every answer to the work", () => {
  const reached = new Set(Object.values(before).flatMap(({ answers }) => Object.keys(answers)));
  expect(WORK_ANSWERS.filter((id) => !reached.has(id))).toEqual([]);
});
