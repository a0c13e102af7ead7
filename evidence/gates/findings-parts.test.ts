import { describe, expect, it } from "vitest";
import { U_PER_SD } from "../../core/src/engine/central.ts";
import { past } from "../../core/src/judge/findings/past.ts";
import { rightFindings } from "../../core/src/judge/findings/right.ts";
import { soundnessFindings } from "../../core/src/judge/findings/soundness.ts";
import { single, unevenness } from "../../core/src/judge/measure/figure.ts";
import { templateSpread } from "../../core/src/judge/measure/template.ts";
import { isRead, type Measured } from "../../core/src/survey/reading.ts";
import { type Changes, full, surveyWith } from "./case.ts";

/* Parts of the findings that the long tests pass through and do not tell apart. */

const [firstHorse] = full.horses;

describe("another horse that wears the saddle", () => {
  const coveredWith = (traces: (all: readonly { readonly station: string }[]) => unknown): string => {
    const other = structuredClone(firstHorse) as { name: string; traces: readonly { station: string }[] };
    const horse = { ...other, name: "The other one", traces: traces(other.traces) };
    return rightFindings(surveyWith({ horses: [firstHorse, horse] }), 0).otherHorses;
  };
  it("is covered by its own front trace, and by no other trace", () => {
    expect(coveredWith((all) => all)).toBe("covered");
    expect(coveredWith((all) => all.filter(({ station }) => station === "front"))).toBe("covered");
    expect(coveredWith((all) => all.filter(({ station }) => station !== "front"))).toBe("not-covered");
    expect(coveredWith(() => [])).toBe("not-covered");
  });
  it("its own trace is not asked of the horse itself", () => {
    const alone = structuredClone(firstHorse) as { traces: unknown };
    const survey = surveyWith({ horses: [{ ...alone, traces: [] }] });
    expect(rightFindings(survey, 0).otherHorses).toBe("covered");
  });
});

describe("what was done to the head before", () => {
  const pastOf = (changes: Changes) => past(surveyWith(changes).saddle);
  const done = (way: string, knownHand = "yes") => ({
    date: "2030-10",
    change: "6 mm",
    by: "Odile Ferrant",
    knownHand,
    way,
  });
  it.each([
    ["nothing, and it is said so", "none", [], "clean"],
    ["it is said that nothing was, and something is listed", "none", [done("press")], "not-known"],
    ["a list is told, and is empty", "listed", [], "not-known"],
    ["one press by a known hand", "listed", [done("press")], "clean"],
    ["one press by a hand that nobody knows", "listed", [done("press", "no")], "not-known"],
    ["in a way that nobody knows, by a known hand", "listed", [done("unknown")], "not-known"],
    ["an exchange by whomever", "listed", [done("exchange", "no")], "clean"],
    ["two presses", "listed", [done("press"), done("press")], "several-known"],
    ["heat", "listed", [done("heat")], "repaired-or-heated"],
  ])("%s", (_says, alterationsKnown, alterations, is) =>
    expect(
      pastOf({ "saddle.past.alterationsKnown": alterationsKnown, "saddle.past.alterations": alterations }),
    ).toBe(is),
  );
});

describe("a name of blanks is no name", () => {
  it("of who saw it bare", () => {
    const seen = (seenBy: string) =>
      soundnessFindings(surveyWith({ "saddle.looked.level": "bare", "saddle.looked.seenBy": seenBy }).saddle)
        .level;
    expect([seen("Odile Ferrant"), seen("   ")]).toEqual(["bare", "dressed"]);
  });
  it("of the saddle's serial", () => {
    const serial = (read: string) =>
      soundnessFindings(
        surveyWith({ "saddle.standing.serial": read, "saddle.standing.serialIsOfRecord": "yes" }).saddle,
      ).serial;
    expect([serial("A 17"), serial("  ")]).toEqual(["of-record", "not-known"]);
  });
});

const of = (value: number, own: number, shared: number, more: Partial<Measured> = {}): Measured => {
  const { template } = surveyWith({}).horses[0] ?? { template: undefined };
  const read = template?.nearTip;
  if (!read || !isRead(read)) throw new Error("the fixture has a feeler");
  return { ...read, value, own, shared, ...more } as Measured;
};

describe("figures of readings", () => {
  it("an angle is told in degrees with its doubt in degrees: one radian is 57.2958", () => {
    const line = single(
      "saddle-half-angles",
      { at: "" },
      { path: "x", measured: of(1, 0.03, 0.04, { kind: "angle" } as object) },
    );
    expect(line.value).toBeCloseTo(57.2958, 3);
    expect(line.u).toBeCloseTo(U_PER_SD * 0.05 * 57.2958, 3);
  });
  it("the unevenness of several bears the largest of their own doubts, and of none it is lacking", () => {
    const all = [of(3, 0.5, 0), of(7, 1.5, 0), of(5, 1, 0)].map((measured, at) => ({
      path: `p${at}`,
      measured,
    }));
    const line = unevenness("clearance-side", { at: "" }, all);
    expect(line.value).toBe(4);
    expect((line.u ?? 0) / (unevenness("clearance-side", { at: "" }, all.slice(0, 1)).u ?? 1)).toBeCloseTo(
      3,
      9,
    );
    expect(unevenness("clearance-side", { at: "" }, []).value).toBeUndefined();
  });
  it("a template's spread: each feeler over the cosine of its half, what they share added and not squared apart", () => {
    const survey = surveyWith({});
    const [horse] = survey.horses;
    if (!horse) throw new Error("the horse is there");
    const { saddle } = survey;
    const halves = { halfAngleNear: of(Math.PI / 3, 0, 0), halfAngleOff: of(0, 0, 0) };
    const spread = (nearShared: number, offShared: number) =>
      templateSpread(
        { ...saddle, head: { ...saddle.head, ...halves } },
        {
          ...horse,
          template: { ...horse.template, nearTip: of(-3, 0.4, nearShared), offTip: of(-2, 0.3, offShared) },
        },
        "horses[0]",
      );
    // cos 60 degrees is a half.
    expect(spread(0, 0).value).toBeCloseTo(-3 / 0.5 - 2, 9);
    const sdOf = ({ u }: { readonly u: number | undefined }) => ((u ?? 0) / U_PER_SD) ** 2;
    expect(sdOf(spread(0.2, 0.5)) - sdOf(spread(0, 0))).toBeCloseTo((0.2 / 0.5 + 0.5) ** 2, 9);
  });
});
