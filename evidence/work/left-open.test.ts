import { describe, expect, test } from "vitest";
import type { Answers } from "../../core/src/judge/judgement.ts";
import type { Setting } from "../../core/src/reach/setting.ts";
import type { Act } from "../../core/src/terms/answers.ts";
import { whyNoPass } from "../../core/src/work/left-open.ts";

/* What one horse's answers leave a job at the press; who asks for every horse is looked at in `evidence/cli`. */
const setting = (changeMm: number, way: Setting["way"] = "press"): Setting => ({
  id: "it",
  way,
  changeMm,
  spreadMm: 180,
  plate: undefined,
  halfTurnRad: undefined,
  needsBare: false,
  shutBy: [],
});
const work: Answers["work"] = {
  id: "alter-dressed",
  because: [],
  cautions: [],
  nextStep: "",
  who: "",
  also: [],
};
const answered = (permitted: readonly Act[], chosen: Setting | undefined) => ({
  permitted,
  setting: chosen,
  work,
});
const job = (wantedMm: number, state: "dressed" | "bare" = "dressed") => ({ wantedMm, state });

describe("a pass is left open", () => {
  test.each([
    [5, 5],
    [5, 6],
    [-4, -5],
  ])("answered %i mm, wanted %i mm", (answeredMm, wantedMm) => {
    expect(whyNoPass(answered(["press-dressed"], setting(answeredMm)), job(wantedMm))).toBeUndefined();
  });
});

describe("no pass", () => {
  test("in another state than the one that is permitted", () => {
    expect(whyNoPass(answered(["press-bare"], setting(5)), job(5))).toMatch(/press of the dressed tree/);
    expect(whyNoPass(answered(["press-dressed"], setting(5)), job(5, "bare"))).toMatch(/the bare tree/);
  });
  test("where the head stays, or is moved otherwise", () => {
    expect(whyNoPass(answered(["press-dressed"], undefined), job(5))).toMatch(/not answer with a press/);
    expect(whyNoPass(answered(["press-dressed"], setting(5, "exchange")), job(5))).toMatch(/with a press/);
  });
  test.each([
    [5, 6.1],
    [5, -5],
    [-4, -5.1],
  ])("answered %i mm, wanted %d mm", (answeredMm, wantedMm) => {
    expect(whyNoPass(answered(["press-dressed"], setting(answeredMm)), job(wantedMm))).toMatch(
      /the job wants/,
    );
  });
});
