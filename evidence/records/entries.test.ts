import { createHash } from "node:crypto";
import { type Entry, isWhole, sealed } from "@treewright/core/records/entry.ts";
import { uuidV7 } from "@treewright/core/records/id.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { propertySeed } from "../number/seed.ts";
import { Device, idOf } from "./written.ts";

const seed = propertySeed("entries");

const first = (): Entry => new Device(1).state("a", 5);

describe("one entry", () => {
  it("R1 has these names and no others", () => {
    expect(Object.keys(first()).sort()).toEqual(
      [
        "after",
        "author",
        "body",
        "device",
        "hash",
        "id",
        "kind",
        "saidAt",
        "subject",
        "version",
        "zone",
      ].sort(),
    );
    const { hash: _, ...rest } = first();
    expect(() => sealed({ ...rest, note: "more" } as typeof rest)).toThrow(/note/);
  });
  it("R1 refuses what is no id, no moment in UTC, no zone, no list in order", () => {
    const { hash: _, ...rest } = first();
    for (const wrong of [
      { id: "0188" },
      { id: rest.id.replace(/-7/, "-4") },
      { saidAt: "2031-04-12T09:00:00" },
      { saidAt: "2031-04-12T09:00:00.000+01:00" },
      { zone: "" },
      { version: 0 },
      { kind: "Stated" },
      { after: ["b".repeat(64), "a".repeat(64)] },
      { after: ["a".repeat(64), "a".repeat(64)] },
      { after: ["A".repeat(64)] },
    ])
      expect(() => sealed({ ...rest, ...wrong }), JSON.stringify(wrong)).toThrow();
  });
  // Published: RFC 9562 (2024), appendix A.6: the example of version 7.
  it("R2 its id is the standard's own example", () => {
    const chance = Uint8Array.from([0x0c, 0xc3, 0x18, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
    expect(uuidV7(0x017f22e279b0, chance)).toBe("017f22e2-79b0-7cc3-98c4-dc0c0c07398f");
  });
  it("R2 ids sort by the time they were made, and refuse times that they cannot hold", () => {
    fc.assert(
      fc.property(fc.nat(2 ** 47), fc.nat(2 ** 46), (ms, later) => {
        const chance = (byte: number) => new Uint8Array(10).fill(byte);
        expect(uuidV7(ms, chance(255)) < uuidV7(ms + later + 1, chance(0))).toBe(true);
      }),
      { seed },
    );
    for (const ms of [-1, 0.5, 2 ** 48, Number.NaN])
      expect(() => uuidV7(ms, new Uint8Array(10))).toThrow(RangeError);
    expect(() => uuidV7(0, new Uint8Array(9))).toThrow(RangeError);
  });
  it("R3 its hash is that of another hand: keys sorted, no spaces, Node's SHA-256", () => {
    const { hash, ...rest } = new Device(1).write("stated", { at: "a", value: { b: 2, a: [1, "é"] } });
    const text =
      `{"after":[],"author":"${rest.author}","body":{"at":"a","value":{"a":[1,"é"],"b":2}},"device":"${rest.device}",` +
      `"id":"${rest.id}","kind":"stated","saidAt":"${rest.saidAt}","subject":"${rest.subject}","version":1,"zone":"${rest.zone}"}`;
    expect(hash).toBe(createHash("sha256").update(text).digest("hex"));
  });
  it("R3 any change of any part shows", () => {
    const entry = first();
    expect(isWhole(entry)).toBe(true);
    const changes: Partial<Entry>[] = [
      { id: idOf(77) },
      { subject: idOf(77) },
      { kind: "erased" },
      { version: 2 },
      { author: idOf(77) },
      { device: idOf(77) },
      { saidAt: "2031-04-12T09:00:00.001Z" },
      { zone: "UTC" },
      { after: ["a".repeat(64)] },
      { body: { at: "a", value: 6 } },
      { hash: entry.hash.replace(/^./, (digit) => (digit === "0" ? "1" : "0")) },
    ];
    for (const change of changes)
      expect(isWhole({ ...entry, ...change }), JSON.stringify(change)).toBe(false);
  });
});
