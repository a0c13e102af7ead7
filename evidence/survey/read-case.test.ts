import { describe, expect, it } from "vitest";
import { CASE_VERSION } from "../../core/src/survey/case.ts";
import { faultInChain, MIGRATIONS } from "../../core/src/survey/migrations.ts";
import { readCase } from "../../core/src/survey/read-case.ts";
import {
  type Breakable,
  breakable,
  changed,
  type Fixture,
  fixtureText,
  problemsIn,
  surveyOf,
} from "./cases.ts";

/** The one problem of a case broken in one way. */
function only(change: (file: Breakable) => void) {
  const problems = problemsIn(changed(change));
  expect(problems).toHaveLength(1);
  return problems[0] ?? { where: "", read: "", allowed: "" };
}

describe("a case", () => {
  it.each([
    "minimal",
    "full",
    "inches",
    "version-1",
    "version-1-in-version-3",
    "version-2",
    "version-2-in-version-3",
  ] as Fixture[])("%s is read, without a flag", (name) => {
    const read = readCase(fixtureText(name));
    expect(problemsIn(read)).toEqual([]);
    expect(read.ok && read.flags).toEqual([]);
  });

  it("in inches says the same as the one in millimetres, within the sixteenth it was read to", () => {
    const [inches, metric] = [
      surveyOf(readCase(fixtureText("inches"))),
      surveyOf(readCase(fixtureText("full"))),
    ];
    const [a, b] = [inches.horses[0]?.traces[0]?.points ?? [], metric.horses[0]?.traces[0]?.points ?? []];
    expect(a.length).toBe(b.length);
    a.forEach((point, at) => {
      expect(Math.abs(point[0] - (b[at]?.[0] ?? 0))).toBeLessThan(0.13);
      expect(Math.abs(point[1] - (b[at]?.[1] ?? 0))).toBeLessThan(0.13);
    });
  });

  it("has each of its problems named at once", () => {
    const problems = problemsIn(
      changed((file) => {
        delete file.title;
        file.visit.date = "2031-02-30";
        file.saddle.head.spredTips = 5;
        file.saddle.head.depth = "12 in";
        file.horses[0].hands.loin.near.grade = 7;
        file.horses[0].traces[1].points[3] = [1];
        file.horses[0].traces[2].points[4] = [0, "x"];
      }),
    );
    expect(problems.map(({ where }) => where.split(" ")[0]).sort()).toEqual(
      [
        "horses[0].hands.loin.near.grade",
        "horses[0].traces[1].points[3]",
        "horses[0].traces[2].points[4][1]",
        "saddle.head",
        "saddle.head.depth",
        "title",
        "visit.date",
      ].sort(),
    );
  });
});

describe("what is allowed is said in the unit typed", () => {
  it.each([
    ["12 in", "1.58 to 7.08 in"],
    ["30 cm", "4 to 18 cm"],
    ["300 mm", "40 to 180 mm"],
    [300, "40 to 180 mm"],
    [8, '40 to 180 mm; if you mean 8 cm, write "8 cm"'],
    [4, '40 to 180 mm; if you mean 4 cm, write "4 cm"; if you mean 4 in, write "4 in"'],
  ])("depth %s: %s", (typed, allowed) => {
    expect(only((file) => (file.saddle.head.depth = typed)).allowed).toBe(allowed);
  });

  it("a finger is no unit", () => {
    expect(only((file) => (file.horses[0].girthed.clearanceTop = "3 fingers")).allowed).toContain(
      '"by": "fingers"',
    );
  });

  it("a doubtful comma is asked about", () => {
    expect(only((file) => (file.saddle.head.depth = "1,425 mm"))).toMatchObject({
      read: '"1,425 mm"',
      allowed: expect.stringContaining("is that 1.425 or 1425?"),
    });
  });

  it("a pair of scales measures no length", () => {
    expect(only((file) => (file.saddle.head.depth = { read: 95, by: "scale" })).allowed).toContain("ruler");
  });
});

describe("names", () => {
  it("mistyped are named with the nearest known one", () => {
    expect(only((file) => (file.saddle.head.spredTips = 205))).toEqual({
      where: "saddle.head (head and points)",
      read: 'the unknown name "spredTips"',
      allowed: 'the name "spreadTips" (did you mean that?)',
    });
  });

  it("twice in one group are refused: the second would silently replace the first", () => {
    const text = fixtureText("minimal").replace('"title"', '"title": "one",\n  "title"');
    expect(problemsIn(readCase(text))).toEqual([
      {
        where: "line 5, column 3",
        read: 'the name "title" a second time in one group',
        allowed: "each name once in a group",
      },
    ]);
  });

  it("of two horses are not the same, and no trace counts twice", () => {
    expect(only((file) => file.horses.push({ name: "Bramble" })).where).toBe(
      "horses[1].name (name of the horse, horse 2)",
    );
    expect(
      only((file) => file.horses[0].traces.push({ ...file.horses[0].traces[0], station: "rear" })).read,
    ).toContain("a second time");
  });
});

