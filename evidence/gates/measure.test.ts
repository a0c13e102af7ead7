import { describe, expect, it } from "vitest";
import { LIMIT_IDS } from "../../core/src/judge/limits/limit-ids.ts";
import { measureLimits } from "../../core/src/judge/measure.ts";
import { type Changes, surveyWith } from "./case.ts";

const limit = (rule: string, at: string, changes: Changes) => {
  const found = measureLimits(surveyWith(changes), 0).find((one) => one.rule === rule && one.at === at);
  if (found === undefined) throw new Error(`${rule} ${at}`);
  return found;
};
/** Half of the central 95 % of a normal law; published: any table of the normal law, 0.975 quantile 1.95996. */
const Z = 1.96;

describe("figures read off the survey", () => {
  it("every rule it gives is a limit, and only the computed ones are missing", () => {
    const given = new Set(measureLimits(surveyWith({}), 0).map((one) => one.rule));
    const missing = LIMIT_IDS.filter((id) => !given.has(id));
    expect(missing).toEqual([
      "face-front",
      "face-rail",
      "saddle-diagonals-bare",
      "horse-sides-angle",
      "horse-sides-width",
      "fill",
      "pressure-head-walk",
      "ridge-touch",
    ]);
  });
  it("one ruler reading: own 1 mm and shared 0.5 mm together", () => {
    const { value, u } = limit("clearance-girthed", "", { "horses[0].girthed.clearanceTop": 47 });
    expect(value).toBe(47);
    expect(u).toBeCloseTo(Z * Math.sqrt(1 + 0.25), 9);
    expect(u).not.toBeCloseTo(1.05 * Z * Math.sqrt(1 + 0.25), 2);
  });
  it("two readings of one ruler: the shared part cancels", () => {
    const { value, u } = limit("girth-groove", "", {
      "horses[0].girthed.strapLine": 100,
      "horses[0].standing.girthGroove": 90,
    });
    expect(value).toBe(10);
    expect(u).toBeCloseTo(Z * Math.sqrt(2), 9);
  });
  it("two instruments: it does not", () => {
    const typed = {
      "saddle.bearing.mid.channel": { read: 74, by: "ruler" },
      "horses[0].standing.ridgeMid": { read: 42, by: "fingers" },
    };
    const { value, u } = limit("channel-over-ridge", "mid", typed);
    expect(value).toBe(32);
    expect(u).toBeCloseTo(Z * Math.sqrt(1 + 25 + 0.25 + 9), 9);
  });
  it("seat slope is to gravity less the ground's slope, in degrees", () => {
    const { value } = limit("seat-slope", "", {
      "horses[0].riderUp.seatSlope": 1.8,
      "visit.groundSlope": -0.5,
    });
    expect(value).toBeCloseTo(2.3, 9);
  });
  it("states are not mixed", () => {
    const changes = {
      "horses[0].girthed.clearanceTop": 50,
      "horses[0].riderUp.clearanceTop": 44,
      "horses[0].halfSeat.clearanceTop": 33,
      "horses[0].laidOn.clearanceTop": 60,
    };
    expect(
      ["girthed", "rider-up", "half-seat"].map((state) => limit(`clearance-${state}`, "", changes).value),
    ).toEqual([50, 44, 33]);
  });
  it("a missing reading is named by its path, and gives no figure", () => {
    expect(limit("rock", "", { "horses[0].girthed.rock": "not-looked" })).toMatchObject({
      value: undefined,
      u: undefined,
      missing: ["horses[0].girthed.rock"],
    });
    expect(limit("seat-slope", "", { "visit.groundSlope": "unknown" }).missing).toEqual([
      "visit.groundSlope",
    ]);
  });
  it("feelers at both tips give the spread against the wanted head: 3 mm square to a 45 degree point is 4.243 across", () => {
    const typed = {
      "horses[0].template.nearTip": -3,
      "horses[0].template.offTip": -3,
      "saddle.head.halfAngleNear": 45,
      "saddle.head.halfAngleOff": 45,
    };
    expect(limit("spread-wanted", "template", typed).value).toBeCloseTo(-6 * Math.SQRT2, 9);
  });
  it("evenness of three feelers is the largest less the smallest", () => {
    const typed = {
      "horses[0].template.nearTop": 1,
      "horses[0].template.nearMiddle": -1,
      "horses[0].template.nearTip": -3,
    };
    expect(limit("feeler", "near", typed).value).toBe(4);
    expect(limit("feeler", "near", { "horses[0].template.nearTop": "not-looked" }).value).toBeUndefined();
  });
});
