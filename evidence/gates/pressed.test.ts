import { describe, expect, it } from "vitest";
import type { RefusalReason } from "../../core/src/engine/contact/problem.ts";
import { REFUSALS } from "../../core/src/engine/contact/problem.ts";
import { judgeCase } from "../../core/src/judge/judge-case.ts";
import { closing, FAR_OVER_KPA } from "../../core/src/judge/limits/pressed.ts";
import { candidate, faces, figure, sweep, toJudge } from "./case.ts";
import { PLATE, plates } from "./combination-bases.ts";

/** What the calculation alone finds may close, and never opens. That the line is the right one, no check here can see: it is a choice. */
const over = (rule: string, value: number) => figure(rule, rule === "ridge-touch" ? "" : "near", value);
const HEAD = "pressure-head-walk";
const work = (today: Parameters<typeof toJudge>[1]) => judgeCase(toJudge({}, today)).answers;

describe("pressure and touch by calculation", () => {
  it.each([
    [HEAD, FAR_OVER_KPA, 0],
    [HEAD, FAR_OVER_KPA - 15, 0],
    [HEAD, FAR_OVER_KPA * 1.05, 1],
    ["ridge-touch", 0, 0],
    ["ridge-touch", 0.1, 1],
  ])("%s of %f: handed over %i times", (rule, value, times) => {
    expect(closing([over(rule, value)])).toHaveLength(times);
  });
  it("a figure without a value closes nothing", () => {
    expect(closing([{ ...over(HEAD, 25), value: undefined, u: undefined }])).toEqual([]);
  });
  it("far over, a saddle of which all else is inside is no longer called right", () => {
    const found = work({ computedToday: [...faces(0), over(HEAD, 24)] });
    expect(work({}).work.id).toBe("nothing");
    expect(found.work.id).not.toBe("nothing");
    expect(found.limitsToday.find(({ rule }) => rule === HEAD)?.outcome).toBe("outside");
  });
  it("touching the ridge likewise", () => {
    expect(work({ computedToday: [...faces(0), over("ridge-touch", 2)] }).work.id).not.toBe("nothing");
  });
  const twoPlates = [candidate(16, "exchange", 5.5), candidate(18, "exchange", 5.5)];
  const change = (today: Parameters<typeof toJudge>[1]) =>
    judgeCase(toJudge(PLATE, { ...plates, ...today })).answers;
  it("a plate under which it is far over is not chosen", () => {
    const free = change({ candidates: twoPlates }).setting?.changeMm;
    expect([16, 18]).toContain(free);
    const closed = twoPlates.map((one) => ({
      ...one,
      after: one.setting.changeMm === free ? [...one.after, over(HEAD, 26)] : one.after,
    }));
    expect(change({ candidates: closed }).setting?.changeMm).toBe(free === 16 ? 18 : 16);
  });
  it("one that closed today and no longer does after a change does not stand there", () => {
    const candidates = twoPlates.map((one) => ({ ...one, after: [...one.after, over(HEAD, 18)] }));
    const found = change({ computedToday: [...faces(5.5), over(HEAD, 24)], candidates });
    expect(found.limitsAfter.find(({ rule }) => rule === HEAD)?.outcome).toBe("inside");
    expect(found.setting?.changeMm).toBe(change({ candidates: twoPlates }).setting?.changeMm);
  });
  it("with it nothing more is permitted than without it, whatever the head", () => {
    for (const face of [-8, -4, 0, 3, 4, 6])
      for (const way of ["press", "exchange"] as const) {
        const given = { computedToday: faces(face), candidates: sweep(way, face) };
        const without = work(given);
        for (const found of [over(HEAD, 24), over("ridge-touch", 3)]) {
          const { permitted, work: now } = work({ ...given, computedToday: [...given.computedToday, found] });
          expect(permitted.every((act) => without.permitted.includes(act))).toBe(true);
          if (without.work.id !== "nothing") expect(now.id).not.toBe("nothing");
        }
      }
  });
});

describe("why nothing rests", () => {
  it.each(REFUSALS)(
    "%s: never called right, and what it rests on is read again",
    (notAtRest: RefusalReason) => {
      const found = work({ notAtRest });
      expect(found.work.id).toBe("measure-more");
      expect(found.work.because.map(({ rule }) => rule)).toContain("fit-does-not-rest");
    },
  );
  it("a case that rests is not said not to, though no setting has a value", () => {
    expect(work({ candidates: [] }).work.because.map(({ rule }) => rule)).not.toContain("fit-does-not-rest");
  });
});
