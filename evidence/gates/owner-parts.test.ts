import { describe, expect, it } from "vitest";
import type { Findings } from "../../core/src/judge/findings/orders.ts";
import type { Gated } from "../../core/src/judge/gates.ts";
import { offeredWord, ownerQuestionOf, ownerQuestions } from "../../core/src/judge/owner/asks.ts";
import { atHome } from "../../core/src/judge/owner/at-home.ts";
import { ownerFindings } from "../../core/src/judge/owner/findings.ts";
import {
  asSaid,
  type OwnerQuestion,
  type OwnerQuestionFile,
  ownerQuestionSchema,
} from "../../core/src/judge/owner/question.ts";
import { whoFor } from "../../core/src/judge/owner/who-for.ts";
import { ownerHorseSays, ownerSaddleSays } from "../../core/src/judge/owner/words.ts";
import { answerOwner } from "../../core/src/judge/owner.ts";
import { NO_ACCIDENT } from "./owner-said.ts";

/* The owner's question by its parts: what each word becomes, and whom each finding sends an owner to. Written out by hand. */

const read = (more: OwnerQuestionFile = {}): OwnerQuestion => ownerQuestionSchema.parse(more);
const found = (more: OwnerQuestionFile): Findings => ownerFindings(read(more));

describe("what is asked", () => {
  const all = ownerQuestions();
  it("every question once, in the schema's order, each with what stands where nobody knows", () => {
    expect(all).toHaveLength(29);
    expect(all.slice(0, 4).map(({ group, name }) => [group, name])).toEqual([
      ["", "arch"],
      ["", "metal"],
      ["", "exchange"],
      ["", "toldByMaker"],
    ]);
    expect(all.filter(({ group }) => group !== "").map(({ group, name }) => `${group}.${name}`)).toEqual([
      "accidents.rolledOn",
      "accidents.horseFell",
      "accidents.fellOffRack",
      "accidents.drivenOver",
      "accidents.dragged",
      "accidents.dropped",
      "accidents.castInBox",
      "accidents.hungFromBars",
    ]);
    for (const { asks, words, otherwise } of all) {
      expect(asks).toMatch(/\?$/);
      expect(words.length).toBeGreaterThan(2);
      expect(["unknown", "dont-know"]).toContain(otherwise);
    }
    expect(all[0]?.otherwise).toBe("unknown");
    expect(all[3]?.otherwise).toBe("dont-know");
    expect(all[3]?.words).toEqual(["yes", "no", "dont-know"]);
  });
  it("words chosen become a question, each at its own place", () => {
    const said = ownerQuestionOf(({ group, name, otherwise }) =>
      group === "accidents" && name === "dragged" ? "yes" : name === "slips" ? "no" : otherwise,
    );
    expect(said).toEqual(read({ accidents: { dragged: "yes" }, slips: "no" }));
  });
  it("a word is offered as it is said", () => {
    expect(["dont-know", "yes", "under-3", "3-to-8"].map(offeredWord)).toEqual([
      "don't know",
      "yes",
      "under 3",
      "3 to 8",
    ]);
    expect((["yes", "no", "dont-know"] as const).map(asSaid)).toEqual(["yes", "no", "unknown"]);
  });
});

