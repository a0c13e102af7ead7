import { caseJsonSchema, jobJsonSchema, stockJsonSchema } from "@treewright/core/survey/json-schema.ts";
import type { Command } from "../command.ts";
import { EXIT, Stop } from "../exit.ts";

export const schema: Command = {
  name: "schema",
  takes: "",
  says: "print a file's format as JSON Schema",
  about: [
    "The same definition checks a case, gives the types of the program and the page docs/reference/case-file.md.",
  ],
  options: {
    stock: { type: "boolean", says: "of a stock of plates instead of a case" },
    job: { type: "boolean", says: "of a job at the press instead of a case" },
  },
  examples: [
    ["schema > case.schema.json", "for an editor that completes and checks while you type"],
    ["schema --stock > stock.schema.json", "the same for a stock of plates"],
  ],
  async run(given, desk) {
    if (given.isOn("stock") && given.isOn("job"))
      throw new Stop(EXIT.wrongUse, "Say --stock or --job, not both.");
    const made = given.isOn("stock") ? stockJsonSchema() : given.isOn("job") ? jobJsonSchema() : undefined;
    desk.say(JSON.stringify(made ?? caseJsonSchema(), null, 1));
    return EXIT.answered;
  },
};
