// Stands for "vitest" where tests are run many times in one process: the same expectations (@vitest/expect), and a list of
// tests in place of a run.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";
import * as chai from "chai";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = (value, message) => chai.expect(value, message);
Object.assign(expect, chai.expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);
setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect);

/** Every test in the order in which the files tell them; the runner reads the list once all are loaded. */
export const told = [];
const around = [];

const each = (tell) => (rows) => (name, act) => {
  for (const row of rows) {
    const values = Array.isArray(row) ? row : [row];
    tell(`${name} ${told.length}`, () => act(...values));
  }
};

export function describe(name, tell) {
  around.push(name);
  tell();
  around.pop();
}
describe.each = each(describe);

export function test(name, act) {
  told.push({ id: `${told.length} ${[...around, name].join(" ")}`, act });
}
test.each = each(test);
export const it = test;
