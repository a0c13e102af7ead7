import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { answer } from "../../core/src/answer.ts";
import { panelForOwner, panelSheetOf } from "../../core/src/papers/panel.ts";
import { panelFace } from "../../core/src/shape/faces.ts";
import { daysAfter } from "../../core/src/terms/day.ts";
import { SIDES, STATIONS } from "../../core/src/terms/places.ts";
import { type Term, termsOf, unevenness } from "../../core/src/work/panel/evenness.ts";
import { ACROSS, type Fill, figuresIn, filledTree, NO_FILL } from "../../core/src/work/panel/fill.ts";
import { bestLevels } from "../../core/src/work/panel/levels.ts";
import { isAllowed, LEAST_WORK_MM, proposePanel } from "../../core/src/work/panel/propose.ts";
import { edgeFill, fillFrom } from "../../core/src/work/panel/turned.ts";
import { wedgesOf } from "../../core/src/work/panel/wedge.ts";
import { surveyFrom } from "../answer/examples.ts";
import { mirrored } from "../answer/mirror.ts";
import { propertySeed } from "../number/seed.ts";
import { type Draft, draftOf, hollowNear, panelAnswer, panelCase } from "./panel-case.ts";

const seed = propertySeed("panel");
const DEGREE = Math.PI / 180;
const FLAT = "06-panel-flat";
const EVEN = "08-nothing-to-do";
/** A hollow side of about 5 degrees. */
const HOLLOW = 0.18;
const hollow = draftOf(EVEN, (file) => hollowNear(file, HOLLOW));

const workOf = (file: Draft) => {
  const work = panelAnswer(file)?.work;
  if (work === undefined) throw new Error("no work on the panel");
  return work;
};
const angle = (terms: readonly Term[], at: string) =>
  terms.find((term) => term.at === at)?.value ?? Number.NaN;

describe("wedge and fill", () => {
  test("bare face and wedge make the face; of a face built from rail and panel the rail comes back", () => {
    const thickness = { inner: 18, middle: 22, outer: 27 };
    const rail = { innerEdgeMm: 38, widthMm: 104, faceAngleRad: 0.6, heightMm: -80 };
    const face = panelFace(rail, thickness);
    const half = {
      innerEdgeMm: () => face.innerEdgeMm,
      widthMm: () => face.widthMm,
      faceAngleRad: () => face.faceAngleRad,
      heightMm: () => face.heightMm,
      thicknessMm: { front: thickness, mid: thickness, rear: thickness },
    };
    const { tree } = panelCase(draftOf(EVEN, () => {}));
    for (const wedge of wedgesOf({ ...tree, halves: { near: half, off: half } })) {
      expect(wedge.bareRad).toBeCloseTo(rail.faceAngleRad, 12);
      expect(wedge.wedgeRad + wedge.bareRad).toBeCloseTo(face.faceAngleRad, 12);
      expect(wedge.wedgeRad / DEGREE).toBeCloseTo(4.946, 2);
    }
  });
  test("a fill moves the face out and turns it; nothing filled moves nothing", () => {
    const { tree } = panelCase(draftOf(EVEN, () => {}));
    const at = { inner: 2, middle: 5, outer: 8 };
    const filled = filledTree(tree, { ...NO_FILL, near: { front: at, mid: at, rear: at } });
    for (const station of STATIONS) {
      const x = tree.stationsMm[station];
      const [was, is] = [tree.halves.near, filled.halves.near];
      expect(is.thicknessMm[station].outer - was.thicknessMm[station].outer).toBe(8);
      expect(Math.tan(is.faceAngleRad(x) - was.faceAngleRad(x)) * was.widthMm(x)).toBeCloseTo(6, 9);
      expect(was.heightMm(x) - is.heightMm(x)).toBeCloseTo(5 * Math.cos(was.faceAngleRad(x)), 9);
      expect(filled.halves.off.heightMm(x)).toBe(tree.halves.off.heightMm(x));
      expect(filledTree(tree, NO_FILL).halves.near.faceAngleRad(x)).toBe(was.faceAngleRad(x));
    }
  });
});