describe("no case at all", () => {
  it.each([
    ["", "line 1, column 1"],
    ["{", "line 1, column 2"],
    ['{\n  "a": 1,\n}', "line 3, column 1"],
    ['{"a": NaN}', "line 1, column 7"],
    ['{"a": 01}', "line 1, column 7"],
    ['{"a": "b\n"}', "line 1, column 7"],
    ['{"a": "\\x"}', "line 1, column 7"],
    ["{} {}", "line 1, column 4"],
    ['{"__proto__": {}}', "line 1, column 2"],
    ["[".repeat(1_000_000), "line 1, column 34"],
  ])("%#", (text, where) => {
    expect(problemsIn(readCase(text))).toMatchObject([{ where }]);
  });

  it("reads JSON as JSON.parse does", () => {
    for (const name of ["full", "inches"] as Fixture[]) {
      const read = readCase(`\uFEFF${fixtureText(name)}`);
      expect(read.ok && read.file).toEqual(breakable(name));
    }
  });

  it("too large is refused before it is looked at", () => {
    for (const text of ["x".repeat(10_000_000), `"${"€".repeat(700_000)}"`]) {
      expect(problemsIn(readCase(text))).toMatchObject([{ allowed: "at most 2 MB" }]);
    }
  });

  it("of another format, or of none", () => {
    for (const text of ["null", "[]", "3", '{"format":"other","version":2}', "{}"]) {
      expect(problemsIn(readCase(text))).toHaveLength(1);
    }
  });

  it("lists a hundred problems and counts the rest", () => {
    const problems = problemsIn(
      changed((file) => (file.horses[0].traces[0].points = Array.from({ length: 400 }, () => ["x", "y"]))),
    );
    expect(problems).toHaveLength(101);
    expect(problems[100]?.read).toBe("and 700 more");
  });
});

describe("versions", () => {
  it("a newer one is refused politely and says so", () => {
    const problems = problemsIn(changed((file) => (file.version = CASE_VERSION + 1)));
    expect(problems).toMatchObject([{ where: "version", read: "4: written by a newer Treewright" }]);
  });

  it.each([0, -1, 1.5, "2", null, 1e300])("%s is no version", (version) => {
    expect(problemsIn(changed((file) => (file.version = version)))).toMatchObject([{ where: "version" }]);
  });

  it.each(["version-1", "version-2"] as const)("%s reads like its twin in version 3", (version) => {
    const [old, twin] = [readCase(fixtureText(version)), readCase(fixtureText(`${version}-in-version-3`))];
    expect(surveyOf(old)).toEqual(surveyOf(twin));
    expect(old.ok && old.file.version).toBe(CASE_VERSION);
  });

  it("nothing of an old file is lost: springs are told by themselves, all else stands as typed", () => {
    const typed = breakable("version-2");
    const read = readCase(fixtureText("version-2"));
    const kept: Breakable = read.ok ? read.file : {};
    const { metal, ...build } = kept.saddle.build;
    expect(metal).toBe("unknown");
    expect(build).toEqual({
      arch: "wood",
      springs: "along-rails",
      exchange: "none",
      movedBy: "press",
      toldBy: "seen-bare",
    });
    const { build: before, ...oldSaddle } = typed.saddle;
    const { build: after, ...newSaddle } = kept.saddle;
    expect(before.metal).toBe("springs");
    expect(newSaddle).toEqual(oldSaddle);
    expect({ ...kept, version: 2, saddle: typed.saddle }).toEqual(typed);
    expect(surveyOf(read).saddle.build).toEqual(after && { ...surveyOf(read).saddle.build, ...after });
  });

  it("an old file whose head has other metal is only raised to the new version", () => {
    for (const metal of ["none", "bar", "plates", "unknown"]) {
      const read = changed((file) => {
        file.saddle.build.metal = metal;
      }, "version-2");
      expect(surveyOf(read).saddle.build).toMatchObject({ metal, springs: "unknown" });
    }
    const inserts = changed((file) => {
      file.saddle.build.exchange = "insert";
      file.saddle.looked = { plateHome: "doubtful", squeeze: "sound" };
    }, "version-2");
    expect(surveyOf(inserts).saddle.inserts.lockHome).toBe("doubtful");
    expect(surveyOf(inserts).saddle.looked).toMatchObject({ plateHome: "not-looked", squeeze: "sound" });
    const plate = changed((file) => {
      file.saddle.build.exchange = "plate";
      file.saddle.looked = { plateHome: "doubtful" };
    }, "version-2");
    expect(surveyOf(plate).saddle.looked.plateHome).toBe("doubtful");
    const broken = changed((file) => {
      file.saddle = "none";
    }, "version-2");
    expect(problemsIn(broken)[0]?.where).toContain("saddle");
  });

  it("a problem in an old file says that its place is that of the new version", () => {
    const problems = problemsIn(changed((file) => (file.horse.age = 400), "version-1"));
    expect(problems[0]?.where).toBe(
      "horses[0].age (age of the horse), its place in version 3 (the file is of version 1)",
    );
  });

  it("the chain of changes has no gap", () => {
    expect(faultInChain(MIGRATIONS, CASE_VERSION)).toBeUndefined();
    const step = (from: number, to: number) => ({ from, to, change: (file: object) => ({ ...file }) });
    expect(faultInChain([step(1, 2), step(3, 4)], 4)).toContain("does not follow");
    expect(faultInChain([step(1, 3)], 3)).toContain("does not follow");
    expect(faultInChain([step(1, 2)], 3)).toContain("ends at 2");
  });
});
