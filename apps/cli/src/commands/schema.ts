import { caseJsonSchema } from "@treewright/core/survey/json-schema.ts";
import type { Command } from "../command.ts";
import { EXIT } from "../exit.ts";

export const schema: Command = {
  name: "schema",
  takes: "",
  says: "print the case file's format as JSON Schema",
  about: [
    "The same definition checks a case, gives the types of the program and the page docs/reference/case-file.md.",
  ],
  options: {},
  examples: [["schema > case.schema.json", "for an editor that completes and checks while you type"]],
  async run(_given, desk) {
    desk.say(JSON.stringify(caseJsonSchema(), null, 1));
    return EXIT.answered;
  },
};
