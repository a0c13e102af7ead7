import { describe, expect, it } from "vitest";
import { LIMITS, limitRule } from "../../core/src/judge/limits/all.ts";
import { bandOf, OPEN } from "../../core/src/judge/limits/bands.ts";
import { judgeLimit } from "../../core/src/judge/limits/judge-limit.ts";
import { LIMIT_IDS } from "../../core/src/judge/limits/limit-ids.ts";

/**
 * The limits as settled, typed here by hand and not read from the records: [inside from, to, outside below, above].
 * Source of the numbers: common practice, no source.
 */
const SETTLED: { readonly [id: string]: readonly [number, number, number, number] } = {
  "clearance-girthed": [45, OPEN, 30, OPEN],
  "clearance-rider-up": [40, 75, 30, 75],
  "clearance-half-seat": [30, OPEN, 20, OPEN],
  "clearance-side": [12, OPEN, 8, OPEN],
  "channel-over-ridge": [25, OPEN, 1, OPEN],
  "channel-width": [60, OPEN, 55, OPEN],
  "girth-groove": [-20, 20, -40, 40],
  "face-front": [-3, 2, -6, 5],
  "face-rail": [-4, 4, -8, 8],
  "spread-wanted": [-5, 5, -10, 10],
  feeler: [-OPEN, 2, -OPEN, 5],
  bridge: [-OPEN, 5, -OPEN, 10],
  rock: [-OPEN, 5, -OPEN, 12],
  "seat-slope": [-1.5, 1.5, -3, 3],
  "saddle-panel-sides": [-3, 3, -6, 6],
  "saddle-point-lengths": [-2, 2, -4, 4],
  "saddle-half-angles": [-1, 1, -2, 2],
  "saddle-diagonals-dressed": [-5, 5, -5, 5],
  "saddle-diagonals-bare": [-3, 3, -3, 3],
  "saddle-bench-rock": [-OPEN, 2, -OPEN, 4],
  "saddle-string": [-OPEN, 3, -OPEN, 6],
  "horse-sides-angle": [-3, 3, -6, 6],
  "horse-sides-width": [-5, 5, -10, 10],
  hollow: [-OPEN, 5, -OPEN, 10],
  "side-offset": [-OPEN, 10, -OPEN, 25],
  "point-behind-blade": [50, OPEN, 30, OPEN],
  "panel-rear-edge": [10, OPEN, 0, OPEN],
  fill: [-OPEN, 8, -OPEN, 12],
  "pressure-head-walk": [-OPEN, 20, -OPEN, 20],
  "ridge-touch": [-OPEN, 0, -OPEN, 0],
};
/** A hair: beyond round-off, far below any reading. */
const HAIR = 1e-6;

describe("the records", () => {
  it("every id has one record, and every record its settled figures", () => {
    expect(LIMITS.map((rule) => rule.id).sort()).toEqual([...LIMIT_IDS].sort());
    for (const rule of LIMITS)
      expect([rule.id, ...rule.inside, ...rule.outside]).toEqual([rule.id, ...(SETTLED[rule.id] ?? [])]);
  });
  it.each(LIMITS.map((rule) => [rule.id, rule] as const))(
    "%s says its source, its readings and one sentence",
    (_id, rule) => {
      expect(rule.sourceRef).not.toBe("");
      expect(rule.readings.length).toBeGreaterThan(0);
      expect(rule.says.endsWith(".")).toBe(true);
      expect(rule.inside[0]).toBeGreaterThanOrEqual(rule.outside[0]);
      expect(rule.inside[1]).toBeLessThanOrEqual(rule.outside[1]);
    },
  );
});

/** Ends of inside and outside with the outward direction; open ends are no boundary. */
const ends = Object.entries(SETTLED).flatMap(([id, [inLo, inHi, outLo, outHi]]) =>
  (
    [
      [id, "inside", inLo, -1],
      [id, "inside", inHi, 1],
      [id, "outside", outLo, -1],
      [id, "outside", outHi, 1],
    ] as const
  ).filter(([, , at]) => Math.abs(at) < OPEN),
);

