import { caseJsonSchema, stockJsonSchema } from "@treewright/core/survey/json-schema.ts";
import type { Command } from "../command.ts";
import { EXIT } from "../exit.ts";

export const schema: Command = {
  name: "schema",
  takes: "",
  says: "print a file's format as JSON Schema",
  about: [
    "The same definition checks a case, gives the types of the program and the page docs/reference/case-file.md.",
  ],
  options: { stock: { type: "boolean", says: "of a stock of plates instead of a case" } },
  examples: [
    ["schema > case.schema.json", "for an editor that completes and checks while you type"],
    ["schema --stock > stock.schema.json", "the same for a stock of plates"],
  ],
  async run(given, desk) {
    desk.say(JSON.stringify(given.isOn("stock") ? stockJsonSchema() : caseJsonSchema(), null, 1));
    return EXIT.answered;
  },
};
