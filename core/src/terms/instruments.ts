/** What a reading was taken with. */
export const INSTRUMENTS = [
  "flexible-curve",
  "protractor",
  "ruler",
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
