import { createHash } from "node:crypto";
import fc from "fast-check";
import { expect, test } from "vitest";
import { canonicalJson, sha256Hex } from "../../core/src/engine/hash.ts";
import { propertySeed } from "./seed.ts";

/* The standards' own examples are compared in published.checks.ts. */

const seed = propertySeed("hash laws");

test("SHA-256 is that of node:crypto, at every length about the edges of a block and for any bytes", () => {
  const nodes = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
  for (let length = 0; length <= 200; length++) {
    const bytes = Uint8Array.from({ length }, (_, i) => (i * 151 + length) % 256);
    expect(sha256Hex(bytes)).toBe(nodes(bytes));
  }
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 5000 }), (bytes) => sha256Hex(bytes) === nodes(bytes)),
    { seed, numRuns: 300 },
  );
  const part = new Uint8Array([1, 2, 3, 4, 5]).subarray(1, 4);
  expect(sha256Hex(part)).toBe(nodes(Uint8Array.of(2, 3, 4)));
});

test("canonical JSON says the same data, whatever the order of its keys, without a needless sign", () => {
  const law = (value: unknown): void => {
    const text = canonicalJson(value);
    expect(canonicalJson(JSON.parse(text))).toBe(text);
    expect(JSON.stringify(JSON.parse(text)).length).toBe(text.length);
    expect(canonicalJson(reversed(value))).toBe(text);
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(value)));
  };
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      law(value);
    }),
    { seed, numRuns: 500 },
  );
});

test("numbers take their shortest form, and an undefined key is absent", () => {
  expect(canonicalJson([-0, 1e21, 1e20, 1e-7, 0.000001, 5e-324, 1.7976931348623157e308, 205])).toBe(
    "[0,1e+21,100000000000000000000,1e-7,0.000001,5e-324,1.7976931348623157e+308,205]",
  );
  expect(canonicalJson({ b: undefined, a: null })).toBe('{"a":null}');
});

test("what JSON cannot hold is refused, with its place", () => {
  const ring: Record<string, unknown> = {};
  ring.again = ring;
  const refused: readonly [unknown, RegExp][] = [
    [{ a: [1, Number.NaN] }, /^\/a\/1: read NaN/],
    [Infinity, /^\/: read Infinity/],
    [[undefined], /^\/0: read undefined/],
    [{ day: new Date(0) }, /^\/day: read an object with a class/],
    [new Float64Array(1), /class/],
    [{ text: "\ud800" }, /^\/text: read half a surrogate pair/],
    [{ "\udc00": 1 }, /half a surrogate pair/],
    [ring, /^\/again: read an object inside itself/],
    [() => 1, /cannot hold/],
    [1n, /read 1/],
  ];
  for (const [value, message] of refused) expect(() => canonicalJson(value)).toThrow(message);
  const twice = { x: 1 };
  expect(canonicalJson([twice, twice])).toBe('[{"x":1},{"x":1}]');
});

function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== "object" || value === null) return value;
  const entries = Object.entries(value).reverse();
  return Object.fromEntries(entries.map(([key, item]) => [key, reversed(item)]));
}
