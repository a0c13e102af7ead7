import { memoryStore } from "@treewright/store/memory.ts";
import { expect, test } from "vitest";
import { CONTRACT } from "./contract.ts";

test.each(CONTRACT)("the store in memory $says", async ({ holds }) => {
  const store = memoryStore();
  await expect(holds(store, async () => store)).resolves.toBeUndefined();
});
