import { describe, expect, test } from "vitest";
import { type HeadKind, headKind } from "../../core/src/reach/build.ts";
import { sameMounting } from "../../core/src/reach/mounting.ts";
import { settingsOf } from "../../core/src/reach/settings.ts";
import { caseSchema, type Plate } from "../../core/src/survey/case.ts";
import { mountingSchema } from "../../core/src/survey/saddle-plates.ts";
import { ARCH, EXCHANGE, METAL, MOVED_BY, SPECIAL_FORM, TOLD_BY } from "../../core/src/terms/construction.ts";
import { HEAD } from "../shape/model-saddle.ts";

type Build = Parameters<typeof headKind>[0];

const builds: readonly Build[] = ARCH.flatMap((arch) =>
  METAL.flatMap((metal) =>
    EXCHANGE.flatMap((exchange) =>
      MOVED_BY.flatMap((movedBy) =>
        SPECIAL_FORM.flatMap((form) =>
          TOLD_BY.map((toldBy): Build => {
            return { arch, metal, exchange, movedBy, form, toldBy };
          }),
        ),
      ),
    ),
  ),
);
/** Kinds of a head that somebody may move outside the maker's house. */
const OPENS: readonly HeadKind[] = [
  "plate-exchanged",
  "insert-exchanged",
  "laminated-with-plates",
  "barred-polymer",
];
const opens = (build: Build) => OPENS.includes(headKind(build));
const open = builds.filter(opens);
/** The same build with one property told, in every way it could be. */
function told(build: Build): readonly Build[] {
  return [
    ...ARCH.map((arch) => (build.arch === "unknown" ? { ...build, arch } : build)),
    ...METAL.map((metal) => (build.metal === "unknown" ? { ...build, metal } : build)),
    ...EXCHANGE.map((exchange) => (build.exchange === "unknown" ? { ...build, exchange } : build)),
    ...SPECIAL_FORM.map((form) => (build.form === "unknown" ? { ...build, form } : build)),
  ];
}

describe(`the kind of a head, over all ${builds.length} builds`, () => {
  test("every build has one, and each kind is some build's", () => {
    const counts = new Map<HeadKind, number>();
    for (const build of builds) counts.set(headKind(build), (counts.get(headKind(build)) ?? 0) + 1);
    console.log(`builds by kind: ${JSON.stringify(Object.fromEntries(counts))}`);
    expect([...counts.keys()].sort()).toEqual([
      "barred-polymer",
      "insert-exchanged",
      "laminated-with-plates",
      "makers-form",
      "not-known",
      "plate-exchanged",
      "solid-polymer",
    ]);
  });
  test("a kind that opens anything needs arch, exchange and form told, and somebody who told", () => {
    expect(open.length).toBeGreaterThan(100);
    for (const build of open) {
      const { arch, exchange, form, toldBy } = build;
      expect(["wood", "polymer"]).toContain(arch);
      expect([form, exchange === "unknown", toldBy === "not-told"]).toEqual(["none", false, false]);
    }
  });
  test("what is unknown opens nothing that one way of telling it would shut", () => {
    for (const build of open)
      for (const other of told(build)) expect([other, headKind(other)]).toEqual([other, headKind(build)]);
  });
  // The others tell how such a head moves; what is said of its moving can only shut.
  test("what moves it, left unsaid, opens what the way that goes with the build opens, and nothing else", () => {
    for (const build of open.filter(({ movedBy }) => movedBy === "unknown")) {
      const movedBy = build.exchange === "none" ? "press" : "exchange";
      expect(headKind({ ...build, movedBy })).toBe(headKind(build));
    }
  });
  test("only wood with plates and nothing to exchange is pressed here; heat opens nothing", () => {
    for (const build of builds.filter((one) => headKind(one) === "laminated-with-plates"))
      expect([build.arch, build.metal, build.exchange]).toEqual(["wood", "plates", "none"]);
    const hot = open.filter(({ movedBy }) => movedBy === "heat");
    expect(hot.every((build) => headKind(build) === "barred-polymer")).toBe(true);
  });
  test("whatever is told in full and without contradiction has somebody who can help", () => {
    const asks = builds.filter((build) => headKind(build) === "not-known");
    for (const { arch, metal, exchange, movedBy, form, toldBy } of asks) {
      const untold =
        [arch, metal, exchange, form].some((word) => word === "unknown") || toldBy === "not-told";
      const torn =
        (exchange === "none" ? movedBy === "exchange" : movedBy === "press" || movedBy === "heat") ||
        (arch === "wood" && movedBy === "heat") ||
        (arch === "polymer" && metal === "none" && movedBy === "press");
      expect([arch, metal, exchange, movedBy, form, toldBy, untold || torn]).toContain(true);
    }
  });
  test("a form or stuff that is the maker's is never asked about further", () => {
    for (const build of builds) {
      const special = build.arch === "composite" || !["none", "unknown"].includes(build.form);
      if (special) expect([build, headKind(build)]).toEqual([build, "makers-form"]);
    }
  });
});

