import { createHash } from "node:crypto";
import { dirname, join } from "node:path";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { photoPath } from "@treewright/core/records/photo-file.ts";
import { type Photo, readRecords } from "@treewright/core/records/records-file.ts";
import { FAULTS, verify as verifyEntries } from "@treewright/core/records/verify.ts";
import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import type { Desk } from "../desk.ts";
import { EXIT } from "../exit.ts";
import { bytesIfThere, linesOf } from "../files.ts";
import { foundInWords } from "../found-text.ts";
import { problemLines } from "../open-case.ts";

function photoFaults(photos: readonly Photo[], file: string): readonly string[] {
  return photos.flatMap((photo) => {
    const { hash } = photo;
    const path = join(dirname(file), photoPath(photo));
    const bytes = bytesIfThere(path);
    if (bytes === undefined) return [`photo ${path}: it is not there`];
    const read = createHash("sha256").update(bytes).digest("hex");
    return read === hash ? [] : [`photo ${path}: its bytes are not those that were recorded`];
  });
}

function say(desk: Desk, lines: readonly string[]): void {
  for (const line of lines) for (const part of wrap(line, 0, 2)) desk.say(part);
}

export const verify: Command = {
  name: "verify",
  takes: "RECORDS",
  says: "say whether records are whole, and where people disagree",
  about: [
    "Every entry's hash is worked out anew, every entry that another names is looked for, and every photo's bytes are " +
      "compared. What was changed or is missing is a fault. Two who wrote without seeing each other, or an entry of a newer " +
      "version, is none: it is listed, for people to decide.",
    "It cannot show that the last entries of a subject were cut off, or that what was said was true.",
  ],
  options: {},
  examples: [["verify records.jsonl", "the records of an export"]],
  async run({ takes: [path = ""] }, desk) {
    const read = readRecords(await linesOf(path));
    if (!read.ok) {
      for (const refusal of read.refusals) for (const line of problemLines(refusal)) desk.tell(line);
      return EXIT.problemInCase;
    }
    const { entries, photos } = read.records;
    const found = verifyEntries(entries, GRAPH_KINDS);
    const faults = found.filter(({ is }) => FAULTS.has(is)).map(foundInWords);
    const wrong = [...faults, ...photoFaults(photos, path)];
    const open = found.filter(({ is }) => !FAULTS.has(is)).map(foundInWords);
    const subjects = new Set(entries.map(({ subject }) => subject)).size;
    say(desk, [`${entries.length} entries about ${subjects} subjects, ${photos.length} photos.`]);
    say(desk, [
      wrong.length === 0 ? "Whole: nothing was changed, nothing that is named is missing." : "NOT WHOLE:",
    ]);
    say(desk, wrong);
    if (open.length > 0) say(desk, ["For people to decide, or for a newer Treewright to read:", ...open]);
    return wrong.length === 0 ? EXIT.answered : EXIT.problemInCase;
  },
};
