import { platesSeen } from "@treewright/core/answer/plates.ts";
import { plateName } from "@treewright/core/papers/plates.ts";
import type { Command } from "../command.ts";
import { EXIT, Stop } from "../exit.ts";
import { openStock } from "../open-beside.ts";
import { openCase } from "../open-case.ts";
import { platesText } from "../plates-text.ts";
import { SEED } from "../solve.ts";

export const plates: Command = {
  name: "plates",
  takes: "CASE",
  says: "which plates fit this head, and which comes nearest",
  about: [
    "Plates at hand in the case, and those of a stock: which fit the mounting by holes, pitch, thickness and edge, what " +
      "head each makes as fitted with its doubt, and which comes nearest to the head that each horse of the saddle " +
      "wants. Where two cannot be told apart it says so. Makers' words are never compared.",
    "--json prints one line: plates, horses, unranked, ranked; angles in rad, lengths in mm.",
  ],
  options: {
    stock: { type: "string", value: "FILE", says: "a stock of plates, beside those at hand in the case" },
    json: { type: "boolean", says: "one line of JSON" },
  },
  examples: [
    ["plates first.json", "the plates at hand in the case"],
    ["plates first.json --stock examples/stock/plates-in-the-van.json", "and those of a stock"],
  ],
  async run(given, desk) {
    const path = given.takes[0] ?? "";
    const { survey } = openCase(path, desk);
    const file = given.text("stock");
    const stock = file === undefined ? [] : openStock(file, desk).plates;
    const seen = platesSeen(survey, stock, SEED);
    if (seen === undefined)
      throw new Stop(
        EXIT.problemInCase,
        "This head takes no plates, or how it is built is not known. See: treewright answer.",
      );
    if (given.isOn("json")) {
      const named = seen.plates.map((plate) => ({
        ...plate,
        name: plateName(plate.id, survey.platesAtHand, stock),
      }));
      desk.say(JSON.stringify({ ...seen, plates: named }));
    } else for (const line of platesText(seen, survey, stock)) desk.say(line);
    return EXIT.answered;
  },
};
