import { GRAPH_KINDS, type Kind } from "@treewright/core/records/kinds.ts";
import { faultInKinds, readBody } from "@treewright/core/records/read-body.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { Device, HORSE } from "./written.ts";

/** A kind that has been changed twice: it was called `n`, then `count`, and now has a unit. */
const counted: Kind = {
  kind: "counted",
  version: 3,
  schema: z.strictObject({ count: z.number(), unit: z.string() }),
  steps: [({ n, ...rest }) => ({ ...rest, count: n }), (body) => ({ ...body, unit: "pieces" })],
};
const KINDS = [...GRAPH_KINDS, counted];
const write = (version: number, body: Record<string, number | string>, kind = "counted") =>
  new Device(1).write(kind, body, HORSE, version);

describe("versions of kinds", () => {
  it("R16 the kinds of the graph have no gap", () => expect(faultInKinds(GRAPH_KINDS)).toBeUndefined());
  it("R16 a missing step, one too many and a kind told twice are found", () => {
    expect(faultInKinds(KINDS)).toBeUndefined();
    expect(faultInKinds([{ ...counted, steps: counted.steps.slice(1) }])).toContain("1 steps, not 2");
    expect(faultInKinds([{ ...counted, version: 2 }])).toContain("2 steps, not 1");
    expect(faultInKinds([counted, counted])).toContain("twice");
  });
  it("R17 old bodies are read through every step, and the entry keeps its bytes", () => {
    const entry = write(1, { n: 4 });
    const before = JSON.stringify(entry);
    expect(readBody(entry, KINDS)).toEqual({ is: "read", body: { count: 4, unit: "pieces" } });
    expect(readBody(write(2, { count: 4 }), KINDS)).toEqual({
      is: "read",
      body: { count: 4, unit: "pieces" },
    });
    expect(readBody(write(3, { count: 4, unit: "mm" }), KINDS)).toEqual({
      is: "read",
      body: { count: 4, unit: "mm" },
    });
    expect(JSON.stringify(entry)).toBe(before);
  });
  it("R18 newer bodies and kinds not known are kept and not read", () => {
    expect(readBody(write(4, { many: 4 }), KINDS)).toEqual({ is: "newer", version: 4, known: 3 });
    expect(readBody(write(1, {}, "weighed"), KINDS)).toEqual({ is: "unknown-kind" });
    const device = new Device(1);
    device.state("a", 1);
    device.write("stated", { at: "a", value: 2, why: "of a later day" }, HORSE, 2);
    expect(
      standingOf(device.entries, GRAPH_KINDS)
        .get("a")
        ?.entries.map(({ value }) => value),
    ).toEqual([1]);
    expect(device.entries).toHaveLength(2);
  });
  it("R19 a body that is not what its kind holds is damaged, and says where", () => {
    expect(readBody(write(3, { count: "four", unit: "mm" }), KINDS)).toEqual({ is: "damaged", at: "count" });
  });
});
