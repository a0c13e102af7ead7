import type { Provenance } from "../terms/provenance.ts";

/** What a barred polymer head takes back of a change by itself, as parts of it, within a week. */
export const CREEP = { partBack: [0.2, 0.4], provenance: "from memory" } as const satisfies {
  readonly partBack: readonly [number, number];
  readonly provenance: Provenance;
};

/** What is left after a week of a change that stood at release, mm; least and most. */
export function leftAfterAWeekMm(changeMm: number): readonly [number, number] {
  const [least, most] = CREEP.partBack;
  return [Math.abs(changeMm) * (1 - most), Math.abs(changeMm) * (1 - least)];
}
