import fc from "fast-check";
import { expect, test } from "vitest";
import { type Json, put, take, valueAt } from "./put.ts";

const typed = `{
  "title": "a \\"quoted\\" case",
  "head": { "spread": 205.0, "read": [ 1.50,2 ] },
  "horses": [
    { "name": "one" }
  ]
}
`;

test("only the value written to changes, every other sign stays as typed", () => {
  expect(put(typed, ["head", "spread"], "8 1/4 in")).toBe(typed.replace("205.0", '"8 1/4 in"'));
  expect(put(typed, ["head", "read", 1], 3)).toBe(typed.replace("1.50,2", "1.50,3"));
});

test("what is lacking is added behind what is there", () => {
  expect(put(typed, ["head", "depth"], 95)).toContain('"read": [ 1.50,2 ], "depth": 95 }');
  expect(put(typed, ["horses", 0, "girthed", "rock"], "4")).toContain(
    '{ "name": "one", "girthed": { "rock": "4" } }',
  );
  expect(put(typed, ["horses", 1], { name: "two" })).toContain('{ "name": "one" },\n    {"name":"two"}\n  ]');
  expect(put(typed, ["rider"], {})).toContain(' ],\n  "rider": {}\n}');
  expect(put("{}", ["a", 0, "b"], 1)).toBe('{ "a": [{ "b": 1 }] }');
});

test("an item leaves its list and nothing else", () => {
  expect(take("[1, 2, 3]", [0])).toBe("[2, 3]");
  expect(take("[1, 2, 3]", [1])).toBe("[1, 3]");
  expect(take("[1, 2, 3]", [2])).toBe("[1, 2]");
  expect(take('{"a":[ 1 ]}', ["a", 0])).toBe('{"a":[  ]}');
  expect(take('{ "a": 1, "b": { "c": 2 } }', ["b"])).toBe('{ "a": 1 }');
  expect(take('{ "a": 1, "b": { "c": 2 } }', ["b", "c"])).toBe('{ "a": 1, "b": {  } }');
  expect(take('{ "a": 1 }', ["b", "c"])).toBe('{ "a": 1 }');
});

test("what is written is what is read, wherever it is written", () => {
  const step = fc.oneof(
    fc.string({ minLength: 1 }).filter((key) => key !== "__proto__"),
    fc.constant("a"),
    fc.constant("b"),
  );
  fc.assert(
    fc.property(
      fc
        .jsonValue({ maxDepth: 4 })
        .filter((file) => typeof file === "object" && file !== null && !Array.isArray(file)),
      fc.array(step, { minLength: 1, maxLength: 4 }),
      fc.jsonValue({ maxDepth: 1 }),
      fc.constantFrom(0, 1, 2),
      (file, path, value, indent) => {
        const plain: Json = JSON.parse(JSON.stringify(value));
        const text = JSON.stringify(file, undefined, indent);
        if (text.includes("__proto__")) return;
        const inList = path.some((_, depth) =>
          Array.isArray(valueAt(JSON.parse(text), path.slice(0, depth))),
        );
        if (inList) return;
        expect(valueAt(JSON.parse(put(text, path, plain)), path)).toEqual(plain);
      },
    ),
  );
});
