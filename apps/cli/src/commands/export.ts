import { dirname, join } from "node:path";
import { grouped } from "@treewright/core/engine/grouped.ts";
import { photoPath } from "@treewright/core/records/photo-file.ts";
import { type Photo, readRecords } from "@treewright/core/records/records-file.ts";
import { CopyTexts } from "@treewright/core/report/copy/texts.ts";
import { listedOf, visitsTold } from "@treewright/core/report/copy/visit-told.ts";
import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import { EXIT, Stop } from "../exit.ts";
import { bytesIfThere, linesOf, writeWhole } from "../files.ts";
import { problemLines } from "../open-case.ts";

/** Said on the page itself. */
const NO_PAPERS = "Letters and sheets are not made by this command.";

export const exportRecords: Command = {
  name: "export",
  takes: "RECORDS",
  says: "write records as a page and tables that open without this program",
  about: [
    "The same page and tables as in a copy from the app: index.html, which runs no script, and tables for a spreadsheet. Photos that " +
      "lie beside the records are copied too; letters and sheets are not made.",
  ],
  options: {
    into: { type: "string", value: "FOLDER", says: "where they are written; made where it is not there" },
  },
  examples: [["export records.jsonl --into told", "told/index.html, told/tables and told/photos"]],
  async run(given, desk) {
    const [path = ""] = given.takes;
    const into = given.text("into");
    if (into === undefined) throw new Stop(EXIT.wrongUse, "--into: read nothing; allowed is a folder.");
    const read = readRecords(await linesOf(path));
    if (!read.ok) {
      for (const refusal of read.refusals) for (const line of problemLines(refusal)) desk.tell(line);
      return EXIT.problemInCase;
    }
    const { records } = read;
    const told = visitsTold(records, new Map());
    const page = { madeAt: new Date().toISOString(), without: [NO_PAPERS] };
    const texts = new CopyTexts(told.map(listedOf), page);
    const pieces = [
      ...texts.begin(),
      ...told.flatMap((one) => texts.visit(one)),
      ...texts.end(records.people),
    ];
    for (const [file, own] of grouped(pieces, ({ path: file }) => file))
      writeWhole(join(into, file), own.map(({ text }) => text).join(""));
    const photos = records.photos.filter((photo) => copyPhoto(photo, dirname(path), into));
    for (const line of wrap(
      `written: ${join(into, "index.html")}, with ${told.length} visits, and ${photos.length} of ${records.photos.length} photos`,
    ))
      desk.say(line);
    return EXIT.answered;
  },
};

/** Whether its bytes lay beside the records. Whether they are the right ones is for `verify` to say. */
function copyPhoto(photo: Photo, from: string, into: string): boolean {
  const bytes = bytesIfThere(join(from, photoPath(photo)));
  if (bytes) writeWhole(join(into, photoPath(photo)), bytes);
  return bytes !== undefined;
}
