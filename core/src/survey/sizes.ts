import { mostOf, type SizeLimit } from "../records/limits.ts";

/** How much may be typed, and how many there may be, in a case and a visit. Working limits, no source, but where one is named. */
export const SURVEY_SIZES = {
  fileBytes: { says: "a case, stock or job file", most: 2_000_000, unit: "bytes" },
  nameLetters: { says: "a name of somebody or something", most: 120, unit: "letters", least: 1 },
  titleLetters: { says: "the title of a file", most: 200, unit: "letters", least: 1 },
  addressLetters: { says: "an address", most: 200, unit: "letters" },
  telephoneLetters: { says: "a telephone number", most: 40, unit: "letters" },
  askedLetters: { says: "what the owner asked", most: 300, unit: "letters" },
  wordsLetters: { says: "other free words of a case", most: 400, unit: "letters" },
  serialLetters: { says: "a serial, or a plate's maker", most: 80, unit: "letters" },
  markLetters: { says: "a mark, or a maker's word for a size", most: 60, unit: "letters" },
  numberLetters: { says: "a chip's or a life number as typed", most: 40, unit: "letters" },
  whenLetters: { says: "when an earlier alteration was made", most: 20, unit: "letters" },
  horses: { says: "horses of one case", most: 8, unit: "horses", least: 1 },
  traces: { says: "tracings of one horse", most: 24, unit: "tracings" },
  tracePoints: { says: "points of one tracing", most: 2000, unit: "points", least: 7 },
  profilePoints: { says: "points of the midline", most: 2000, unit: "points", least: 3 },
  traceRepeats: { says: "times that a tracing is drawn again", most: 9, unit: "repeats" },
  readings: { says: "repeats of one reading", most: 20, unit: "readings", least: 1 },
  platesAtHand: { says: "plates at hand", most: 60, unit: "plates" },
  alterations: { says: "earlier alterations of one head", most: 40, unit: "alterations" },
  positions: { says: "positions of inserts", most: 12, unit: "positions" },
  stockPlates: { says: "plates of one stock", most: 500, unit: "plates" },
  passes: { says: "passes of one job (common practice is 3 to 6)", most: 20, unit: "passes" },
  saidLetters: { says: "one text of what was agreed or done", most: 2000, unit: "letters" },
  photoFileBytes: { says: "a picture that is chosen or handed over", most: 40_000_000, unit: "bytes" },
  signatureStrokes: { says: "strokes of a signature", most: 24, unit: "strokes" },
  signaturePoints: { says: "points of one stroke of a signature", most: 500, unit: "points", least: 1 },
  weeks: { says: "weeks until the next look", most: 104, unit: "weeks", least: 1 },
} as const satisfies Readonly<Record<string, SizeLimit>>;

export const SURVEY_LIMITS = mostOf(SURVEY_SIZES);