describe("at every end", () => {
  it.each(ends)(
    "%s, end of %s at %d: on it the milder band, a hair beyond the next",
    (id, which, at, outward) => {
      const rule = limitRule(id);
      const [lo, hi] = SETTLED[id]?.slice(2) ?? [0, 0];
      const shared =
        which === "inside" && (at === lo || at === hi)
          ? "outside"
          : which === "inside"
            ? "between"
            : "outside";
      const milder = bandOf(rule, at);
      expect(milder).not.toBe("outside");
      expect(bandOf(rule, at + outward * HAIR)).toBe(shared);
      expect(judgeLimit(rule, at, 0, "exchange")).toBe(milder);
      expect(judgeLimit(rule, at + outward * HAIR, 0, "exchange")).toBe(shared);
    },
  );
  it.each(ends.filter(([, , at]) => at !== 0))(
    "%s, end of %s at %d: five per cent further out is judged otherwise",
    (id, _which, at, outward) => {
      const rule = limitRule(id);
      const moved = at + outward * 0.05 * Math.abs(at);
      expect(bandOf(rule, moved)).not.toBe(bandOf(rule, at));
    },
  );
  it("and a limit moved by five per cent, either way, is seen", () => {
    for (const [id, which, at, outward] of ends.filter(([, , end]) => end !== 0)) {
      const rule = limitRule(id);
      for (const by of [0.95, 1.05]) {
        const shift = (pair: readonly [number, number]) =>
          pair.map((end) => (end === at ? end * by : end)) as [number, number];
        const moved = { ...rule, [which]: shift(rule[which]) };
        const probes = [at, at + outward * HAIR, at * 0.97, at * 1.03];
        // Where both ends fall together, an outside moved inward crosses its inside: the shape of the record tells.
        const crossed = moved.inside[0] < moved.outside[0] || moved.inside[1] > moved.outside[1];
        const seen = probes.some((value) => bandOf(moved, value) !== bandOf(rule, value));
        expect(seen || crossed, `${id} ${which} ${at} x ${by}`).toBe(true);
      }
    }
  });
});

describe("by what a wrong answer would cost", () => {
  const face = limitRule("face-front"); // inside -3 to 2, outside beyond -6 and 5
  it("press: inside with half of U to spare, and not a hair less", () => {
    expect(judgeLimit(face, 1, 2, "press")).toBe("inside");
    expect(judgeLimit(face, 1 + 2 * HAIR, 2, "press")).toBe("cannot-tell");
    expect(judgeLimit(face, 1, 2 * 1.05, "press")).toBe("cannot-tell");
    expect(judgeLimit(face, -2, 2, "press")).toBe("inside");
    expect(judgeLimit(face, -2 - 2 * HAIR, 2, "press")).toBe("cannot-tell");
  });
  it("press: between and outside only where they are whole", () => {
    expect(judgeLimit(face, 3.5, 2, "press")).toBe("between");
    expect(judgeLimit(face, 4.1, 2, "press")).toBe("cannot-tell");
    expect(judgeLimit(face, 6.1, 2, "press")).toBe("outside");
    expect(judgeLimit(face, 5.9, 2, "press")).toBe("cannot-tell");
  });
  it("exchange: the best estimate, however wide", () => {
    expect(judgeLimit(face, 2, 50, "exchange")).toBe("inside");
    expect(judgeLimit(face, 2.1, 50, "exchange")).toBe("between");
    expect(judgeLimit(face, 5.1, undefined, "exchange")).toBe("outside");
  });
  it("leave: the best estimate, unless half of U reaches from inside to outside", () => {
    expect(judgeLimit(face, 1, 2, "leave")).toBe("inside");
    expect(judgeLimit(face, 3.5, 3, "leave")).toBe("between");
    expect(judgeLimit(face, 3.5, 3.02, "leave")).toBe("cannot-tell");
    expect(judgeLimit(face, 5.5, 2, "leave")).toBe("outside");
  });
  it("withdraw: the worst that the whole of U reaches", () => {
    const hollow = limitRule("hollow"); // inside to 5, outside over 10
    expect(judgeLimit(hollow, 3, 2, "withdraw")).toBe("inside");
    expect(judgeLimit(hollow, 3, 2 * 1.05, "withdraw")).toBe("between");
    expect(judgeLimit(hollow, 8, 2, "withdraw")).toBe("between");
    expect(judgeLimit(hollow, 8, 2.1, "withdraw")).toBe("outside");
  });
  it("a narrow limit within a wide doubt reaches all three bands", () => {
    expect(judgeLimit(limitRule("spread-wanted"), 0, 30, "leave")).toBe("cannot-tell");
    expect(judgeLimit(limitRule("spread-wanted"), 0, 30, "withdraw")).toBe("outside");
  });
  it("no value, no uncertainty, or neither a number: cannot tell", () => {
    for (const cost of ["press", "exchange", "leave", "withdraw"] as const) {
      expect(judgeLimit(face, undefined, 1, cost)).toBe("cannot-tell");
      expect(judgeLimit(face, Number.NaN, 1, cost)).toBe("cannot-tell");
    }
    expect(judgeLimit(face, 1, undefined, "press")).toBe("cannot-tell");
    expect(judgeLimit(face, 1, Number.NaN, "leave")).toBe("cannot-tell");
    expect(judgeLimit(face, 1, -1, "withdraw")).toBe("cannot-tell");
  });
});
