import { passFor, unbentArch } from "@treewright/core/engine/bending/index.ts";
import { type Bend, bendOf } from "@treewright/core/reach/bend/bend-of.ts";
import { bendingHead } from "@treewright/core/reach/bend/head-arch.ts";
import { passFigures } from "@treewright/core/reach/bend/pass-figures.ts";
import { throughPast } from "@treewright/core/reach/bend/past.ts";
import { travelRange } from "@treewright/core/reach/bend/travel.ts";
import { whereToLook } from "@treewright/core/reach/bend/where-to-look.ts";
import { capsPassed, PRESS_CAPS } from "@treewright/core/reach/caps.ts";
import { pressHistory } from "@treewright/core/reach/history.ts";
import { settingsOf } from "@treewright/core/reach/settings.ts";
import type { Survey } from "@treewright/core/survey/case.ts";
import full from "@treewright/core/survey/fixtures/full.json" with { type: "json" };
import { readCase } from "@treewright/core/survey/read-case.ts";
import { expect, test } from "vitest";

type Json = { [key: string]: unknown };

/** The full case with its saddle changed group by group. */
function survey(over: Json = {}): Survey {
  const saddle: Json = { ...full.saddle };
  for (const [group, fields] of Object.entries(over))
    saddle[group] = { ...(saddle[group] as Json), ...(fields as Json) };
  const read = readCase(JSON.stringify({ ...full, saddle }));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.survey;
}

function bent(over: Json = {}): Bend {
  const bend = bendOf(survey(over).saddle);
  if (bend === undefined) throw new Error("nothing bends");
  return bend;
}

const strain = (bend: Bend, changeMm: number) => {
  const found = bend.strainAt(changeMm);
  if (found === undefined) throw new Error(`${changeMm} mm: it gives way`);
  return found;
};
const altered = (...changes: number[]) => ({
  past: {
    alterationsKnown: "listed",
    alterations: changes.map((change) => ({
      date: "2030",
      change,
      by: "bench",
      knownHand: "yes",
      way: "press",
    })),
  },
  head: { asMadeSpreadTips: 205 - changes.reduce((sum, one) => sum + one, 0) },
});

test("more change stretches the wood more, whichever way, until the stop shuts it", () => {
  const bend = bent();
  for (const way of [1, -1]) {
    const all = [2, 4, 6, 9, 12].map((mm) => strain(bend, way * mm).stretch);
    expect([...all].sort((a, b) => a - b)).toEqual(all);
  }
  expect(bend.shutBy(2)).toEqual([]);
  expect(bend.shutBy(20)).toEqual(["cap-wood-strain"]);
});

test("the stop only shuts: what the caps shut stays shut", () => {
  const changed = survey(altered(14, -16, -12));
  const history = pressHistory(changed.saddle);
  for (const { way, changeMm, shutBy } of settingsOf(changed, 205)) {
    if (way !== "press") continue;
    for (const cap of capsPassed(changeMm, history, PRESS_CAPS)) expect(shutBy).toContain(cap);
  }
});

test("each reading of wood, plates and rivets changes what the press does", () => {
  const base = strain(bent(), 6);
  const thicker = { woodThickness: 12, woodWidth: 55, overThickness: 3.5, overWidth: 35, underThickness: 4 };
  for (const [field, value] of Object.entries({ ...thicker, underWidth: 38, rivets: 3, rivetDiameter: 4 })) {
    const other = strain(bent({ reinforcement: { [field]: value } }), 6);
    expect([field, other.travelMm, other.stretch]).not.toEqual([field, base.travelMm, base.stretch]);
  }
});

test("thicker wood is stretched more by the same change", () => {
  const at = (woodThickness: number) => strain(bent({ reinforcement: { woodThickness } }), 6).stretch;
  expect(at(12)).toBeGreaterThan(1.05 * at(9));
});

test("what was bent before counts: further the same way stretches more, back along the way takes less force", () => {
  const [fresh, after] = [bent(), bent(altered(6))];
  expect(after.pastMm).toEqual([6]);
  expect(strain(after, 4).stretch).toBeGreaterThan(1.2 * strain(fresh, 4).stretch);
  expect(Math.abs(strain(after, -4).forceN)).toBeLessThan(0.95 * Math.abs(strain(fresh, -4).forceN));
});

test("what measure and record differ by was done as well, before the record; an exchange bends nothing", () => {
  const silent = { past: { alterationsKnown: "none", alterations: [] }, head: { asMadeSpreadTips: 201 } };
  expect(bent(silent).pastMm).toEqual([4]);
  const exchanged = altered(5);
  for (const one of exchanged.past.alterations) one.way = "exchange";
  expect(bent({ ...exchanged, head: { asMadeSpreadTips: 205 } }).pastMm).toEqual([]);
});

