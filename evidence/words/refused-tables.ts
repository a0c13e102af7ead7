import { CSV_LIMITS } from "@treewright/core/engine/csv.ts";
import { OF_VISIT } from "@treewright/core/survey/recorded/places.ts";
import { refusedName, refusedOfVisit } from "@treewright/core/survey/recorded/refused.ts";
import { rowsIn } from "@treewright/core/survey/recorded/rows-in.ts";

/** Tables, each wrong in its own way. */
const TABLES = [
  "x".repeat(CSV_LIMITS.letters + 1),
  `horse\n${"Curlew\n".repeat(CSV_LIMITS.rows + 1)}`,
  `horse\n${"x".repeat(CSV_LIMITS.lettersInCell + 1)}`,
  ",".repeat(CSV_LIMITS.cells + 1),
  'horse\n"Curlew',
  'horse\n"Curlew" x',
  "horse,horse\nCurlew,Plover",
  "name,yard\nCurlew,Far End",
  "horse,yard\nCurlew,Far End,x\n,Far End\nCurlew,Far End\nPlover,\nPlover,\n",
  ...["owner", "yard", "rider", "saddle", "asked"].map((name) => `horse,${name}\nCurlew,${"x".repeat(900)}`),
  `horse\n${"x".repeat(900)}`,
  "horse,day\nCurlew,2026-02-30",
];

interface Refused {
  readonly where: string;
  readonly read: string;
  readonly allowed: string;
}

/** What a table that is brought in is refused for, and what is said of a visit beside its case. */
export function refusedBeside(): readonly (Omit<Refused, "where"> & { readonly where?: string })[] {
  const here = [{ horse: "Curlew", yard: "Far End" }];
  const ofTables = TABLES.flatMap((text): readonly Refused[] => {
    const read = rowsIn(text, here, "2026-03-02");
    return read.ok ? read.rows.flatMap(({ refused }) => refused ?? []) : [read];
  });
  const ofVisit = [
    refusedOfVisit(OF_VISIT.nextInWeeks, 4000),
    refusedOfVisit(OF_VISIT.done, "x".repeat(9000)),
    refusedName("x".repeat(9000)),
  ].flatMap((problem) => (problem ? [{ read: problem.read, allowed: problem.allowed }] : []));
  return [...ofTables, ...ofVisit];
}
