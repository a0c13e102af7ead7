import { describe, expect, test } from "vitest";
import { allChecks } from "./checks.ts";
import { agrees } from "./compare.ts";
import { LINES, published } from "./published.ts";
import { REGISTRY } from "./registry.ts";

describe("the comparison itself can fail", () => {
  const five = { expected: 100, tolerance: { kind: "relative" as const, value: 0.01 } };
  test("a number inside its tolerance agrees, one outside does not", () => {
    expect([99, 101, 98.9, 105, 95, Number.NaN].map((found) => agrees(five, found))).toEqual([
      true,
      true,
      false,
      false,
      false,
      false,
    ]);
  });
  test("a refusal agrees with its own reason only, never with a solved case", () => {
    const value = { refusedFor: ["unstable"] };
    expect(agrees(value, { refused: "unstable" })).toBe(true);
    expect(agrees(value, { refused: "tips-rear" })).toBe(false);
    expect(agrees(value, { refused: null })).toBe(false);
  });
  test("published throws on a value 5 % off, on an unknown id and on an empty answer", () => {
    expect(() => published("gum-ws", 42)).toThrow(/expected 40/);
    LINES.delete("gum-ws/v_eff");
    expect(() => published("no-such", 1)).toThrow(/no reference value/);
    expect(() => published("gum-ws", {})).toThrow(/nothing was found/);
  });
});

describe("every reference value", async () => {
  for (const check of await allChecks()) test(check.name, check.run);
  test("each is compared, or says why not", () => {
    const missing = [...REGISTRY.values()]
      .filter((one) => one.context === undefined)
      .flatMap((one) => Object.keys(one.values).map((name) => `${one.id}/${name}`))
      .filter((id) => !LINES.has(id));
    expect(missing).toEqual([]);
  });
});
