import type { Provenance } from "../terms/provenance.ts";
import type { PressHistory } from "./history.ts";
import { countReversals } from "./history.ts";

/** A cap on pressing laminated wood with plates, whatever an engine would allow. */
export interface Cap {
  readonly id: "cap-from-as-made" | "cap-path" | "cap-reversals" | "cap-dressed";
  readonly limit: number;
  readonly unit: "mm" | "times";
  readonly says: string;
  readonly provenance: Provenance;
}

const practice = "common practice, no source";

export const PRESS_CAPS = {
  total: {
    id: "cap-from-as-made",
    limit: 20,
    unit: "mm",
    says: "net change from as made, at the tips",
    provenance: practice,
  },
  path: {
    id: "cap-path",
    limit: 40,
    unit: "mm",
    says: "sum of all changes this head has seen, at the tips",
    provenance: practice,
  },
  reversals: {
    id: "cap-reversals",
    limit: 2,
    unit: "times",
    says: "changes of direction; a third is not made",
    provenance: practice,
  },
  dressed: {
    id: "cap-dressed",
    limit: 8,
    unit: "mm",
    says: "change at the tips with the tree inside the saddle",
    provenance: practice,
  },
} as const satisfies Record<string, Cap>;

/** Caps that hold whether the tree is dressed or bare; the ids of those that a change would pass. */
export function capsPassed(changeMm: number, history: PressHistory): readonly Cap["id"][] {
  if (changeMm === 0) return [];
  const passed: Cap["id"][] = [];
  if (history.netsMm.some((netMm) => Math.abs(netMm + changeMm) > PRESS_CAPS.total.limit))
    passed.push("cap-from-as-made");
  if (history.pathMm + Math.abs(changeMm) > PRESS_CAPS.path.limit) passed.push("cap-path");
  const reverses = history.lastMm !== undefined && countReversals([history.lastMm, changeMm]) === 1;
  if (reverses && history.reversals >= PRESS_CAPS.reversals.limit) passed.push("cap-reversals");
  return passed;
}

/** True where the change is more than a tree takes inside its saddle. */
export function needsBare(changeMm: number): boolean {
  return Math.abs(changeMm) > PRESS_CAPS.dressed.limit;
}