describe("what an owner said, as the gates read it", () => {
  it.each<[OwnerQuestionFile, (at: Findings) => unknown, unknown]>([
    [{ flinches: "dont-know" }, ({ horse }) => [horse.hands, horse.pain], ["not-all-zones", "none"]],
    [{ flinches: "no" }, ({ horse }) => [horse.hands, horse.pain], ["all-zones", "none"]],
    [{ flinches: "yes" }, ({ horse }) => [horse.hands, horse.pain], ["all-zones", "clear-or-several"]],
    [{ uneven: "yes" }, ({ horse }) => [horse.lame, horse.nerves, horse.lesion], ["yes", "yes", "not-known"]],
    [{ uneven: "no", sore: "yes" }, ({ horse }) => [horse.lame, horse.lesion], ["no", "yes"]],
    [{ changed: "yes", slips: "no" }, ({ horse }) => horse.otherSign, "yes"],
    [{ changed: "no", slips: "yes" }, ({ horse }) => horse.otherSign, "yes"],
    [{ changed: "no", slips: "no" }, ({ horse }) => horse.otherSign, "no"],
    [{ growingOrOffWork: "yes" }, ({ horse }) => [horse.workingShape, horse.shape], ["off-work", "settled"]],
    [{ growingOrOffWork: "no" }, ({ horse }) => [horse.workingShape, horse.shape], ["in-work", "settled"]],
    [{}, ({ horse }) => [horse.workingShape, horse.shape], ["not-known", "not-known"]],
    [{ claimOrDispute: "yes", youOwnIt: "yes" }, ({ right }) => [right.claim, right.consent], ["yes", "yes"]],
    [{ claimOrDispute: "no", youOwnIt: "no" }, ({ right }) => [right.claim, right.consent], ["no", "no"]],
    [{}, ({ right }) => [right.claim, right.consent], ["not-known", "not-known"]],
    [{ otherHorses: "no" }, ({ right }) => right.otherHorses, "covered"],
    [{ otherHorses: "yes" }, ({ right }) => right.otherHorses, "not-covered"],
    [{}, ({ right }) => right.otherHorses, "not-covered"],
    [{ underFiveYears: "yes" }, ({ soundness }) => soundness.age, "to-5-years"],
    [{ underFiveYears: "no" }, ({ soundness }) => soundness.age, "older"],
    [{}, ({ soundness }) => soundness.age, "not-known"],
    [{ accidents: NO_ACCIDENT, ownedSinceNew: "yes" }, ({ soundness }) => soundness.trauma, "no"],
    [{ accidents: NO_ACCIDENT, ownedSinceNew: "no" }, ({ soundness }) => soundness.trauma, "not-known"],
    [{ ownedSinceNew: "yes" }, ({ soundness }) => soundness.trauma, "not-known"],
    [{ accidents: { dragged: "yes" } }, ({ soundness }) => soundness.trauma, "yes"],
    [
      { crackOrWhiteLine: "yes", clicksOrMoves: "yes" },
      ({ soundness }) => soundness.riderPart,
      "failed-structure",
    ],
    [{ clicksOrMoves: "yes" }, ({ soundness }) => soundness.riderPart, "failed-renewable"],
    [{ strapOrBarWorn: "yes" }, ({ soundness }) => soundness.riderPart, "failed-renewable"],
    [{ crackOrWhiteLine: "no", clicksOrMoves: "no" }, ({ soundness }) => soundness.riderPart, "not-looked"],
    [
      { crackOrWhiteLine: "no", clicksOrMoves: "no", strapOrBarWorn: "no" },
      ({ soundness }) => soundness.riderPart,
      "cannot-be-seen",
    ],
    [{ inWarranty: "yes", underFiveYears: "no" }, ({ standing }) => standing.warranty, "taken-to-run"],
    [{ inWarranty: "no", underFiveYears: "yes" }, ({ standing }) => standing.warranty, "out"],
    [{ underFiveYears: "no" }, ({ standing }) => standing.warranty, "out"],
    [{ underFiveYears: "yes" }, ({ standing }) => standing.warranty, "taken-to-run"],
    [{}, ({ standing }) => standing.warranty, "taken-to-run"],
    [
      { makerAllowsOwner: "yes" },
      ({ standing }) => [standing.makerPermits, standing.mayExchange],
      ["yes", "may"],
    ],
    [
      { makerAllowsOwner: "no" },
      ({ standing }) => [standing.makerPermits, standing.mayExchange],
      ["no", "may-not"],
    ],
    [{}, ({ standing }) => [standing.makerPermits, standing.mayExchange], ["not-known", "may-not"]],
    [{ toldByMaker: "yes" }, ({ way }) => way.told, "looked-at"],
    [{ exchange: "plate" }, ({ way }) => way.told, "owners-word"],
    [{ toldByMaker: "no" }, ({ way }) => way.told, "not-told"],
  ])("%j", (said, of, becomes) => expect(of(found(said))).toEqual(becomes));

  it("nobody may press or strip, and how it stands square, its past and serial are not known", () => {
    const { standing, soundness } = found({ makerAllowsOwner: "yes", inWarranty: "no" });
    expect([standing.mayAssess, standing.mayPress, standing.mayStrip]).toEqual([
      "not-known",
      "may-not",
      "may-not",
    ]);
    expect([
      soundness.level,
      soundness.otherPart,
      soundness.past,
      soundness.square,
      soundness.serial,
    ]).toEqual(["dressed", "cannot-be-seen", "not-known", "not-measured", "not-known"]);
  });
});

const OPEN: Gated = {
  horse: "no-reason-seen",
  saddle: "sound-dressed",
  flagged: false,
  permitted: ["set-up", "exchange"],
} as unknown as Gated;

describe("what may be done at home", () => {
  const lines = (said: OwnerQuestionFile, gated: Partial<Gated> = {}) =>
    atHome(read(said), { ...OPEN, ...gated }).length;
  it("a look always; placing where horse and saddle leave it open; what a change needs where one can be made", () => {
    expect(lines({})).toBe(4);
    expect(lines({}, { horse: "come-back" })).toBe(4);
    expect(lines({}, { horse: "vet-before-altering" })).toBe(1);
    expect(lines({}, { permitted: [] })).toBe(1);
    expect(lines({}, { permitted: ["exchange"] })).toBe(1);
    expect(lines({ exchange: "plate" })).toBe(5);
    expect(lines({ exchange: "insert" })).toBe(5);
    expect(lines({ exchange: "none" })).toBe(4);
    expect(lines({ exchange: "plate" }, { permitted: ["set-up"] })).toBe(4);
  });
});

