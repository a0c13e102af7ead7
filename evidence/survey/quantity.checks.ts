import { parseQuantity, type QuantityKind } from "../../core/src/engine/quantity/index.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";

function typed(text: string, kind: QuantityKind): number {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.asks}`);
  return parsed.value;
}

export const checks: readonly Check[] = [
  {
    name: "nist-sp-811: one of each unit as a hand types it",
    run: () =>
      published("nist-sp-811", {
        foot_mm: typed("1 ft", "length"),
        inch_mm: typed('1"', "length"),
        pound_kg: typed("1 lb", "mass"),
        stone_kg: typed("1 st", "mass"),
        poundForce_N: typed("1 lbf", "force"),
        kilogramForce_N: typed("1 kgf", "force"),
        degree_rad: typed("1°", "angle"),
        arcMinute_rad: typed("1'", "angle"),
      }),
  },
];