test("an exact pass agrees with the glance, and is as kept as asked", () => {
  const bend = bent();
  for (const change of [-6, 4, 8]) {
    const pass = passFor(bend.head.arch, unbentArch(bend.head.arch), change);
    const glance = strain(bend, change);
    expect(Math.abs((pass?.heldMm ?? 0) - glance.travelMm)).toBeLessThan(0.02 * Math.abs(glance.travelMm));
  }
  const figures = passFigures(bend, 6);
  expect((figures?.keptMm.near ?? 0) + (figures?.keptMm.off ?? 0)).toBeCloseTo(6, 2);
  expect(figures?.bendsOverMm).toBeGreaterThan(40);
  expect(figures?.bendsOverMm).toBeLessThan(160);
  expect(figures?.lifePart).toBeLessThan(0.001);
});

test("the travel's interval holds the travel at the base values, and the least of all draws", () => {
  const bend = bent();
  const travel = strain(bend, 6).travelMm;
  const range = travelRange(bend, 6, 1);
  expect(range?.loMm).toBeLessThan(travel);
  expect(range?.hiMm).toBeGreaterThan(travel);
  expect(range?.leastMm).toBeLessThanOrEqual(range?.loMm ?? 0);
  expect(range?.leastMm).toBeGreaterThan(6);
  expect(travelRange(bend, 6, 1)).toEqual(range);
});

test("opening is looked at under the head, closing over it", () => {
  expect(whereToLook("wood", 4)[0]).toMatch(/^plate under the head, at its rivet holes/);
  expect(whereToLook("wood", -4)[0]).toMatch(/^top of the head: outermost layers and the plate over it/);
  expect(whereToLook("wood", 0)).toEqual([]);
  expect(whereToLook("polymer", 4)[0]).toMatch(/^inside of the head at the shoulder of the bar: white lines/);
  expect(whereToLook("polymer", -4)[0]).toMatch(/^top of the head at the shoulder of the bar: white lines/);
  expect(whereToLook("polymer", 0)).toEqual([]);
});

test("the weaker of the two plates' rivets is what the head's joint holds, and the wood parts where rupture is", () => {
  for (const thin of ["overThickness", "underThickness"]) {
    const head = bendingHead(
      survey({ reinforcement: { overThickness: 3, underThickness: 3, [thin]: 1.2 } }).saddle,
    );
    const { arch, jointN } = head?.at({}, "alike") ?? {};
    const [over, wood, under] = arch?.[0][0]?.section.layers ?? [];
    if (!over || !wood || !under) throw new Error("three layers");
    expect(over.jointN).not.toBe(under.jointN);
    expect(jointN).toBe(Math.min(over.jointN, under.jointN));
    // Beech at 12 %: 100 of 11,900 MPa, near a hundredth (Wood Handbook, FPL-GTR-190, as in head-priors.ts).
    const law = wood.law as { partsAtStretch?: number };
    expect(law.partsAtStretch).toBeGreaterThan(0.004);
    expect(law.partsAtStretch).toBeLessThan(0.02);
  }
});

test("a head read unevenly bends each half by its own angle; as one it bends by their mean", () => {
  const head = bendingHead(survey({ head: { halfAngleNear: 48, halfAngleOff: 42 } }).saddle);
  const halves = (alike?: "alike") => head?.at({}, alike).arch ?? [];
  const [near, off] = halves();
  expect(near).not.toEqual(off);
  const [one, other] = halves("alike");
  expect(one).toEqual(other);
  expect(one).not.toEqual(near);
});

test("a change that the section cannot keep is shut, and has no figures of its own", () => {
  const bend = bent();
  expect(bend.strainAt(400)).toBeUndefined();
  expect(bend.shutBy(400)).toEqual(["cap-wood-strain"]);
  expect(passFigures(bend, 400)).toBeUndefined();
  expect(travelRange(bend, 400, 1)).toBeUndefined();
});

test("what the section could not keep cuts the past short, and says so", () => {
  const bend = bendingHead(survey().saddle)?.at({}, "alike");
  if (!bend) throw new Error("a head that bends");
  expect(throughPast(bend.arch, [4, -2])).toMatchObject({ changesMm: [4, -2], cutShort: false });
  expect(throughPast(bend.arch, [4, 400, 1])).toMatchObject({ changesMm: [4, 400, 1], cutShort: true });
});

test("a bar in polymer bends too, springs back most of a small travel, and stops at the polymer's strain", () => {
  const bar = {
    build: { arch: "polymer", metal: "bar", movedBy: "press" },
    reinforcement: { woodThickness: 8, overThickness: 3 },
  };
  const bend = bent(bar);
  expect(bend.belief.stuff).toBe("polymer");
  const small = strain(bend, 2);
  expect(small.springBackMm / small.travelMm).toBeGreaterThan(0.5);
  expect(bend.stop.id).toBe("cap-polymer-strain");
});

test("what nobody bends has nothing to say", () => {
  const of = (build: Json) => bendOf(survey({ build }).saddle);
  expect(of({ arch: "polymer", metal: "plates", exchange: "plate", movedBy: "exchange" })).toBeUndefined();
  expect(of({ form: "side-saddle" })).toBeUndefined();
});