describe("whom an owner sees", () => {
  const settled = found({
    arch: "polymer",
    metal: "bar",
    exchange: "plate",
    makerAllowsOwner: "yes",
    inWarranty: "no",
    claimOrDispute: "no",
  });
  const see = (gated: Partial<Gated> = {}, findings: Findings = settled) =>
    whoFor(findings, { ...OPEN, ...gated }).map(({ who, why }) => `${who}: ${why}`);
  const FITTER = "fitter: to look at horse, saddle and rider together before any change";
  const built = (build: Findings["way"]["build"]): Findings => ({
    ...settled,
    way: { ...settled.way, build },
  });

  it("the fitter alone, where all is in order", () => {
    expect(settled.way.build).toBe("plate-exchanged");
    expect(see()).toEqual([FITTER]);
  });
  it("the vet first on a flag, and before riding where that is the answer", () => {
    expect(see({ flagged: true, horse: "vet-before-altering" })[0]).toBe("vet: before any saddle work");
    expect(see({ flagged: true, horse: "vet-before-riding" })[0]).toBe("vet: before the horse is ridden");
  });
  it.each<[Gated["saddle"], string, readonly string[]]>([
    ["out-till-repaired", "saddler: to find and put right what failed", []],
    ["strip-before-riding", "saddler: to strip it and look, before it is ridden", []],
    ["out-for-good", "saddler: to confirm the crack and mark the saddle", []],
  ])("%s: the saddler", (saddle, says, more) => expect(see({ saddle })).toEqual([says, FITTER, ...more]));
  it.each<[Findings["way"]["build"], string]>([
    ["laminated-with-plates", "saddler: a head of this build is altered by a qualified saddler only"],
    ["barred-polymer", "saddler: a head of this build is altered by a qualified saddler only"],
    ["solid-polymer", "maker: a head of this build is moved by the maker's own people only"],
    ["makers-form", "maker: a head of this build is the maker's to touch"],
    ["not-known", "maker: to learn how the head is built"],
  ])("%s", (build, says) => {
    const seen = see({}, built(build));
    expect(seen).toHaveLength(2);
    expect(seen[1]).toContain(says);
    // Of a saddle that is out for good, or part of a claim, nobody touches the head.
    expect(see({ saddle: "out-for-good" }, built(build))).toHaveLength(2);
    const claimed = built(build);
    expect(see({}, { ...claimed, right: { ...claimed.right, claim: "yes" } })).toEqual([FITTER]);
  });
  it("the maker, to learn who may change a plate, and while a warranty may run", () => {
    const asked = { ...settled, standing: { ...settled.standing, makerPermits: "not-known" as const } };
    expect(see({}, asked)).toEqual([FITTER, "maker: to learn who may change its plate or inserts"]);
    const running = { ...settled, standing: { ...settled.standing, warranty: "taken-to-run" as const } };
    expect(see({}, running)).toEqual([
      FITTER,
      "maker: while the warranty runs, or may run, ask before anybody opens the saddle",
    ]);
  });
});

describe("words and reasons", () => {
  it("nothing reads as if somebody had looked; the others are the trade's own words", () => {
    expect(ownerHorseSays("no-reason-seen").join(" ")).toMatch(
      /^No reason told\. .*nobody has touched the horse/,
    );
    expect(ownerHorseSays("come-back").join(" ")).toMatch(/^Come back later\. From your answers/);
    expect(ownerHorseSays("vet-before-riding").join(" ")).toMatch(/vet/i);
    expect(ownerSaddleSays("sound-dressed").join(" ")).toMatch(
      /^Nothing told against it\. Nobody has looked/,
    );
    expect(ownerSaddleSays("strip-before-altering").join(" ")).toMatch(/^Nothing is done to its head/);
    expect(ownerSaddleSays("out-for-good").join(" ").length).toBeGreaterThan(20);
  });
  it("a past that is open for its serial alone is told as the serial; what only a bench wants is left out", () => {
    const rules = (more: OwnerQuestionFile) => answerOwner(read(more)).because.map(({ rule }) => rule);
    const clean = rules({ accidents: NO_ACCIDENT, ownedSinceNew: "yes" });
    expect(clean).not.toContain("saddle-incident-not-known");
    expect(clean).toContain("saddle-identity");
    expect(rules({})).toContain("saddle-incident-not-known");
    for (const rule of rules({ underFiveYears: "no" }))
      expect([
        "saddle-not-bare",
        "saddle-square-not-measured",
        "saddle-past-not-clean",
        "saddle-old",
      ]).not.toContain(rule);
  });
});
