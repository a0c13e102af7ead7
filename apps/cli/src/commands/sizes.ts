import { commonLevelMm, wordsCompared } from "@treewright/core/reach/plates/compared.ts";
import { type Command, wholeNumber } from "../command.ts";
import { EXIT, Stop } from "../exit.ts";
import { openStock } from "../open-beside.ts";
import { sizesText } from "../sizes-text.ts";

/** Levels on the straight of a leg, mm below the crown. */
const LEVEL = { lo: 35, hi: 200 } as const;

export const sizes: Command = {
  name: "sizes",
  takes: "STOCK",
  says: "what makers' words for sizes are in mm and degrees",
  about: [
    "Every word of every maker as measured on the pieces of a stock: spread inside and half-angle at one level below the " +
      "crown, with the doubt for a further piece, and the nearest word of each other maker. Words are kept as they are " +
      "and never compared; spreads read at other levels are brought to this one by the half-angle, with its doubt.",
    "--json prints one line: levelMm, words, leftOut; angles in rad, lengths in mm.",
  ],
  options: {
    level: {
      type: "string",
      value: "MM",
      says: "level below the crown; else the lowest that every piece reaches",
    },
    json: { type: "boolean", says: "one line of JSON" },
  },
  examples: [
    ["sizes examples/stock/plates-in-the-van.json", "at the lowest level that every piece reaches"],
    ["sizes examples/stock/plates-in-the-van.json --level 60", "60 mm below the crown"],
  ],
  async run(given, desk) {
    const path = given.takes[0] ?? "";
    const { plates } = openStock(path, desk);
    const level = wholeNumber(given, "level", LEVEL.lo, LEVEL.hi) ?? commonLevelMm(plates);
    if (level === undefined)
      throw new Stop(EXIT.wrongUse, "No piece's depth was read: say the level with --level MM.");
    const compared = wordsCompared(plates, level);
    if (given.isOn("json")) desk.say(JSON.stringify(compared));
    else for (const line of sizesText(compared)) desk.say(line);
    return EXIT.answered;
  },
};
