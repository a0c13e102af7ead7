import { describe, expect, test } from "vitest";
import { answer } from "../../core/src/answer.ts";
import { panelForOwner, panelSheetOf } from "../../core/src/papers/panel.ts";
import { daysAfter } from "../../core/src/terms/day.ts";
import { STATIONS } from "../../core/src/terms/places.ts";
import type { Term } from "../../core/src/work/panel/evenness.ts";
import { ACROSS, figuresIn, NO_FILL } from "../../core/src/work/panel/fill.ts";
import { proposePanel } from "../../core/src/work/panel/propose.ts";
import { surveyFrom } from "../answer/examples.ts";
import { mirrored } from "../answer/mirror.ts";
import { type Draft, draftOf, EVEN, FLAT, hollowCase, panelAnswer, panelCase } from "./panel-case.ts";

const hollow = hollowCase();

const DEGREE = Math.PI / 180;

const workOf = (file: Draft) => {
  const work = panelAnswer(file)?.work;
  if (work === undefined) throw new Error("no work on the panel");
  return work;
};
const angle = (terms: readonly Term[], at: string) =>
  terms.find((term) => term.at === at)?.value ?? Number.NaN;

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

test("in the answer, on the sheet and in the letter: the map with its signs, the dates, no pressure", () => {
  const steps = answer(surveyFrom(draftOf(FLAT, () => {})), { horse: 0, seed: 1 });
  let last = steps.next();
  while (!last.done) last = steps.next();
  const sheet = panelSheetOf(last.value.panel);
  expect(sheet?.fill).toEqual(last.value.panel?.work?.fill);
  expect(sheet?.says.join(" ")).toMatch(
    /re-flocked.*Flock, by the map.*24 May 2031 to 7 June 2031.*beds down 5 to 10 mm/,
  );
  const told = panelForOwner(workOf(hollow) ? panelAnswer(hollow) : undefined).join(" ");
  expect(told).toContain(
    "filled on the near side (left) for now, looked at again between 24 May 2031 and 7 June 2031",
  );
  expect(told).not.toMatch(/kPa/);
  expect(ACROSS).toEqual(["inner", "middle", "outer"]);
});