const mounting = (more: object): Plate["mounting"] =>
  mountingSchema.parse({ holes: 3, pitch: 20, edge: "square", thickness: 3, ...more });

/** Same within 1 mm of pitch and 0.5 mm of thickness (common practice, no source). */
describe("two mountings", () => {
  const match = (more: object) => sameMounting(mounting({}), mounting(more));
  test.each([
    [{}, "same"],
    [{ pitch: 21 }, "same"],
    [{ pitch: 19 }, "same"],
    [{ pitch: 21.04 }, "differs"],
    [{ pitch: 20.94 }, "same"],
    [{ pitch: 18.9 }, "differs"],
    [{ thickness: 3.5 }, "same"],
    [{ thickness: 2.5 }, "same"],
    [{ thickness: 3.53 }, "differs"],
    [{ thickness: 2.47 }, "differs"],
    [{ holes: 4 }, "differs"],
    [{ edge: "keyed" }, "differs"],
    [{ edge: "unknown" }, "cannot-tell"],
    [{ pitch: "not-looked" }, "cannot-tell"],
    [{ thickness: "cannot-be-seen", holes: 4 }, "differs"],
  ] as const)("%j: %s", (more, expected) => {
    expect(match(more)).toBe(expected);
    expect(sameMounting(mounting(more), mounting({}))).toBe(expected);
  });
});

describe("a plate at hand", () => {
  const plateSetting = (plate: object, saddle: object = {}) => {
    const survey = caseSchema.parse({
      format: "treewright-case",
      version: 3,
      title: "invented",
      visit: { date: "2031-04-02" },
      saddle: {
        name: "invented",
        head: { ...HEAD, halfAngleNear: 45, halfAngleOff: 43 },
        build: {
          arch: "polymer",
          metal: "none",
          exchange: "plate",
          movedBy: "exchange",
          toldBy: "seen-through-access",
        },
        mounting: { holes: 3, pitch: 20, edge: "square", thickness: 3 },
        ...saddle,
      },
      horses: [{ name: "invented" }],
      platesAtHand: [
        {
          spreadTips: 215,
          halfAngle: 46,
          asFitted: "yes",
          sound: "sound",
          mounting: { holes: 3, pitch: 20, edge: "square", thickness: 3 },
          ...plate,
        },
      ],
    });
    return settingsOf(survey, 205).find(({ way }) => way === "exchange");
  };
  test("turns each half by its own angle less the mean of both of today's", () => {
    expect(plateSetting({})).toMatchObject({ changeMm: 10, shutBy: [] });
    expect(plateSetting({})?.halfTurnRad).toBeCloseTo((2 * Math.PI) / 180, 12);
    expect(plateSetting({ halfAngle: "not-looked" })?.halfTurnRad).toBeUndefined();
  });
  test.each([
    [{ sound: "not-looked" }, ["plate-not-seen-sound"]],
    [{ sound: "failed" }, ["plate-not-seen-sound"]],
    [{ mounting: { holes: 4, pitch: 20, edge: "square", thickness: 3 } }, ["mounting-differs"]],
    [{ mounting: {} }, ["mounting-not-read"]],
    [{ sound: "doubtful", mounting: {} }, ["mounting-not-read", "plate-not-seen-sound"]],
  ])("%j is shut by %j", (plate, shutBy) => expect(plateSetting(plate)?.shutBy).toEqual(shutBy));
  test("its label and maker are never looked at", () => {
    expect(plateSetting({ label: "wide", maker: "another" })).toEqual(plateSetting({}));
  });
  test("without a spread it is no setting", () => {
    expect(plateSetting({ spreadTips: "not-looked" })).toBeUndefined();
  });
});
