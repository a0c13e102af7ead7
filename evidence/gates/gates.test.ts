import { describe, expect, it } from "vitest";
import {
  BUILDS,
  HORSE_ORDERS,
  RIGHT_ORDERS,
  SOUNDNESS_ORDERS,
  STANDING_ORDERS,
  WAY_ORDERS,
} from "../../core/src/judge/findings/orders.ts";
import { pass } from "../../core/src/judge/gates/gate.ts";
import { HORSE_BARS, horseAnswer } from "../../core/src/judge/gates/horse.ts";
import { RIGHT_BARS } from "../../core/src/judge/gates/right.ts";
import { SOUNDNESS_BARS, saddleAnswer } from "../../core/src/judge/gates/soundness.ts";
import { STANDING_BARS } from "../../core/src/judge/gates/standing.ts";
import { WAY_BARS } from "../../core/src/judge/gates/way.ts";
import { RULES } from "../../core/src/judge/rules/all.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../../core/src/terms/answers.ts";
import { countOf, statesOf, widened } from "./states.ts";

const horse = (f: Parameters<typeof horseAnswer>[0]) => pass(HORSE_BARS, f).permits;
const soundness = (f: Parameters<typeof saddleAnswer>[0]) => pass(SOUNDNESS_BARS, f).permits;

describe("along every printed order the permitted acts never grow, all states of every gate", () => {
  it("horse", () => {
    console.log(`horse: ${countOf(HORSE_ORDERS)} states`);
    expect(widened(HORSE_ORDERS, horse)).toEqual([]);
  });
  it("identity and right", () => {
    console.log(`right: ${countOf(RIGHT_ORDERS)} states`);
    expect(widened(RIGHT_ORDERS, (f) => pass(RIGHT_BARS, f).permits)).toEqual([]);
  });
  it("soundness", () => {
    console.log(`soundness: ${countOf(SOUNDNESS_ORDERS)} states`);
    expect(widened(SOUNDNESS_ORDERS, soundness)).toEqual([]);
  });
  it("standing", () => {
    console.log(`standing: ${countOf(STANDING_ORDERS)} states`);
    expect(widened(STANDING_ORDERS, (f) => pass(STANDING_BARS, f).permits)).toEqual([]);
  });
  it("way: along the telling, and from every known build to one that is not known", () => {
    console.log(`way: ${BUILDS.length * countOf(WAY_ORDERS)} states`);
    for (const build of BUILDS) {
      const permits = (f: Omit<Parameters<(typeof WAY_BARS)[number]["when"]>[0], "build">) =>
        pass(WAY_BARS, { ...f, build }).permits;
      expect(widened(WAY_ORDERS, permits)).toEqual([]);
      expect(
        widened({ ...WAY_ORDERS, build: [build, "not-known"] as const }, (f) => pass(WAY_BARS, f).permits),
      ).toEqual([]);
    }
  });
});

describe("what the check can see", () => {
  it("a gate that lets a lame horse be ridden is caught", () => {
    const broken = HORSE_BARS.filter((bar) => bar.rule !== "horse-lame");
    expect(widened(HORSE_ORDERS, (f) => pass(broken, f).permits).length).toBeGreaterThan(0);
  });
  it("a gate that opens the bare press on a part that cannot be seen is caught", () => {
    const broken = SOUNDNESS_BARS.map((bar) =>
      bar.rule === "saddle-not-bare"
        ? { ...bar, when: (f: Parameters<typeof bar.when>[0]) => f.riderPart === "sound" && bar.when(f) }
        : bar,
    );
    expect(widened(SOUNDNESS_ORDERS, (f) => pass(broken, f).permits).length).toBeGreaterThan(0);
  });
  it.each(["level", "riderPart", "otherPart", "trauma", "past", "age", "square", "serial"] as const)(
    "soundness depends on %s: read as its mildest it would open more",
    (input) => {
      let opened = 0;
      for (const f of statesOf(SOUNDNESS_ORDERS)) {
        if (soundness({ ...f, [input]: SOUNDNESS_ORDERS[input][0] }).length > soundness(f).length) opened++;
      }
      expect(opened).toBeGreaterThan(0);
    },
  );
});

describe("reach and shape", () => {
  it("every horse answer and every saddle answer is reached, and no other", () => {
    const horses = new Set([...statesOf(HORSE_ORDERS)].map(horseAnswer));
    const saddles = new Set([...statesOf(SOUNDNESS_ORDERS)].map(saddleAnswer));
    expect([...horses].sort()).toEqual([...HORSE_ANSWERS].sort());
    expect([...saddles].sort()).toEqual([...SADDLE_ANSWERS].sort());
  });
  it("no gate has more than eight inputs", () => {
    for (const orders of [HORSE_ORDERS, RIGHT_ORDERS, SOUNDNESS_ORDERS, STANDING_ORDERS, WAY_ORDERS]) {
      expect(Object.keys(orders).length).toBeLessThanOrEqual(8);
    }
  });
  it("every bar names a rule that is there and an answer that is there", () => {
    for (const bar of [...HORSE_BARS, ...RIGHT_BARS, ...SOUNDNESS_BARS, ...STANDING_BARS, ...WAY_BARS]) {
      expect(RULES.map((rule) => rule.id)).toContain(bar.rule);
      expect(WORK_ANSWERS).toContain(bar.leadsTo);
    }
  });
});

describe("answers and acts agree, in all states", () => {
  it("vet before riding, not examined by hand, or out of use: nobody rides", () => {
    for (const f of statesOf(HORSE_ORDERS)) {
      const acts = horse(f);
      const answer = horseAnswer(f);
      if (answer === "vet-before-riding") expect(acts).toEqual(["strip"]);
      if (answer === "no-reason-seen")
        expect(acts).toEqual(expect.arrayContaining(["ride", "set-up", "flock", "exchange", "strip"]));
      if (answer !== "no-reason-seen" && answer !== "come-back" && acts.includes("flock"))
        throw new Error(JSON.stringify(f));
    }
    for (const f of statesOf(SOUNDNESS_ORDERS)) {
      const acts = soundness(f);
      const answer = saddleAnswer(f);
      if (answer === "out-for-good") expect(acts).toEqual([]);
      if (["out-till-repaired", "strip-before-riding", "not-looked"].includes(answer))
        expect(acts).toEqual(["strip"]);
      if (acts.includes("press-dressed") && !answer.startsWith("sound")) throw new Error(JSON.stringify(f));
      if (acts.includes("press-bare") && answer !== "sound-bare") throw new Error(JSON.stringify(f));
    }
  });
});
