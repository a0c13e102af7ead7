import { memoryStore } from "@treewright/store/memory.ts";
import { describe, expect, it } from "vitest";
import { bringInvented } from "../../apps/web/src/practice/first-practice.ts";
import { Practice } from "../../apps/web/src/practice/practice.ts";

const machine = {
  now: () => Date.parse("2031-04-12T09:00:00Z"),
  zone: "Europe/London",
  chance: (bytes: number) => Uint8Array.from({ length: bytes }, (_, at) => (at * 37 + bytes) % 256),
};

describe("the invented practice", () => {
  it("is not brought where visits are, and their entries are not counted for that: it takes long where there are many", async () => {
    const store = memoryStore();
    let counted = 0;
    const counting = {
      ...store,
      count() {
        counted += 1;
        return store.count();
      },
    };
    const empty = await Practice.open(counting, machine);
    // No cases lie beside this page: none is brought, and it was looked at whether there is room for them.
    expect(await bringInvented(empty)).toBe(0);
    expect(counted).toBe(1);
    await empty.begin([{ at: "horses[0].name", value: "Curlew" }]);
    expect(await bringInvented(await Practice.open(counting, machine))).toBe(0);
    expect(counted).toBe(1);
  });
});