describe("what is proposed", () => {
  test("a flat panel: re-flocked first, filled behind, never taken out, the seat nearer level", () => {
    const work = workOf(draftOf(FLAT, () => {}));
    expect(work.first).toEqual(["reflock"]);
    expect(Math.min(...figuresIn(work.fill))).toBe(0);
    expect(work.fill.near.rear.middle).toBeGreaterThanOrEqual(3);
    expect(work.fill.near.rear.middle).toBeGreaterThan(work.fill.near.front.middle);
    const seat = (terms: readonly Term[]) => terms.find(({ id }) => id === "seat-slope")?.value ?? Number.NaN;
    expect(seat(work.before)).toBeGreaterThan(1.5);
    expect(Math.abs(seat(work.after))).toBeLessThan(1);
    expect(work.follows?.seatDeg).toBeCloseTo(seat(work.after) - seat(work.before), 6);
  });
  test("an even saddle gets nothing", () => {
    const work = proposePanel(panelCase(draftOf(EVEN, () => {})));
    expect([work.any, figuresIn(work.fill).every((mm) => mm === 0), work.after]).toEqual([
      false,
      true,
      work.before,
    ]);
  });
  test("a hollow side: the head fits the other, the hollow one is filled at its lower edge by width times tangent", () => {
    const panel = panelCase(hollow);
    const found = panel.searched(NO_FILL);
    const fit = found.sections.find(({ station, side }) => station === "front" && side === "near");
    const work = workOf(hollow);
    const { inner, outer } = work.fill.near.front;
    const width = panel.tree.halves.near.widthMm(0);
    expect(fit?.misfitRad ?? 0).toBeLessThan(-3 * DEGREE);
    expect(Math.abs(outer - inner - Math.min(8, -width * Math.tan(fit?.misfitRad ?? 0)))).toBeLessThanOrEqual(
      0.25,
    );
    expect(Math.abs(angle(work.after, "front, near"))).toBeLessThan(
      Math.abs(angle(work.before, "front, near")),
    );
    // The larger side: nothing at an edge by itself, and so no turn that would narrow it.
    for (const station of STATIONS) expect(work.fill.off[station].outer).toBe(work.fill.off[station].inner);
    expect([work.oneSided, work.recheck.forNow]).toEqual([true, true]);
    expect(work.recheck).toMatchObject({
      from: daysAfter("2031-04-12", 42),
      to: daysAfter("2031-04-12", 56),
    });
  });
  test("mirrored, it is the same on the other side", () => {
    const { fill } = proposePanel(panelCase(hollow));
    expect(proposePanel(panelCase(mirrored(hollow) as Draft)).fill).toEqual({
      near: fill.off,
      off: fill.near,
    });
  });
  test.each([
    ["slip was not asked", (horse: Draft) => (horse.history.slipsSameWay = "unknown")],
    ["it was not seen ridden", (horse: Draft) => (horse.moved.sideOffset = "not-looked")],
    ["it goes to one side", (horse: Draft) => (horse.moved.sideOffset = 18)],
    ["it was not trotted up", (horse: Draft) => (horse.moving.uneven = "not-looked")],
    ["nobody looked for swelling", (horse: Draft) => (horse.standing.swelling = "not-looked")],
  ])("%s: one side alone is not filled, and that is said", (_, change) => {
    const file = structuredClone(hollow);
    change(file.horses[0]);
    const panel = panelCase(file);
    expect(panel.kind.oneSided).toBe(false);
    const proposal = proposePanel(panel);
    expect(proposal.fill.near).toEqual(proposal.fill.off);
    expect(proposal.heldBack).toBe(true);
  });
  test("a lame horse, or one that slips: no panel is worked out at all", () => {
    const lame = draftOf(FLAT, (file) => (file.horses[0].moving.uneven = "yes"));
    const slips = draftOf(FLAT, (file) => (file.horses[0].history.slipsSameWay = "yes"));
    for (const file of [lame, slips]) expect(panelAnswer(file)).toBeUndefined();
  });
});

/** Angles, heights and thicknesses of the bearing moved about, and the kind of filling. */
const anySaddle = fc.record({
  turn: fc.array(fc.integer({ min: -7, max: 7 }), { minLength: 3, maxLength: 3 }),
  raise: fc.array(fc.integer({ min: -5, max: 5 }), { minLength: 3, maxLength: 3 }),
  filling: fc.constantFrom("wool", "foam", "unknown"),
  hollow: fc.constantFrom(0, 0.1, 0.18),
  clearance: fc.integer({ min: 40, max: 58 }),
});

