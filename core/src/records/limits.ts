/** How large one thing may be: what it is, the most of it, in which unit, and the least where that is not nothing. */
export interface SizeLimit {
  readonly says: string;
  readonly most: number;
  readonly unit: string;
  readonly least?: number;
}

/** The numbers of such limits alone. */
export const mostOf = <Name extends string>(limits: Readonly<Record<Name, SizeLimit>>) =>
  Object.fromEntries(Object.entries<SizeLimit>(limits).map(([name, { most }]) => [name, most])) as {
    readonly [N in Name]: number;
  };

/** What one entry may hold. Working limits, no source: far above what is needed, and small enough to refuse what is no entry. */
export const RECORD_SIZES = {
  kindLetters: { says: "name of a kind of entry", most: 40, unit: "letters" },
  zoneLetters: { says: "name of a time zone", most: 60, unit: "letters" },
  after: { says: "ends that one entry joins", most: 64, unit: "entries" },
  takenBack: { says: "entries that are taken back at once", most: 64, unit: "entries" },
  atLetters: { says: "name of a place", most: 200, unit: "letters" },
  whyLetters: { says: "why something was taken back", most: 400, unit: "letters" },
  fieldLetters: { says: "name of a person's field", most: 60, unit: "letters" },
  personLetters: { says: "what a person's field holds", most: 200_000, unit: "letters" },
  entryBytes: { says: "one line of a file of records", most: 200_000, unit: "bytes" },
  photoBytes: { says: "one photo", most: 25_000_000, unit: "bytes" },
} as const satisfies Readonly<Record<string, SizeLimit>>;

export const RECORD_LIMITS = mostOf(RECORD_SIZES);
