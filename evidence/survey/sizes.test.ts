import { entrySchema } from "@treewright/core/records/entry.ts";
import { statedSchema, takenBackSchema } from "@treewright/core/records/kinds.ts";
import { RECORD_SIZES, type SizeLimit } from "@treewright/core/records/limits.ts";
import { committedSchema, heldSchema } from "@treewright/core/records/personal.ts";
import { photoSchema, readRecords } from "@treewright/core/records/records-file.ts";
import { refusalOf } from "@treewright/core/records/refusal.ts";
import { problemsOf } from "@treewright/core/survey/problem.ts";
import { readText } from "@treewright/core/survey/read-text.ts";
import { refusedName, refusedOfVisit, refusedPhotoFile } from "@treewright/core/survey/recorded/refused.ts";
import { signatureSchema } from "@treewright/core/survey/recorded/signature.ts";
import { fieldAt } from "@treewright/core/survey/schema-fields.ts";
import { SURVEY_SIZES } from "@treewright/core/survey/sizes.ts";
import { describe, expect, it } from "vitest";
import { z } from "zod";

/*
 * Each limit of size at itself and one above: taken, and refused with what was read and what is allowed. What this cannot see: whether
 * a limit is wise.
 */
interface Refused {
  readonly where: string;
  readonly read: string;
  readonly allowed: string;
}
/** Why so many are refused; undefined where they are taken. */
type Try = (count: number) => Refused | undefined;

/** A place of a case, stock or job by its own schema. */
const inCase =
  (path: string, of: (count: number) => unknown): Try =>
  (count) => {
    const field = fieldAt(path);
    if (!field) throw new Error(`no field ${path}`);
    const value = of(count);
    const parsed = z.core.safeParse(field.schema, value);
    // Told as in a file: the path leads to what was read.
    return parsed.success ? undefined : problemsOf(parsed.error.issues, value, path)[0];
  };
const letters = (count: number) => "a".repeat(count);
const times = (one: unknown) => (count: number) => Array.from({ length: count }, () => one);
const line = (count: number) =>
  Array.from({ length: count }, (_, at) => [-100 + (200 * at) / Math.max(1, count - 1), 0]);
/** A back across: up to the middle and down again. */
const back = (count: number) => line(count).map(([y = 0]) => [y, -Math.abs(y) / 2]);
const trace = (repeats: number) => ({
  station: "front",
  points: back(9),
  repeats: Array.from({ length: repeats }, () => back(9)),
});

const inRecords =
  (schema: z.ZodType, of: (count: number) => unknown): Try =>
  (count) => {
    const value = of(count);
    const parsed = schema.safeParse(value);
    return parsed.success ? undefined : refusalOf(value, parsed.error, "line 2");
  };
const HASH = "0".repeat(64);
const ID = "01890000-0000-7000-8000-000000000000";
const hashes = (count: number) => Array.from({ length: count }, (_, at) => at.toString(16).padStart(64, "0"));
const entry = {
  id: ID,
  subject: ID,
  kind: "stated",
  version: 1,
  author: ID,
  device: ID,
  saidAt: "2031-04-12T09:00:00.000Z",
  zone: "UTC",
  after: [],
  body: {},
  hash: HASH,
};
const lineOf: Try = (bytes) => {
  const first = JSON.stringify({
    format: "treewright-records",
    version: 1,
    people: 0,
    photos: 0,
    entries: 1,
  });
  const bare = JSON.stringify({ ...entry, body: { at: "x", value: "" } });
  const value = "a".repeat(bytes - bare.length);
  const read = readRecords([first, JSON.stringify({ ...entry, body: { at: "x", value } })]);
  return read.ok ? undefined : read.refusals[0];
};
const textOf: Try = (bytes) => {
  const read = readText(`"${"a".repeat(bytes - 2)}"`);
  return read.ok ? undefined : read.problems[0];
};

