import { readFileSync } from "node:fs";
import { readCase } from "@treewright/core/survey/read-case.ts";
import { readJob } from "@treewright/core/survey/read-job.ts";
import { type PressJob, pressJob } from "@treewright/core/work/job.ts";
import { describe, expect, it } from "vitest";

const read = readCase(
  readFileSync(new URL("../../examples/cases/18-stripped-and-sound.json", import.meta.url), "utf8"),
);
if (!read.ok) throw new Error("the example cannot be read");
const { saddle } = read.survey;
const SEED = 5;

const BEFORE = { spreadTips: 168, spreadUpper: 87, halfAngleNear: 40.5, halfAngleOff: 40.5 };
const LOOKED = { noise: "no", whiteLine: "no", rivets: "sound", layers: "sound", treeC: 19, holdMin: 10 };
const passOf = (travel: number, kept: number, more: object = {}) => ({
  travel,
  spreadTips: 168 + kept,
  spreadUpper: 87 + 0.38 * kept,
  ...LOOKED,
  ...more,
});
const jobText = (more: object) =>
  JSON.stringify({
    format: "treewright-job",
    version: 1,
    title: "a job",
    state: "bare",
    wantedMm: 5,
    before: BEFORE,
    ...more,
  });

function told(more: object, of = saddle): PressJob {
  const job = readJob(jobText(more));
  if (!job.ok) throw new Error(JSON.stringify(job.problems));
  const found = pressJob(of, job.value, SEED);
  if (!found.ok) throw new Error(found.why);
  return found.job;
}
const stopIds = (more: object) => told(more).stops.map(({ id }) => id);

describe("the first pass", () => {
  it("keeps no more than is wanted in any head believed, and is the longest of its step that does not", () => {
    const { next } = told({});
    expect(next?.foretold.mostKeptMm).toBeLessThanOrEqual(5);
    expect(next?.foretold.mostKeptMm).toBeGreaterThan(4);
    // Sized by the least spring-back and not by the mean: the middle head keeps far less.
    expect(next?.foretold.keptMm.mid).toBeLessThan(4);
  });

  it("is the same in the other way of a head that was never bent", () => {
    const closing = told({ wantedMm: -5 });
    expect(closing.way).toBe(-1);
    expect(
      Math.abs((closing.next?.foretold.travelMm ?? 0) - (told({}).next?.foretold.travelMm ?? 0)),
    ).toBeLessThan(1.1);
  });

  it("is the same figure for the same readings", () => {
    expect(told({ passes: [passOf(5.5, 1.5)] })).toEqual(told({ passes: [passOf(5.5, 1.5)] }));
  });

  it("goes less far dressed when the same is wanted of what travel bends", () => {
    const [bare, dressed] = [told({}), told({ state: "dressed" })];
    expect(dressed.next?.foretold.keptMm.mid).toBeLessThan(bare.next?.foretold.keptMm.mid ?? 0);
  });
});

describe("a measured pass", () => {
  it("narrows what the next keeps, and its upper end stays within what is wanted", () => {
    const { next, keptMm } = told({ wantedMm: 8, passes: [passOf(5.5, 1.5)] });
    expect(keptMm.mid).toBeGreaterThan(0.8);
    expect(keptMm.mid).toBeLessThan(2.2);
    expect(next?.foretold.keptMm.hi).toBeLessThanOrEqual(8);
  });

  it("teaches: a head that kept more is sent less far than one that kept less", () => {
    const travel = (kept: number) =>
      told({ wantedMm: 8, passes: [passOf(6, kept)] }).next?.foretold.travelMm ?? 0;
    expect(travel(1)).toBeGreaterThan(travel(3));
  });

  it("ends the job once what was wanted is there", () => {
    const done = told({ wantedMm: 4, passes: [passOf(6.5, 3.8)] });
    expect(done.ended).toBe("reached");
    expect(done.next).toBeUndefined();
  });

  it("that lacks travel or spread teaches nothing: the job says which", () => {
    const job = readJob(jobText({ passes: [{ spreadTips: 170 }] }));
    if (!job.ok) throw new Error("not read");
    expect(pressJob(saddle, job.value, SEED)).toEqual({
      ok: false,
      why: "job.passes[0] lacks travel: without it a pass teaches nothing",
    });
  });
});

describe("stops", () => {
  const sound = passOf(5.5, 1.5, { halfAngleNear: 41, halfAngleOff: 41, forceN: 2300 });
  it("none for a pass that was looked at and found sound", () =>
    expect(stopIds({ passes: [sound] })).toEqual([]));

  it.each([
    ["noise", { noise: "yes" }, "sign"],
    ["a white line", { whiteLine: "yes" }, "sign"],
    ["a rivet in doubt", { rivets: "doubtful" }, "sign"],
    ["layers parted", { layers: "failed" }, "sign"],
    ["nobody listened", { noise: "not-looked" }, "not-looked"],
    ["nobody knows of a line", { whiteLine: "unknown" }, "not-looked"],
    ["rivets not looked at", { rivets: "not-looked" }, "not-looked"],
    ["layers not looked at", { layers: "not-looked" }, "not-looked"],
    ["half-angles 3 degrees apart", { halfAngleNear: 43, halfAngleOff: 40 }, "halves-apart"],
    ["twice what could be kept", { spreadTips: 175 }, "more-than-foretold"],
  ])("%s ends it, and no travel is told", (_, worse, id) => {
    const job = told({ passes: [{ ...sound, ...worse }] });
    expect(job.stops.map((stop) => stop.id)).toContain(id);
    expect(job.next).toBeUndefined();
  });

  it("force that falls while the travel does not", () => {
    const passes = [sound, { ...sound, travel: 6, forceN: 1800 }];
    expect(stopIds({ passes })).toContain("force-fell");
    expect(stopIds({ passes: [sound, { ...sound, travel: 6, forceN: 2500 }] })).not.toContain("force-fell");
  });

  it("a tree of another serial is refused", () => {
    const job = readJob(jobText({ serial: "another" }));
    if (!job.ok) throw new Error("not read");
    expect(pressJob(saddle, job.value, SEED).ok).toBe(false);
  });
});

describe("caps", () => {
  it("dressed leaves 8 mm; bare 20 from as made, whatever is wanted", () => {
    expect(told({ wantedMm: 12, state: "dressed" })).toMatchObject({
      allowedMm: 8,
      cappedBy: ["cap-dressed"],
    });
    expect(told({ wantedMm: 30 }).allowedMm).toBeLessThanOrEqual(20);
    expect(told({ wantedMm: 5 })).toMatchObject({ allowedMm: 5, cappedBy: [] });
  });

  it("the stop on the wood's stretch holds whatever is wanted", () => {
    const { next } = told({ wantedMm: 20 });
    expect(next?.boundBy).toBe("stretch");
    expect(next?.foretold.stretch.mid).toBeLessThanOrEqual(0.006);
  });
});
