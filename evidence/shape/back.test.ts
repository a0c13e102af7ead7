import { describe, expect, test } from "vitest";
import type { SampleSurface } from "../../core/src/engine/surface.ts";
import { buildBack, isLacking } from "../../core/src/shape/back.ts";
import type { Back, Deviations } from "../../core/src/shape/model.ts";
import type { SurveyedHorse } from "../../core/src/survey/case.ts";
import { STATIONS } from "../../core/src/terms/places.ts";
import { crossHeight, midHeight, mirrored, modelHorse, STATIONS_X } from "./model-back.ts";

function back(horse: SurveyedHorse): Back {
  const built = buildBack(horse, "cold");
  if (isLacking(built)) throw new Error(built.lacking.join(" "));
  return built;
}

function sampled(surface: SampleSurface, x: number, y: number) {
  const one = () => new Float64Array(1);
  const out = { z: one(), zx: one(), zy: one(), zxx: one(), zxy: one(), zyy: one() };
  surface(1, Float64Array.of(x), Float64Array.of(y), out);
  return { z: out.z[0] ?? Number.NaN, zy: out.zy[0] ?? Number.NaN };
}
const heightOn = (surface: SampleSurface, x: number, y: number) => sampled(surface, x, y).z;

const ACROSS = [-150, -110, -75, -50, -30, 30, 50, 75, 110, 150];
const model = back(modelHorse());
const best = model.surface({});

describe("the back of the reference cases from three traces and a profile", () => {
  test("passes through the traces to 0.5 mm, and between them to 0.6 mm on the bearing", () => {
    for (const x of Object.values(STATIONS_X)) {
      for (const y of ACROSS)
        expect(Math.abs(heightOn(best, x, y) - crossHeight(x, y) - midHeight(x))).toBeLessThan(0.5);
    }
    for (const x of [60, 120, 260, 330]) {
      for (const y of [-130, -60, 60, 130])
        expect(Math.abs(heightOn(best, x, y) - crossHeight(x, y) - midHeight(x))).toBeLessThan(0.6);
    }
  });
  test("its midline is the profile", () => {
    for (const x of [0, 150, 390]) expect(Math.abs(model.midlineMm(x) - midHeight(x))).toBeLessThan(0.2);
  });
  test("leaving the middle trace out would cost millimetres here, and nothing on a back that changes evenly", () => {
    expect(model.loftErrorMm).toBeGreaterThan(4);
    const even = back(modelHorse({ height: (x, y) => -(0.4 + x / 1000) * (Math.sqrt(y * y + 900) - 30) }));
    expect(even.loftErrorMm).toBeLessThan(1.2);
  });
  test("goes down past the traces, on both sides and past both ends", () => {
    for (const x of [-55, 0, 200, 390, 480]) {
      for (const side of [-1, 1]) {
        expect(heightOn(best, x, side * 255)).toBeLessThan(heightOn(best, x, side * 200));
        expect(heightOn(best, x, side * 200)).toBeLessThan(heightOn(best, x, side * 150));
      }
    }
  });
});

describe("deviations of the back", () => {
  const everything = Object.fromEntries(
    model.uncertain.map((one, i) => [one.id, one.kind === "normal" ? one.sd * (i % 2 ? 1 : -0.7) : 0]),
  );
  test("lists each uncertain input once, the curve's shared ones among them", () => {
    const ids = model.uncertain.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toHaveLength(3 * 4 + 2 + 1);
  });
  test("the surface is linear in them", () => {
    const half = Object.fromEntries(Object.entries(everything).map(([id, value]) => [id, value / 2]));
    const [whole, part] = [model.surface(everything), model.surface(half)];
    for (const x of [-30, 100, 390]) {
      for (const y of ACROSS) {
        const [base, one, two] = [best, part, whole].map((surface) => heightOn(surface, x, y));
        expect((two ?? 0) - (base ?? 0)).toBeCloseTo(2 * ((one ?? 0) - (base ?? 0)), 8);
      }
    }
  });
  test.each(STATIONS)("at the %s trace the surface and the section move alike", (station) => {
    const x = STATIONS_X[station];
    const cases: Deviations[] = [
      { [`trace.${station}.cold.widthNear.mm`]: 1 },
      { [`trace.${station}.cold.tiltOff.rad`]: 0.02 },
      { "flexible-curve.width.mm": -2, "flexible-curve.tilt.rad": 0.01 },
    ];
    for (const deviations of cases) {
      const moved = model.surface(deviations);
      for (const side of ["near", "off"] as const) {
        const sign = side === "near" ? -1 : 1;
        const [from, to] = [60, 120];
        const chord = (surface: SampleSurface) =>
          Math.atan((heightOn(surface, x, sign * from) - heightOn(surface, x, sign * to)) / (to - from));
        const onSection =
          model.sections[station].faceAngleRad(side, from, to, deviations) -
          model.sections[station].faceAngleRad(side, from, to, {});
        expect(Math.abs(chord(moved) - chord(best) - onSection)).toBeLessThan(0.0015);
      }
    }
  });
  test("a deviation at the front trace does nothing at the rear one, and the midline stays", () => {
    const moved = model.surface({
      "trace.front.cold.widthNear.mm": 3,
      "trace.front.cold.tiltNear.rad": 0.03,
    });
    for (const y of ACROSS) expect(heightOn(moved, 390, y)).toBeCloseTo(heightOn(best, 390, y), 1);
    for (const x of [0, 100, 200]) expect(heightOn(moved, x, 0)).toBeCloseTo(heightOn(best, x, 0), 6);
    expect(heightOn(moved, 0, -75)).toBeGreaterThan(heightOn(best, 0, -75) + 1);
  });
  test("a hollow deepens the middle and leaves both ends", () => {
    const moved = model.surface({ "profile.hollow.mm": 2 });
    expect(heightOn(moved, 195, 60) - heightOn(best, 195, 60)).toBeCloseTo(-2, 2);
    expect(heightOn(moved, 0, 60) - heightOn(best, 0, 60)).toBeCloseTo(0, 1);
    expect(model.uncertain.find(({ id }) => id === "profile.hollow.mm")).toMatchObject({ mean: 0, sd: 1 });
  });
});

