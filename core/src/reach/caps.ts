import type { Provenance } from "../terms/provenance.ts";
import type { PressHistory } from "./history.ts";
import { countReversals } from "./history.ts";

/** A cap on pressing a head, whatever an engine would allow. */
export interface Cap {
  readonly id: "cap-from-as-made" | "cap-path" | "cap-reversals" | "cap-dressed";
  readonly limit: number;
  readonly unit: "mm" | "times";
  readonly says: string;
  readonly provenance: Provenance;
}

/** The caps of one stuff. Each stuff has records of its own: what wood takes tells nothing of polymer. */
export interface Caps {
  readonly total: Cap;
  readonly path: Cap;
  readonly reversals: Cap;
  readonly dressed: Cap;
}

const practice = "common practice, no source";

/** Laminated wood with plates. */
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
} as const satisfies Caps;

/** Polymer with a metal bar. What practice names no figure for is an assumption, and says so. */
export const BARRED_CAPS = {
  total: {
    id: "cap-from-as-made",
    limit: 12,
    unit: "mm",
    says: "net change from as made, at the tips, polymer with a bar (10 to 12 mm)",
    provenance: practice,
  },
  path: {
    id: "cap-path",
    limit: 24,
    unit: "mm",
    says: "sum of all changes this head has seen, polymer with a bar (assumption 18 to 30 mm: there and back once)",
    provenance: "assumption",
  },
  reversals: {
    id: "cap-reversals",
    limit: 1,
    unit: "times",
    says: "changes of direction, polymer with a bar; a second is not made (assumption 1 to 2)",
    provenance: "assumption",
  },
  dressed: {
    id: "cap-dressed",
    limit: 8,
    unit: "mm",
    says: "change at the tips with the tree inside the saddle, polymer with a bar",
    provenance: practice,
  },
} as const satisfies Caps;

/** Caps that hold whether the tree is dressed or bare; the ids of those that a change would pass. */
export function capsPassed(
  changeMm: number,
  history: PressHistory,
  caps: Caps = PRESS_CAPS,
): readonly Cap["id"][] {
  if (changeMm === 0) return [];
  const passed: Cap["id"][] = [];
  if (history.netsMm.some((netMm) => Math.abs(netMm + changeMm) > caps.total.limit))
    passed.push("cap-from-as-made");
  if (history.pathMm + Math.abs(changeMm) > caps.path.limit) passed.push("cap-path");
  const reverses = history.lastMm !== undefined && countReversals([history.lastMm, changeMm]) === 1;
  if (reverses && history.reversals >= caps.reversals.limit) passed.push("cap-reversals");
  return passed;
}

/** True where the change is more than a tree takes inside its saddle. */
export function needsBare(changeMm: number, caps: Caps = PRESS_CAPS): boolean {
  return Math.abs(changeMm) > caps.dressed.limit;
}
