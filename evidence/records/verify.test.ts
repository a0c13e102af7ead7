import type { Entry } from "@treewright/core/records/entry.ts";
import { merged } from "@treewright/core/records/graph.ts";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { verify } from "@treewright/core/records/verify.ts";
import { describe, expect, it } from "vitest";
import { Device, HORSE, SADDLE } from "./written.ts";

const found = (entries: readonly Entry[]) => verify(entries, GRAPH_KINDS);
const kindsOf = (entries: readonly Entry[]) => found(entries).map(({ is }) => is);

function threeSaid(): readonly Entry[] {
  const device = new Device(1);
  for (const n of [1, 2, 3]) device.state("a", n);
  return device.entries;
}

describe("verify", () => {
  it("R19 finds nothing in what is whole", () => expect(found(threeSaid())).toEqual([]));
  it("R19 a changed value is found, wherever it stands", () => {
    for (const at of [0, 1, 2]) {
      const changed = threeSaid().map((entry, i) =>
        i === at ? { ...entry, body: { at: "a", value: 50 } } : entry,
      );
      expect(kindsOf(changed)).toContain("changed");
      expect(found(changed).filter(({ is }) => is === "changed")).toHaveLength(1);
    }
  });
  it("R19 an entry that is missing from within is found; one cut from the end is not", () => {
    const [a, b, c] = threeSaid();
    expect(found([a, c] as Entry[])).toContainEqual({ is: "not-here", hash: b?.hash, namedBy: c });
    expect(found([a, b] as Entry[])).toEqual([]);
  });
  it("R19 an entry after one of another subject is found", () => {
    const device = new Device(1);
    const ofSaddle = device.state("a", 1, SADDLE);
    const other = new Device(2);
    other.entries = [{ ...ofSaddle, subject: HORSE }];
    const crossed = other.state("a", 2);
    expect(kindsOf([ofSaddle, crossed])).toContain("of-another-subject");
  });
  it("R19 an id that two entries bear is found", () => {
    const one = new Device(1);
    const twin = new Device(1);
    one.state("a", 1);
    twin.state("a", 2);
    expect(kindsOf([...one.entries, ...twin.entries])).toContain("one-id-twice");
  });
  it("R18 R19 newer, unknown and damaged bodies are told apart", () => {
    const device = new Device(1);
    device.write("stated", { at: "a", value: 1 }, HORSE, 9);
    device.write("weighed", {});
    device.write("stated", { where: "a" });
    expect(kindsOf(device.entries).sort()).toEqual(["damaged", "newer", "unknown-kind"]);
  });
  it("R13 R19 a fork is shown with its ends, and what differs with its entries", () => {
    const one = new Device(1);
    const other = new Device(2);
    one.state("a", 1);
    other.entries = one.entries;
    const left = one.state("a", 2);
    const right = other.state("b", 3);
    const forked = merged(one.entries, other.entries);
    expect(found(forked)).toEqual([
      { is: "fork", subject: HORSE, ends: [left, right].sort((x, y) => (x.hash < y.hash ? -1 : 1)) },
    ]);
    other.state("a", 4);
    expect(kindsOf(merged(one.entries, other.entries))).toEqual(["fork", "differ"]);
  });
});
