import type { Entry } from "@treewright/core/records/entry.ts";
import { endsOf, graphOf, merged } from "@treewright/core/records/graph.ts";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { propertySeed } from "../number/seed.ts";
import { Device } from "./written.ts";

const seed = propertySeed("merging");

/** What a device does: says, clears, takes back what it has, or hears another out. */
const step = fc.record({
  device: fc.nat(2),
  does: fc.constantFrom("state", "state", "state", "clear", "take-back", "hear"),
  place: fc.constantFrom("a", "b", "c"),
  value: fc.nat(3),
  other: fc.nat(50),
});
type Step = typeof step extends fc.Arbitrary<infer Of> ? Of : never;

function play(steps: readonly Step[]): readonly Device[] {
  const devices = [new Device(1), new Device(2, "1999-01-01T00:00:00.000Z"), new Device(3)];
  for (const { device, does, place, value, other } of steps) {
    const one = devices[device];
    if (one === undefined) continue;
    if (does === "state") one.state(place, value);
    if (does === "clear") one.clear(place);
    const known = one.entries[other % Math.max(1, one.entries.length)];
    if (does === "take-back" && known) one.takeBack(known);
    if (does === "hear") one.entries = merged(one.entries, devices[other % 3]?.entries ?? []);
  }
  return devices;
}

const stateOf = (entries: readonly Entry[]) =>
  [...standingOf(entries, GRAPH_KINDS)].map(([at, { entries: said, differ }]) => ({
    at,
    differ,
    said: said.map(({ entry, value }) => ({ hash: entry.hash, value })),
  }));

describe("merging", () => {
  it("R7 R8 random devices that hear each other in any order, any number of times, end in one state", () => {
    let withForks = 0;
    let withEntries = 0;
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 12, maxLength: 40 }),
        fc.infiniteStream(fc.nat(999)),
        (steps, picks) => {
          const devices = play(steps);
          const all = devices.flatMap(({ entries }) => entries);
          const once = merged(all);
          const shuffled = [...all, ...all].sort(() => (picks.next().value ?? 0) - 500);
          expect(merged(shuffled)).toEqual(once);
          expect(merged(merged(...devices.map(({ entries }) => entries)), once)).toEqual(once);
          expect(stateOf(shuffled)).toEqual(stateOf(once));
          expect(graphOf(shuffled).entries).toEqual(graphOf(once).entries);
          if (endsOf(once).length > 1) withForks += 1;
          if (once.length > 3) withEntries += 1;
        },
      ),
      { seed, numRuns: 300 },
    );
    // The law is worth nothing where nothing happens.
    expect(withForks).toBeGreaterThan(50);
    expect(withEntries).toBeGreaterThan(100);
  });
  it("R8 what was seen comes before what saw it", () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
        const { entries } = graphOf(play(steps).flatMap((one) => one.entries));
        const placeOf = new Map(entries.map(({ hash }, at) => [hash, at]));
        entries.forEach(({ after }, at) => {
          for (const hash of after) expect(placeOf.get(hash)).toBeLessThan(at);
        });
      }),
      { seed },
    );
  });
  it("R4 the next entry comes after the ends of what was seen, and of its own subject alone", () => {
    const one = new Device(1);
    const other = new Device(2);
    const a = one.state("a", 1);
    const b = other.state("a", 2);
    one.entries = merged(one.entries, other.entries);
    const joined = one.state("a", 3);
    expect(joined.after).toEqual([a.hash, b.hash].sort());
    expect(one.state("a", 4).after).toEqual([joined.hash]);
  });
  it("R6 clocks wrong by an hour and by years change no state and no order of what saw what", () => {
    const run = (clock: string) => {
      const right = new Device(1);
      const wrong = new Device(2, clock);
      right.state("a", 1);
      wrong.entries = right.entries;
      wrong.state("a", 2);
      right.entries = merged(right.entries, wrong.entries);
      right.state("b", 3);
      return stateOf(right.entries).map(({ at, said }) => ({ at, values: said.map(({ value }) => value) }));
    };
    const expected = [
      { at: "a", values: [2] },
      { at: "b", values: [3] },
    ];
    for (const clock of ["2031-04-12T10:00:00.000Z", "1970-01-01T00:00:00.000Z", "2099-01-01T00:00:00.000Z"])
      expect(run(clock)).toEqual(expected);
  });
});
