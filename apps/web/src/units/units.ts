import { useSyncExternalStore } from "react";
import { UNIT_CHOICES, type UnitsChosen, USUAL_UNITS } from "../road.ts";

/** Units are a setting of this device alone: nothing that is recorded hangs on them. */
const KEPT = { length: "treewright-unit-length", mass: "treewright-unit-mass" } as const;

const listeners = new Set<() => void>();
let chosen: UnitsChosen | undefined;

function now(): UnitsChosen {
  chosen ??= {
    length:
      UNIT_CHOICES.length.find((one) => one === localStorage.getItem(KEPT.length)) ?? USUAL_UNITS.length,
    mass: UNIT_CHOICES.mass.find((one) => one === localStorage.getItem(KEPT.mass)) ?? USUAL_UNITS.mass,
  };
  return chosen;
}

export function chooseUnits(part: Partial<UnitsChosen>): void {
  chosen = { ...now(), ...part };
  localStorage.setItem(KEPT.length, chosen.length);
  localStorage.setItem(KEPT.mass, chosen.mass);
  for (const listener of listeners) listener();
}

function listen(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export const useUnits = (): UnitsChosen => useSyncExternalStore(listen, now);
