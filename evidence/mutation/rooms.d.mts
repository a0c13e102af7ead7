/** What is mutated in a room, which tests must see it, and the least score in per cent. */
export const ROOMS: Record<
  "judge" | "fit" | "reach",
  { readonly mutate: readonly string[]; readonly tests: string[]; readonly least: number }
>;
