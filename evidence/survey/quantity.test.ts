import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  parseQuantity,
  type QuantityKind,
  readNumber,
  show,
  UNITS,
  type Unit,
  unitCalled,
} from "../../core/src/engine/quantity/index.ts";
import { propertySeed } from "../number/seed.ts";

const RUNS = { seed: propertySeed("typed quantities"), numRuns: 2000 };
const unit = (name: string, kind: QuantityKind): Unit => {
  const found = unitCalled(name, kind);
  if (!found) throw new Error(`no unit ${name}`);
  return found;
};
const value = (text: string | number, kind: QuantityKind): number => {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.asks}`);
  return parsed.value;
};

describe("what a hand types", () => {
  it.each([
    [205, "length", 205],
    ["205", "length", 205],
    ["205 mm", "length", 205],
    ["205mm", "length", 205],
    ["20.5 cm", "length", 205],
    ["8,5 cm", "length", 85],
    ["8 in", "length", 203.2],
    ["8 1/4 in", "length", 209.55],
    ['8-1/4"', "length", 209.55],
    ["8¼ in", "length", 209.55],
    ["1/2 in", "length", 12.7],
    ["-1/2 in", "length", -12.7],
    ["−3 mm", "length", -3],
    [`5' 3"`, "length", 1600.2],
    ["72 kg", "mass", 72],
    ["160 lb", "mass", 72.5747792],
    ["11 st 6 lb", "mass", 72.5747792],
    ["52 deg", "angle", 0.907571211037],
    ["52°", "angle", 0.907571211037],
    ["52° 30'", "angle", 0.916297857297],
    ["2 h 30 min", "time", 150],
    ["18 months", "age", 1.5],
    ["3", "count", 3],
  ] as const)("%s is read as a %s", (typed, kind, expected) => {
    expect(value(typed, kind)).toBeCloseTo(expected, 9);
  });

  it("asks about a comma that could part thousands or decimals, and does not guess", () => {
    expect(readNumber("1,425")).toEqual({
      ok: false,
      asks: "is that 1.425 or 1425? Write it with a point, or without the comma",
    });
    expect(parseQuantity("1,425 mm", "length").ok).toBe(false);
    expect(value("0,425 in", "length")).toBeCloseTo(10.795, 9);
  });

  it.each([
    "",
    "-",
    "mm",
    "8 fingers",
    "8 in in",
    "8 in 1 ft",
    "8 1/0 in",
    "1e5",
    "NaN",
    "Infinity",
    "1.2.3",
    "12 8 in",
    "8 kg",
    "0x10",
    "1 000",
  ])("%s is no length", (typed) => {
    expect(parseQuantity(typed, "length").ok).toBe(false);
  });

  it("refuses what is not finite", () => {
    for (const typed of [Number.NaN, Infinity, -Infinity, 1e308]) {
      expect(parseQuantity(typed, "length", unit("in", "length")).ok).toBe(Number.isFinite(typed * 25.4));
    }
  });
});

describe("show", () => {
  it.each([
    [205.4, "mm", 1, "205 mm"],
    [205.4, "mm", 12, "210 mm"],
    [205.44, "mm", 0.3, "205.4 mm"],
    [205, "cm", 1, "20.5 cm"],
    [209.55, "in", 1.6, "8 1/4 in"],
    [99, "in", 0.8, "3 29/32 in"],
    [-0.2, "mm", 1, "0 mm"],
    [-6.35, "in", 2, "-1/4 in"],
    [0.18, "in", 0.26, "0.01 in"],
    [12.8, "in", 0.4, "1/2 in"],
  ] as const)("%s in %s with %s mm is %s", (mm, name, uncertainty, expected) => {
    expect(show(mm, "length", unit(name, "length"), uncertainty)).toBe(expected);
  });

  it("is read back within what rounding took, which is never more than half the uncertainty", () => {
    const kinds = fc.constantFrom<QuantityKind>("length", "angle", "mass", "force", "time", "age", "weeks");
    const size = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    const doubt = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(kinds, fc.nat(), size, doubt, (kind, pick, amount, uncertainty) => {
        const one = UNITS[kind][pick % UNITS[kind].length] ?? UNITS[kind][0];
        const [kept, keptDoubt] = [amount * one.times, uncertainty * one.times];
        const back = value(show(kept, kind, one, keptDoubt).replace("arc minutes", "'"), kind);
        expect(Math.abs(back - kept)).toBeLessThanOrEqual(keptDoubt / 2 + 1e-9 * Math.abs(kept) + 1e-12);
      }),
      RUNS,
    );
  });

  it("never shows a place below the uncertainty", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 0.01, max: 1000, noNaN: true }),
        (mm, uncertainty) => {
          const digits = show(mm, "length", UNITS.length[0], uncertainty).replace(" mm", "");
          const decimals = digits.includes(".") ? digits.length - digits.indexOf(".") - 1 : 0;
          // The place of the last digit is at most the uncertainty, and ten times it is more: no digit too many, none too few.
          if (decimals > 0) expect(10 ** (1 - decimals)).toBeGreaterThan(uncertainty);
          else {
            // Compared, not taken by logarithm: that of 999.9999999999999 is 3.
            const place = [1000, 100, 10, 1].find((power) => power <= uncertainty) ?? 1;
            expect(Math.abs(Number(digits) % place)).toBe(0);
          }
        },
      ),
      { ...RUNS, examples: [[-123, 999.9999999999999]] },
    );
  });
});

it("any text is read or asked back, never thrown at", () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 200, unit: "grapheme" }),
      fc.constantFrom<QuantityKind>("length", "angle", "mass", "count"),
      (text, kind) => {
        const parsed = parseQuantity(text, kind);
        expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.asks.length > 0).toBe(true);
      },
    ),
    RUNS,
  );
});
