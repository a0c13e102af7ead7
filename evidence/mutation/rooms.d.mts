/** What is mutated in a room, which tests must see it, and the least score in per cent. */
export const ROOMS: Record<
  "judge" | "fit" | "reach",
  { readonly mutate: readonly string[]; readonly tests: string[]; readonly least: number }
>;

/** Of all mutants of these files those that were seen, in per cent with one digit. */
export function scoreOf(
  byFile: Readonly<Record<string, { readonly mutants: number; readonly survivors: readonly unknown[] }>>,
): { readonly score: number; readonly mutants: number; readonly missed: number };
