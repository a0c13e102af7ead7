import { ID_CHANCE_BYTES, SALT_BYTES, uuidV7 } from "../records.ts";

/** Name under which a browser keeps the practice of this device. */
export const DATA_BASE = "treewright";

/** Clock, chance and zone of this device: what core is told and never asks. */
export interface Machine {
  /** Milliseconds since 1970. */
  now(): number;
  chance(bytes: number): Uint8Array;
  /** Name of the time zone, as the IANA data base has it. */
  readonly zone: string;
}

export const thisMachine = (): Machine => ({
  now: () => Date.now(),
  chance: (bytes) => crypto.getRandomValues(new Uint8Array(bytes)),
  zone: Intl.DateTimeFormat().resolvedOptions().timeZone,
});

export const newId = (machine: Machine): string => uuidV7(machine.now(), machine.chance(ID_CHANCE_BYTES));

export const newSalt = (machine: Machine): string =>
  Array.from(machine.chance(SALT_BYTES), (byte) => byte.toString(16).padStart(2, "0")).join("");