describe("the back known at the places under a panel, for draws", () => {
  const [xs, ys] = [Float64Array.of(-10, 60, 200, 330, 390), Float64Array.of(-110, 40, -60, 90, 130)];
  const everything = Object.fromEntries(
    model.uncertain.map((one, i) => [one.id, one.kind === "normal" ? one.sd * (i % 2 ? 1.5 : -2) : 0]),
  );
  const near = model.surfaceNear(xs, ys);
  const numbers = () => new Float64Array(xs.length);
  const read = (surface: SampleSurface, x: Float64Array, y: Float64Array) => {
    const out = {
      z: numbers(),
      zx: numbers(),
      zy: numbers(),
      zxx: numbers(),
      zxy: numbers(),
      zyy: numbers(),
    };
    surface(x.length, x, y, out);
    return out;
  };
  const moved = (far: number) => [xs.map((x) => x + far), ys.map((y) => y - far)] as const;
  const worst = (far: number, deviations: Deviations) => {
    const [x, y] = moved(far);
    const [there, exact] = [read(near(deviations), x, y), read(model.surface(deviations), x, y)];
    return Math.max(...there.z.map((z, i) => Math.abs(z - (exact.z[i] ?? Number.NaN))));
  };
  test("is the same surface there, in any draw, with its slopes", () => {
    expect(worst(0, everything)).toBeLessThan(1e-9);
    const [there, exact] = [read(near(everything), xs, ys), read(model.surface(everything), xs, ys)];
    for (const part of ["zx", "zy", "zxx", "zxy", "zyy"] as const)
      there[part].forEach((value, i) => {
        expect(value).toBeCloseTo(exact[part][i] ?? Number.NaN, 10);
      });
  });
  test("strays with the cube of the way from it: 0.02 mm at 4 mm, 0.2 mm at 10 mm", () => {
    expect(worst(4, everything)).toBeLessThan(0.02);
    expect(worst(10, everything)).toBeLessThan(0.2);
    expect(worst(10, everything)).toBeGreaterThan(worst(4, everything));
  });
  test("is asked for as many cells as it knows", () => {
    expect(() => read(near({}), Float64Array.of(1), Float64Array.of(1))).toThrow(/cells: 1 where/);
  });
});

describe("sides", () => {
  test("a mirrored horse has a mirrored back", () => {
    const lopsided = modelHorse({ height: (x, y) => crossHeight(x, y > 0 ? y : 1.1 * y), noiseMm: 0.5 });
    const [there, other] = [back(lopsided).surface({}), back(mirrored(lopsided)).surface({})];
    for (const x of [-40, 90, 390])
      for (const y of ACROSS) expect(heightOn(other, x, -y)).toBeCloseTo(heightOn(there, x, y), 6);
  });
});

describe("what is missing is named", () => {
  const horse = modelHorse();
  test("each trace, and the profile", () => {
    const { profile: _, ...rest } = horse;
    const bare: SurveyedHorse = {
      ...rest,
      traces: horse.traces.filter(({ station }) => station === "front"),
    };
    expect(buildBack(bare, "cold")).toEqual({ lacking: ["traces.mid.cold", "traces.rear.cold", "profile"] });
  });
  test("a trace whose place along the back nobody read", () => {
    const traces = horse.traces.map((trace) =>
      trace.station === "mid" ? { ...trace, behindFront: { absent: "not-looked" as const } } : trace,
    );
    expect(buildBack({ ...horse, traces }, "cold")).toEqual({ lacking: ["traces.mid.cold.behindFront"] });
  });
  test("a profile that ends before the rear trace", () => {
    const profile = {
      unit: "mm" as const,
      points: [
        [0, 0],
        [80, -4],
        [160, -6],
      ] as const,
    };
    expect(
      buildBack(
        {
          ...horse,
          profile: { ...profile, points: profile.points.map(([x, z]): [number, number] => [x, z]) },
        },
        "cold",
      ),
    ).toEqual({ lacking: ["profile.points"] });
  });
});