test("any saddle: within limits, in steps of a hand, no clearance lost that is not there, and never less even", () => {
  fc.assert(
    fc.property(anySaddle, ({ turn, raise, filling, hollow: part, clearance }) => {
      const file = draftOf(EVEN, (draft) => {
        draft.saddle.panel.filling = filling;
        draft.horses[0].riderUp.clearanceTop = clearance;
        STATIONS.forEach((station, i) => {
          for (const side of SIDES) {
            draft.saddle.bearing[station][side].faceAngle += turn[i] ?? 0;
            draft.saddle.bearing[station][side].underStraightEdge += raise[i] ?? 0;
          }
        });
        hollowNear(draft, part);
      });
      const panel = panelCase(file);
      const { fill, before, after, deep } = proposePanel(panel);
      const mm = figuresIn(fill);
      expect(isAllowed(fill, panel.tree, deep ? 12 : 8, filling === "wool")).toBe(true);
      for (const one of mm) expect(Number.isInteger(2 * one)).toBe(true);
      if (filling !== "wool") expect(Math.min(...mm)).toBeGreaterThanOrEqual(0);
      expect(unevenness(after)).toBeLessThanOrEqual(unevenness(before));
      if (mm.some((one) => one !== 0)) {
        expect(Math.max(...mm.map(Math.abs))).toBeGreaterThanOrEqual(LEAST_WORK_MM);
        expect(unevenness(after)).toBeLessThan(unevenness(before));
        const [was, is] = [panel.searched(NO_FILL).rest, panel.searched(fill).rest];
        if (was?.ok)
          expect(was.crownOverBackMm - (is?.ok ? is.crownOverBackMm : -Infinity)).toBeLessThanOrEqual(
            Math.max(0, panel.read.spareMm),
          );
      }
    }),
    { seed, numRuns: 15 },
  );
});

describe("a second way to the levels: every place of a grid of 2 mm", () => {
  const cases = [
    ["flat", draftOf(FLAT, () => {})],
    ["hollow", hollow],
    [
      "rocks",
      draftOf(EVEN, (file) => {
        for (const side of SIDES) file.saddle.bearing.mid[side].underStraightEdge += 4;
      }),
    ],
  ] as const;
  test.each(cases)("%s: nothing on the grid is more even by more than its cost of fill", (_, file) => {
    const panel = panelCase(file);
    const found = panel.searched(NO_FILL);
    const proposal = proposePanel(panel);
    const edges = edgeFill(found, panel.back, panel.tree, 8, panel.kind.oneSided);
    const of = (fill: Fill) => {
      const tried = panel.searched(fill);
      const lost =
        found.rest?.ok && tried.rest?.ok ? found.rest.crownOverBackMm - tried.rest.crownOverBackMm : Infinity;
      return lost > panel.read.spareMm ? Infinity : unevenness(termsOf(tried, found, panel.read));
    };
    const steps = [-4, -2, 0, 2, 4, 6, 8];
    const grid = steps.flatMap((front) =>
      steps.flatMap((mid) => steps.map((rear) => ({ front, mid, rear }))),
    );
    const allowed = grid
      .map((levels) => fillFrom(edges, levels))
      .filter((fill) => isAllowed(fill, panel.tree, 8, panel.kind.takes));
    const best = Math.min(...allowed.map(of));
    expect(allowed.length).toBeGreaterThan(20);
    expect(of(proposal.fill)).toBeLessThanOrEqual(best + 0.02 * 18);
    expect(of(proposal.fill)).toBeLessThanOrEqual(of(NO_FILL));
  });
  test("the search itself finds the least of a tilted bowl to a millimetre, and keeps inside", () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -8, max: 8 }), { minLength: 3, maxLength: 3 }),
        ([a = 0, b = 0, c = 0]) => {
          const bowl = ({ front, mid, rear }: { front: number; mid: number; rear: number }) =>
            (front - a) ** 2 + (mid - b) ** 2 + (rear - c) ** 2 + (front - a) * (mid - b);
          expect(bestLevels(bowl)).toEqual({ front: a, mid: b, rear: c });
          const walled = bestLevels((at) => (Math.max(at.front, at.mid, at.rear) > 3 ? Infinity : bowl(at)));
          expect(Math.max(walled.front, walled.mid, walled.rear)).toBeLessThanOrEqual(3);
        },
      ),
      { seed },
    );
  });
});

test("days after a day are the calendar's", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 40000 }), fc.integer({ min: 0, max: 400 }), (from, days) => {
      const iso = (day: number) => new Date(day * 86400000).toISOString().slice(0, 10);
      expect(daysAfter(iso(from), days)).toBe(iso(from + days));
    }),
    { seed },
  );
});

test("in the answer, on the sheet and in the letter: the map with its signs, the dates, no pressure", () => {
  const steps = answer(surveyFrom(draftOf(FLAT, () => {})), { horse: 0, seed: 1 });
  let last = steps.next();
  while (!last.done) last = steps.next();
  const sheet = panelSheetOf(last.value.panel);
  expect(sheet?.fill).toEqual(last.value.panel?.work?.fill);
  expect(sheet?.says.join(" ")).toMatch(
    /re-flocked.*Flock, by the map.*10 May 2031 to 24 May 2031.*beds down 5 to 10 mm/,
  );
  const told = panelForOwner(workOf(hollow) ? panelAnswer(hollow) : undefined).join(" ");
  expect(told).toContain(
    "filled on the near side (left) for now, looked at again between 24 May 2031 and 7 June 2031",
  );
  expect(told).not.toMatch(/kPa/);
  expect(ACROSS).toEqual(["inner", "middle", "outer"]);
});
