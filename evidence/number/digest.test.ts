import { expect, test } from "vitest";
import { digests } from "./digest.ts";
import { FROZEN } from "./frozen.ts";

test("every bit of engine/number and of the draws is what it was", () => {
  expect(digests()).toEqual(FROZEN);
});
