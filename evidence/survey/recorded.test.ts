import { readdirSync, readFileSync } from "node:fs";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import { readCase, readCaseValue } from "@treewright/core/survey/read-case.ts";
import { visitDraft } from "@treewright/core/survey/recorded/draft.ts";
import { OF_VISIT } from "@treewright/core/survey/recorded/places.ts";
import {
  answerAsStatements,
  caseAsStatements,
  type Statement,
} from "@treewright/core/survey/recorded/statements.ts";
import { describe, expect, it } from "vitest";
import { Device } from "../records/written.ts";

const folder = new URL("../../examples/cases/", import.meta.url);
const examples = readdirSync(folder).map(
  (name) => [name, readFileSync(new URL(name, folder), "utf8")] as const,
);

const plain = (value: unknown): string | undefined => (typeof value === "string" ? value : undefined);
const say = (device: Device, statements: readonly Statement[]): void => {
  for (const { at, value } of statements)
    device.write("stated", value === undefined ? { at } : { at, value: JSON.parse(JSON.stringify(value)) });
};
const draftOf = (device: Device) => visitDraft(standingOf(device.entries, GRAPH_KINDS), plain, "2031-04-12");

describe("a case in the records", () => {
  it.each(examples)("%s comes out of its entries as the same survey", (_, text) => {
    const read = readCase(text);
    if (!read.ok) throw new Error("an example is read");
    const device = new Device(1);
    say(device, caseAsStatements(read.file));
    const again = readCaseValue(draftOf(device).file);
    expect(again.ok && again.survey).toEqual(read.survey);
    expect(device.entries.length).toBeGreaterThan(50);
  });
  it("typed answers become the case that the same answers make at the terminal", () => {
    const device = new Device(1);
    const typed = [
      ["horses[0].name", "Bracken"],
      ["saddle.head.spreadTips", "8 in"],
      ["horses[0].traces[0].points", "in -4 -3; -3 -2; -2 -1; -1 -0.5; 0 0; 1 -0.5; 2 -1; 3 -2; 4 -3"],
      ["horses[0].moving.uneven", "no"],
    ] as const;
    for (const [path, words] of typed) {
      const answered = answerAsStatements(draftOf(device).file, path, words);
      if (!answered.ok) throw new Error(`${path}: ${answered.problem.allowed}`);
      say(device, answered.statements);
      expect(draftOf(device).file, path).toEqual(answered.draft);
    }
    const { file } = draftOf(device);
    expect(file.saddle.head?.spreadTips).toBe("8 in");
    expect(file.horses[0]?.traces?.[0]).toMatchObject({ station: "front", unit: "in" });
  });
  it("what is refused makes no statement", () => {
    const refused = answerAsStatements(draftOf(new Device(1)).file, "saddle.head.spreadTips", "8 m");
    expect(refused.ok).toBe(false);
  });
  it("a cleared item of a list leaves no hole", () => {
    const device = new Device(1);
    say(device, [
      { at: "platesAtHand[0].label", value: "a" },
      { at: "platesAtHand[1].label", value: "b" },
      { at: "platesAtHand[0].label" },
    ]);
    expect(draftOf(device).file.platesAtHand).toEqual([{ label: "b" }]);
  });
  it("places of the visit itself stay out of the case", () => {
    const device = new Device(1);
    say(device, [
      { at: OF_VISIT.begun, value: "2031-04-12T09:00:00.000Z" },
      { at: "horses[0].name", value: "Bracken" },
    ]);
    const { file, ofVisit } = draftOf(device);
    expect(ofVisit.get(OF_VISIT.begun)).toBe("2031-04-12T09:00:00.000Z");
    expect(readCaseValue(file).ok).toBe(true);
  });
  it("an erased name is told, and stands nowhere", () => {
    const device = new Device(1);
    say(device, [{ at: "visit.owner", value: { person: "x", field: "name", commitment: "y" } }]);
    const { file, erased } = visitDraft(
      standingOf(device.entries, GRAPH_KINDS),
      () => undefined,
      "2031-04-12",
    );
    expect(erased).toEqual(["visit.owner"]);
    expect(file.visit.owner).toBeUndefined();
  });
  it("where two disagree neither stands in the case", () => {
    const one = new Device(1);
    const other = new Device(2);
    say(one, [{ at: "saddle.head.spreadTips", value: 176 }]);
    say(other, [{ at: "saddle.head.spreadTips", value: 186 }]);
    one.entries = [...one.entries, ...other.entries];
    const { file, differ } = draftOf(one);
    expect(file.saddle.head).toBeUndefined();
    expect(differ.map(({ at }) => at)).toEqual(["saddle.head.spreadTips"]);
  });
});
