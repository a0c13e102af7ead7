import { RECORD_LIMITS } from "@treewright/core/records/limits.ts";
import { committed } from "@treewright/core/records/personal.ts";
import { linesOf, type Records, readRecords } from "@treewright/core/records/records-file.ts";
import { describe, expect, it } from "vitest";
import { Device, idOf } from "./written.ts";

function records(): Records {
  const device = new Device(1);
  const held = { person: idOf(8), field: "name", salt: "5a".repeat(32), value: "Mira Tolvan" };
  device.state("a", 1);
  device.write("stated", { at: "owner", value: committed(held) });
  return {
    entries: device.entries,
    people: [held],
    photos: [{ hash: "ab".repeat(32), type: "image/jpeg", bytes: 12 }],
  };
}
const lines = () => [...linesOf(records())];
const refusal = (of: readonly string[]) => {
  const read = readRecords(of);
  return read.ok ? undefined : read.refusals[0];
};

describe("the file of records", () => {
  it("R20 is read back entry for entry, with or without an empty last line", () => {
    expect(readRecords(lines())).toEqual({ ok: true, records: records() });
    expect(readRecords([...lines(), "", ""])).toEqual({ ok: true, records: records() });
    expect(lines()).toHaveLength(5);
  });
  it("R20 is refused whole where one entry is not one, and says where", () => {
    const [head = "", held = "", photo = "", a = "", b = ""] = lines();
    expect(
      refusal([head, held, photo, a, b.replace(/"saidAt":"[^"]+"/, '"saidAt":"yesterday"')])?.where,
    ).toBe("line 5, saidAt");
    expect(refusal([head, held, photo, a, b.slice(0, -1)])).toMatchObject({
      where: "line 5",
      allowed: "a line of JSON",
    });
    expect(refusal([head, "{}", photo, a, b])?.where).toBe("line 2, person");
    expect(refusal([head, held, "{}", a, b])?.where).toBe("line 3, hash");
  });
  it("R20 a file cut short or added to is refused", () => {
    expect(refusal(lines().slice(0, -1))?.read).toBe("3 lines after the first");
    expect(refusal([...lines(), lines()[4] ?? ""])?.read).toBe("5 lines after the first");
  });
  it("R20 an entry at the limit is read, one byte above is not", () => {
    const empty = JSON.stringify(new Device(1).state("a", "")).length;
    const filled = (bytes: number) => [new Device(1).state("a", "x".repeat(bytes - empty))];
    const file = (bytes: number) => [...linesOf({ people: [], photos: [], entries: filled(bytes) })];
    expect(file(RECORD_LIMITS.entryBytes)[1]).toHaveLength(RECORD_LIMITS.entryBytes);
    expect(readRecords(file(RECORD_LIMITS.entryBytes)).ok).toBe(true);
    expect(refusal(file(RECORD_LIMITS.entryBytes + 1))).toEqual({
      where: "line 2",
      read: `${RECORD_LIMITS.entryBytes + 1} bytes`,
      allowed: `at most ${RECORD_LIMITS.entryBytes} bytes`,
    });
  });
  it("R18 a file of a newer version is refused politely, whatever else stands in it", () => {
    const newer = '{"format":"treewright-records","version":2,"packed":true}';
    expect(refusal([newer, "…"])?.read).toBe("2: written by a newer Treewright");
  });
  it.each(["", "null", "5", "[]", "{}", '{"format":"other","version":1}'])(
    "R20 what is no such file is refused: %j",
    (wrong) => expect(refusal([wrong])?.where).toContain("line 1"),
  );
});
