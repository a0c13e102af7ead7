/** What a reading was taken with. */
export const INSTRUMENTS = [
  "flexible-curve",
  "protractor",
  "ruler",
  "tape",
  "calliper",
  "feeler",
  "fingers",
  "template",
  "level",
  "scale",
  "count",
  "eye",
] as const;
export type Instrument = (typeof INSTRUMENTS)[number];
