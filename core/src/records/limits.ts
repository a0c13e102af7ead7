/** What one entry may hold. Working limits, no source: far above what a visit needs, and small enough to refuse what is no entry. */
export const RECORD_LIMITS = {
  kindLetters: 40,
  zoneLetters: 60,
  /** Ends that one entry joins. */
  after: 64,
  /** Of an entry's canonical JSON. */
  entryBytes: 200_000,
} as const;
