import { createHash } from "node:crypto";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { committed, erasedFrom, type Held, revealed } from "@treewright/core/records/personal.ts";
import { FAULTS, verify } from "@treewright/core/records/verify.ts";
import { describe, expect, it } from "vitest";
import { Device, idOf } from "./written.ts";

const OWNER = idOf(8);
const name: Held = { person: OWNER, field: "name", salt: "5a".repeat(32), value: "Mira Tolvan" };
const street: Held = { person: OWNER, field: "street", salt: "c3".repeat(32), value: "3 Ropewalk" };
const ofAnother: Held = { ...name, person: idOf(9), salt: "77".repeat(32) };

describe("people", () => {
  it("R14 the commitment is that of another hand", () => {
    const expected = createHash("sha256").update(`${name.salt}Mira Tolvan`).digest("hex");
    expect(committed(name)).toEqual({ person: OWNER, field: "name", commitment: expected });
  });
  it("R14 it is opened by salt and value, and by no others", () => {
    const one = committed(name);
    expect(revealed(one, [street, ofAnother, name])).toBe("Mira Tolvan");
    expect(revealed(one, [{ ...name, salt: "5b".repeat(32) }])).toBeUndefined();
    expect(revealed(one, [{ ...name, value: "Mira Tolven" }])).toBeUndefined();
    expect(revealed(one, [{ ...name, person: idOf(9) }])).toBeUndefined();
  });
  it("R15 once erased the value is nowhere, all hashes are right, and others keep theirs", () => {
    const device = new Device(1);
    device.write("stated", { at: "owner", value: committed(name) });
    device.write("erased", { person: OWNER, fields: ["name"] });
    const left = erasedFrom([name, street, ofAnother], OWNER, ["name"]);
    expect(left).toEqual([street, ofAnother]);
    expect(revealed(committed(name), left)).toBeUndefined();
    expect(verify(device.entries, GRAPH_KINDS).filter(({ is }) => FAULTS.has(is))).toEqual([]);
    const all = JSON.stringify([device.entries, left.filter(({ person }) => person === OWNER)]);
    for (const canary of ["Mira", "Tolvan", name.salt]) expect(all).not.toContain(canary);
  });
});
