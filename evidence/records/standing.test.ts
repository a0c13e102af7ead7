import { graphOf, merged } from "@treewright/core/records/graph.ts";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { counting, standingOf } from "@treewright/core/records/stands.ts";
import { describe, expect, it } from "vitest";
import { Device } from "./written.ts";

const valuesAt = (device: Device, at: string): unknown[] =>
  standingOf(device.entries, GRAPH_KINDS)
    .get(at)
    ?.entries.map(({ value }) => value) ?? [];

function apart(): readonly [Device, Device] {
  const one = new Device(1);
  const other = new Device(2);
  one.state("a", 1);
  other.entries = one.entries;
  return [one, other];
}
const hear = (one: Device, other: Device): void => {
  one.entries = merged(one.entries, other.entries);
};

describe("what stands", () => {
  it("R5 R9 what was said last by one who had seen the rest, and nothing is lost", () => {
    const device = new Device(1);
    device.state("a", 1);
    device.state("b", 7);
    device.state("a", 2);
    expect(valuesAt(device, "a")).toEqual([2]);
    expect(valuesAt(device, "b")).toEqual([7]);
    expect(device.entries).toHaveLength(3);
  });
  it("R9 after a long line only the last stands", () => {
    const device = new Device(1);
    for (let n = 0; n < 200; n++) device.state("a", n);
    expect(valuesAt(device, "a")).toEqual([199]);
  });
  it("R10 a cleared place holds nothing, and can be filled again", () => {
    const device = new Device(1);
    device.state("a", 1);
    device.clear("a");
    expect(standingOf(device.entries, GRAPH_KINDS).has("a")).toBe(false);
    device.state("a", 3);
    expect(valuesAt(device, "a")).toEqual([3]);
  });
  it("R11 undo brings back what was said before", () => {
    const device = new Device(1);
    device.state("a", 1);
    const slip = device.state("a", 1000);
    device.takeBack(slip);
    expect(valuesAt(device, "a")).toEqual([1]);
    expect(device.entries).toHaveLength(3);
  });
  it("R11 a clearing undone stands again", () => {
    const device = new Device(1);
    device.state("a", 1);
    device.takeBack(device.clear("a"));
    expect(valuesAt(device, "a")).toEqual([1]);
  });
  it("R11 several at once", () => {
    const device = new Device(1);
    device.takeBack(device.state("a", 1), device.state("b", 2));
    expect(standingOf(device.entries, GRAPH_KINDS).size).toBe(0);
  });
  it("R12 undo of an undo, three deep", () => {
    const device = new Device(1);
    const said = device.state("a", 1);
    const undo = device.takeBack(said);
    const redo = device.takeBack(undo);
    expect(valuesAt(device, "a")).toEqual([1]);
    device.takeBack(redo);
    expect(valuesAt(device, "a")).toEqual([]);
  });
  it("R12 nobody takes back what he has not seen", () => {
    const [one, other] = apart();
    const unseen = other.state("b", 2);
    one.takeBack(unseen);
    hear(one, other);
    expect(valuesAt(one, "b")).toEqual([2]);
    const graph = graphOf(one.entries);
    expect(counting(graph, GRAPH_KINDS)).toEqual([true, true, true]);
  });
  it("R13 two who had not seen each other both stand, until one who has seen both decides", () => {
    const [one, other] = apart();
    one.state("a", 5);
    other.state("a", 6);
    hear(one, other);
    const both = standingOf(one.entries, GRAPH_KINDS).get("a");
    expect(both?.differ).toBe(true);
    expect(both?.entries.map(({ value }) => value).sort()).toEqual([5, 6]);
    one.state("a", 6);
    expect(standingOf(one.entries, GRAPH_KINDS).get("a")?.differ).toBe(false);
    expect(valuesAt(one, "a")).toEqual([6]);
  });
  it("R13 a clearing and a correction apart are a disagreement too", () => {
    const [one, other] = apart();
    one.clear("a");
    other.state("a", 6);
    hear(one, other);
    const both = standingOf(one.entries, GRAPH_KINDS).get("a");
    expect(both?.differ).toBe(true);
    expect(both?.entries).toHaveLength(2);
  });
  it("R13 the same value said twice is none", () => {
    const [one, other] = apart();
    one.write("stated", { at: "a", value: { x: 1, y: 2 } });
    other.write("stated", { at: "a", value: { y: 2, x: 1 } });
    hear(one, other);
    const both = standingOf(one.entries, GRAPH_KINDS).get("a");
    expect(both?.differ).toBe(false);
    expect(both?.entries).toHaveLength(2);
  });
});