const TRIES: Readonly<Record<keyof typeof SURVEY_SIZES | keyof typeof RECORD_SIZES, readonly Try[]>> = {
  fileBytes: [textOf],
  nameLetters: [
    (count) => refusedName(letters(count)),
    ...["horses[].name", "saddle.name", "visit.owner", "visit.place", "rider.name", "worker.name"].map(
      (path) => inCase(path, letters),
    ),
  ],
  titleLetters: ["title", "stock.title", "job.title"].map((path) => inCase(path, letters)),
  addressLetters: [inCase("practice.address", letters)],
  telephoneLetters: [inCase("practice.telephone", letters)],
  askedLetters: [inCase("visit.asked", letters)],
  wordsLetters: [inCase("horses[].about", letters)],
  serialLetters: ["saddle.standing.serial", "stock.plates[].maker"].map((path) => inCase(path, letters)),
  markLetters: ["stock.plates[].mark", "saddle.inserts.positions[].name"].map((path) =>
    inCase(path, letters),
  ),
  // Blanks: a number of so many figures is refused for its form before its length.
  numberLetters: ["horses[].identity.transponder", "horses[].identity.ueln"].map((path) =>
    inCase(path, (count) => " ".repeat(count)),
  ),
  whenLetters: [inCase("saddle.past.alterations[].date", letters)],
  horses: [inCase("horses", times({ name: "a" }))],
  traces: [inCase("horses[].traces", times(trace(0)))],
  tracePoints: [inCase("horses[].traces[].points", back)],
  profilePoints: [inCase("horses[].profile.points", line)],
  traceRepeats: [inCase("horses[].traces[]", trace)],
  readings: [inCase("saddle.head.spreadTips", (count) => ({ read: times(174)(count) }))],
  platesAtHand: [inCase("platesAtHand", times({}))],
  alterations: [inCase("saddle.past.alterations", times({ date: "2030" }))],
  positions: [inCase("saddle.inserts.positions", times({}))],
  stockPlates: [inCase("stock.plates", times({ maker: "a", word: "b" }))],
  passes: [inCase("job.passes", times({}))],
  saidLetters: ["left.done", "agreed.work", "agreed.risks", "agreed.worseCase", "agreed.limit"].map(
    (at): Try =>
      (count) =>
        refusedOfVisit(at, letters(count)),
  ),
  photoFileBytes: [refusedPhotoFile],
  signatureStrokes: [
    inRecords(signatureSchema, (count) => ({
      by: "a",
      as: "owner",
      over: HASH,
      strokes: times([[0, 0]])(count),
    })),
  ],
  signaturePoints: [
    inRecords(signatureSchema, (count) => ({
      by: "a",
      as: "owner",
      over: HASH,
      strokes: [times([0, 0])(count)],
    })),
  ],
  weeks: [(count) => refusedOfVisit("left.nextInWeeks", count)],
  kindLetters: [inRecords(entrySchema, (count) => ({ ...entry, kind: letters(count) }))],
  zoneLetters: [inRecords(entrySchema, (count) => ({ ...entry, zone: letters(count) }))],
  after: [inRecords(entrySchema, (count) => ({ ...entry, after: hashes(count) }))],
  takenBack: [inRecords(takenBackSchema, (count) => ({ of: hashes(count), why: "" }))],
  atLetters: [inRecords(statedSchema, (count) => ({ at: letters(count) }))],
  whyLetters: [inRecords(takenBackSchema, (count) => ({ of: [HASH], why: letters(count) }))],
  fieldLetters: [
    inRecords(committedSchema, (count) => ({ person: ID, field: letters(count), commitment: HASH })),
  ],
  personLetters: [
    inRecords(heldSchema, (count) => ({ person: ID, field: "name", salt: HASH, value: letters(count) })),
  ],
  entryBytes: [lineOf],
  photoBytes: [inRecords(photoSchema, (bytes) => ({ hash: HASH, type: "image/jpeg", bytes }))],
};

describe("a limit of size", () => {
  const all = Object.entries<SizeLimit>({ ...SURVEY_SIZES, ...RECORD_SIZES });
  it.each(all)("%s: taken at the limit, refused one above with what is allowed", (name, { most, least }) => {
    for (const attempt of TRIES[name as keyof typeof TRIES]) {
      expect(attempt(most), "at the limit").toBeUndefined();
      const above = attempt(most + 1);
      expect(above?.where).toBeTruthy();
      expect(above?.read).toBeTruthy();
      expect(above?.allowed).toMatch(/\d/);
      if (name !== "fileBytes") expect(above?.allowed).toContain(String(most));
      if (least === undefined || attempt(0) === undefined) continue;
      expect(attempt(least), "at the least").toBeUndefined();
      expect(attempt(least - 1)?.allowed, "below the least").toContain(String(least));
    }
  });
});
