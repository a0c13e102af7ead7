import {
  fourMeasuresKg,
  GIRTH_LENGTH_DIVISOR,
  girthLengthKg,
  massOfHorse,
} from "../../core/src/shape/weight.ts";
import { takeTransponder, transponderDoubts, transponderFrame } from "../../core/src/survey/transponder.ts";
import { takeUeln } from "../../core/src/survey/ueln.ts";
import { CONDITION_GRADES } from "../../core/src/terms/weighing.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { reference } from "../published/registry.ts";
import { horseWith } from "./horse-with.ts";

/** Passed on without a first source. */
const CIRCULATED = 11877;
const PAIRS = [
  [190.5, 203.2],
  [180, 165],
  [200, 175],
  [160, 145],
] as const;

function frame(typed: string) {
  const chip = takeTransponder(typed);
  return chip.ok ? transponderFrame(chip.transponder) : { refused: chip.why };
}

function taken(typed: string) {
  const chip = takeTransponder(typed);
  if (!chip.ok) return { refused: chip.why };
  const [doubt] = transponderDoubts(chip.transponder);
  if (doubt === undefined) return "taken";
  return doubt.includes("several makers share") ? "flagged: several makers share" : `flagged: ${doubt}`;
}

function ueln(typed: string) {
  const found = takeUeln(typed);
  return found.ok ? found.ueln : { refused: found.why };
}

const each = <T>(id: string, found: (typed: string) => T): { readonly [typed: string]: T } =>
  Object.fromEntries(Object.keys(reference(id).values).map((typed) => [typed, found(typed)]));

/** The equation's own error: with readings that are sure it is all that is left. */
function errorKg(type: "pony" | "warmblood"): number {
  const sure = (mm: number) => ({ read: mm, uncertainty: 0.001 });
  const horse = horseWith({
    body: { type, girth: sure(1800), length: sure(1600), height: sure(1520), neck: sure(950) },
  });
  const shared = { ...horse, body: unshared(horse.body) };
  return massOfHorse(shared)?.equations[0]?.sdKg ?? 0;
}

function unshared<T extends ReturnType<typeof horseWith>["body"]>(body: T): T {
  const part = (one: T["girth"]) => ("absent" in one ? one : { ...one, shared: 0 });
  return {
    ...body,
    girth: part(body.girth),
    length: part(body.length),
    height: part(body.height),
    neck: part(body.neck),
  };
}

export const checks: readonly Check[] = [
  {
    name: "horse: girth and length",
    run: () => {
      published("weight-girth-length-printed", girthLengthKg(190.5, 203.2, CIRCULATED));
      published("weight-girth-length-11900", { kg: PAIRS.map(([g, l]) => girthLengthKg(g, l)) });
      published("weight-girth-length-11877", { kg: PAIRS.map(([g, l]) => girthLengthKg(g, l, CIRCULATED)) });
      published("weight-divisors-apart", 100 * (GIRTH_LENGTH_DIVISOR / CIRCULATED - 1));
    },
  },
  {
    name: "horse: four measures",
    run: () => {
      const adult = [180, 160, 152, 95] as const;
      const heavy = [205, 170, 168, 105] as const;
      published("weight-four-adult", {
        arabian_kg: fourMeasuresKg("arabian", adult),
        pony_kg: fourMeasuresKg("pony", adult),
        stock_kg: fourMeasuresKg("stock", adult),
      });
      published("weight-four-heavy", {
        warmblood_kg: fourMeasuresKg("warmblood", heavy),
        draft_kg: fourMeasuresKg("draft", heavy),
      });
      published("weight-four-errors", { adult_kg: errorKg("pony"), heavy_kg: errorKg("warmblood") });
    },
  },
  {
    name: "horse: grades of condition",
    run: () =>
      published("condition-names", Object.fromEntries(CONDITION_GRADES.map((name, i) => [`${i + 1}`, name]))),
  },
  {
    name: "horse: transponder",
    run: () => {
      published("iso11784-frame", each("iso11784-frame", frame));
      published("iso11784-most", each("iso11784-most", taken));
      published("iso11784-bad", each("iso11784-bad", taken));
    },
  },
  {
    name: "horse: number for life",
    run: () => {
      published("ueln-made", each("ueln-made", ueln));
      published("ueln-bad", each("ueln-bad", ueln));
    },
  },
];
