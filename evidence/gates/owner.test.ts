import { describe, expect, it } from "vitest";
import {
  type OwnerQuestion,
  type OwnerQuestionFile,
  ownerQuestionSchema,
} from "../../core/src/judge/owner/question.ts";
import { answerOwner, type OwnerAnswer } from "../../core/src/judge/owner.ts";
import { NO_ACCIDENT } from "./owner-said.ts";
import { statesOf } from "./states.ts";

const SAYS = ["no", "dont-know", "yes"] as const;
const GOOD: OwnerQuestionFile = {
  arch: "polymer",
  metal: "bar",
  exchange: "plate",
  toldByMaker: "yes",
  underFiveYears: "yes",
  inWarranty: "no",
  makerAllowsOwner: "yes",
  ownedSinceNew: "yes",
  claimOrDispute: "no",
  youOwnIt: "yes",
  otherHorses: "no",
  hoursAWeek: "3-to-8",
  accidents: NO_ACCIDENT,
  clicksOrMoves: "no",
  crackOrWhiteLine: "no",
  strapOrBarWorn: "no",
  uneven: "no",
  sore: "no",
  flinches: "no",
  changed: "no",
  slips: "no",
  growingOrOffWork: "no",
};
const asked = (more: OwnerQuestionFile): OwnerQuestion => ownerQuestionSchema.parse({ ...GOOD, ...more });

/** Everything an owner reads. */
const words = (answer: OwnerAnswer): string =>
  [
    ...answer.stops,
    ...answer.atHome,
    ...answer.see.map((one) => one.why),
    ...answer.because.map((one) => one.says),
  ].join(" ");

const SIGNS = {
  clicksOrMoves: SAYS,
  crackOrWhiteLine: SAYS,
  strapOrBarWorn: SAYS,
  uneven: SAYS,
  sore: SAYS,
  flinches: SAYS,
  changed: SAYS,
  slips: SAYS,
  claimOrDispute: SAYS,
  accident: SAYS,
} as const;

describe("the owner's question", () => {
  it("no set of answers with a stop sign, or a yes to any sign, reaches work at home", () => {
    let count = 0;
    const base = asked({});
    for (const { accident, ...signs } of statesOf(SIGNS)) {
      const answer = answerOwner({ ...base, ...signs, accidents: { ...base.accidents, rolledOn: accident } });
      const isSet = answer.stops.length > 0 || accident === "yes" || Object.values(signs).includes("yes");
      if (isSet && answer.atHome.length > 0) throw new Error(JSON.stringify({ accident, ...signs }));
      count++;
    }
    console.log(`owner: ${count} states of the signs`);
  });
  it("each accident by itself is a stop sign", () => {
    for (const one of Object.keys(asked({}).accidents)) {
      const answer = answerOwner(asked({ accidents: { ...GOOD.accidents, [one]: "yes" } }));
      expect([one, answer.stops.length, answer.atHome]).toEqual([one, 1, []]);
    }
  });
  it("with everything good: home work is looking and placing, and a change names who looks first", () => {
    const answer = answerOwner(asked({}));
    expect(answer.atHome.length).toBeGreaterThan(3);
    expect(answer.atHome.join(" ")).toContain("a fitter first looks");
    expect(answer.see.map((one) => one.who)).toContain("fitter");
  });
  it("inserts as plates: where the maker allows, what a change needs; else the maker", () => {
    const inserts = asked({ exchange: "insert", metal: "none" });
    expect(answerOwner(inserts).atHome.join(" ")).toContain("What a change of plate or inserts needs");
    const refused = answerOwner({ ...inserts, makerAllowsOwner: "no" });
    expect(refused.atHome.join(" ")).not.toContain("What a change");
    expect(refused.see.map((one) => one.who)).toContain("maker");
  });
  it("one answer that only makes a change doubtful takes what a change needs away", () => {
    for (const more of [
      { makerAllowsOwner: "dont-know" },
      { youOwnIt: "no" },
      { toldByMaker: "dont-know", exchange: "unknown" },
    ] as const) {
      expect(answerOwner(asked(more)).atHome.join(" ")).not.toContain("What a change");
    }
  });
  it("knowing nothing at all: look, and see a fitter and the maker", () => {
    const answer = answerOwner(ownerQuestionSchema.parse({}));
    expect([answer.horse, answer.saddle, answer.atHome.length]).toEqual(["not-examined", "not-looked", 1]);
  });
  it("never a figure of press or heat, a promise, or the word to change a plate", () => {
    for (const exchange of ["none", "plate", "insert", "unknown"] as const) {
      for (const arch of ["wood", "polymer", "composite", "unknown"] as const) {
        for (const metal of ["none", "bar", "plates", "unknown"] as const) {
          const said = words(answerOwner(asked({ exchange, arch, metal, growingOrOffWork: "dont-know" })));
          expect(said).not.toMatch(
            /\bkN\b|\bbar of pressure\b|°|\bsafe\b|\bguarantee|change-plate|Change the plate|\d+ ?mm/i,
          );
        }
      }
    }
  });
});

describe("what an owner is told of the rules", () => {
  const told = (more: OwnerQuestionFile): readonly string[] =>
    answerOwner(asked(more)).because.map(({ rule }) => rule);
  it("nothing of what only a bench would still want", () => {
    for (const more of [{}, { underFiveYears: "no" }, { ownedSinceNew: "no" }] as const)
      for (const bench of [
        "saddle-not-bare",
        "saddle-square-not-measured",
        "saddle-past-not-clean",
        "saddle-old",
      ])
        expect(told(more)).not.toContain(bench);
  });
  it("where every accident was denied, what is open is which saddle it is; else the accident that nobody knows of", () => {
    const known = told({});
    expect(known).toContain("saddle-identity");
    expect(known).not.toContain("saddle-incident-not-known");
    const second = told({ ownedSinceNew: "no" });
    expect(second).toContain("saddle-incident-not-known");
    expect(second).not.toContain("saddle-identity");
  });
  it("rules of the horse, of the right and of the saddle, in this order", () => {
    const all = told({ uneven: "yes", claimOrDispute: "yes", crackOrWhiteLine: "yes" });
    const room = (name: string) => all.findIndex((rule) => rule.startsWith(`${name}-`));
    expect(room("horse")).toBeGreaterThanOrEqual(0);
    expect(room("right")).toBeGreaterThan(room("horse"));
    expect(room("saddle")).toBeGreaterThan(room("right"));
  });
  it("both answers in words, and each stop sign as a sentence", () => {
    const answer = answerOwner(asked({ claimOrDispute: "yes", crackOrWhiteLine: "yes" }));
    expect(answer.says.horse.join(" ")).toMatch(/^[A-Z].*\.$/);
    expect(answer.says.saddle.join(" ")).toMatch(/^[A-Z].*\.$/);
    expect(answer.stops.length).toBe(3);
    expect(answerOwner(asked({ claimOrDispute: "yes" })).stops.length).toBe(1);
    for (const stop of answer.stops) expect(stop).toMatch(/^[A-Z].*\.$/);
    expect(answerOwner(asked({})).stops).toEqual([]);
  });
});
