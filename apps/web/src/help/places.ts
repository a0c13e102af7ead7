import { OF_VISIT } from "../records.ts";
import { fieldAt } from "../road.ts";

/** Screens, and why something was not kept: the words that may stand for where something was done, beside places of a case. */
const WORDS = [
  "first screen",
  "data screen",
  "help screen",
  "visit",
  "everything",
  "a file",
  "a person",
  "full",
  "newer",
  "closed",
  "other",
  "elsewhere",
];
const STEP = /^step \d{1,2}$/;
/** What JavaScript and the browser call their own faults (ECMA-262, Web IDL), and where in our own script. Never a fault's words: they may tell a value. */
const FAULT =
  /^(Error|TypeError|RangeError|ReferenceError|SyntaxError|NotKept|[A-Z][a-z]{2,20}Error)( at [\w-]{1,60}\.js:\d{1,7}:\d{1,7})?$/;
/** A list's item has at most two figures in its name. */
const LONG_INDEX = /\[\d{3,}\]/;
const OWN_PLACES: readonly string[] = Object.values(OF_VISIT);

/** Whether a text is the name of a place and nothing else: of a field in the schema, of a screen, or of a fault. */
const isPlace = (text: string): boolean =>
  WORDS.includes(text) ||
  STEP.test(text) ||
  FAULT.test(text) ||
  OWN_PLACES.includes(text) ||
  (!LONG_INDEX.test(text) && text !== "" && fieldAt(text) !== undefined);

/** The text where it names a place; else that it was somewhere. Nothing that a person typed comes through here. */
export const placeName = (text: string): string => (isPlace(text) ? text : "elsewhere");
