import { allReadings } from "../all-readings.ts";
import type { Survey } from "../case.ts";
import { about, type Flag, flag } from "./flag.ts";

const INCHES = ["in", "ft"];
/** Repeats further apart than this many own uncertainties of one reading are looked at again (derived: 4 of the range of a few normal draws). */
const REPEATS_APART = 4;

/** Inches and millimetres in one case, and repeats that do not agree. */
export function readingFlags(survey: Survey): Flag[] {
  return [...mixed(survey), ...scattered(survey)];
}

function mixed(survey: Survey): Flag[] {
  const lengths = allReadings(survey).filter(({ reading }) => reading.kind === "length");
  const imperial = lengths.filter(({ reading }) => INCHES.includes(reading.unit ?? ""));
  const drawn = survey.horses.flatMap((horse, h) =>
    horse.traces.map((trace, t) => ({ path: `horses[${h}].traces[${t}].unit`, inches: trace.unit === "in" })),
  );
  const inInches = imperial.length + drawn.filter(({ inches }) => inches).length;
  const inMetric = lengths.length - imperial.length + drawn.filter(({ inches }) => !inches).length;
  if (inInches === 0 || inMetric === 0) return [];
  const where =
    (inInches <= inMetric
      ? (imperial[0]?.path ?? drawn.find(({ inches }) => inches)?.path)
      : lengths.find(({ reading }) => !INCHES.includes(reading.unit ?? ""))?.path) ?? "";
  return [
    flag(
      where,
      `inches and millimetres are mixed in this case: ${inInches} in inches, ${inMetric} metric. Was a bare number meant in inches?`,
    ),
  ];
}

function scattered(survey: Survey): Flag[] {
  return allReadings(survey).flatMap(({ path, reading }) => {
    const { repeats, own } = reading;
    const range = Math.max(...repeats) - Math.min(...repeats);
    const oneOwn = own * Math.sqrt(repeats.length);
    if (
      repeats.length < 2 ||
      (reading.kind !== "length" && reading.kind !== "angle") ||
      range <= REPEATS_APART * Math.min(oneOwn, LARGEST_OWN[reading.kind])
    )
      return [];
    return [
      flag(path, `the repeats lie ${about(range, reading.kind)} apart (${reading.typed}): read it once more`),
    ];
  });
}

/** Repeats that scatter make their own uncertainty large; they are held against this much at most: mm, rad (assumption). */
const LARGEST_OWN = { length: 3, angle: 0.035 } as const;
