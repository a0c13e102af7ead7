import { expect, test } from "vitest";
import { exampleNames, figuresOfBoth } from "./figures.ts";

/*
 * Every digit of an answer in an engine of another family than Node's: the same. Every sixth example here; all of them, which takes
 * some minutes, by `npm run test:slow -- webkit`.
 */
test("the same figures in Node and in WebKit", async () => {
  const names = exampleNames().filter((_, at) => at % 6 === 1);
  const answers = new Set<string>();
  for await (const { name, horse, node, webkit } of figuresOfBoth(names)) {
    expect({ name, horse, figures: webkit }).toEqual({ name, horse, figures: node });
    answers.add(node.answers.join(" "));
  }
  expect(answers.size).toBeGreaterThanOrEqual(4);
});
