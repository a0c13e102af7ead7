import { wrap } from "../columns.ts";
import type { Command } from "../command.ts";
import { EXIT } from "../exit.ts";
import { caseFiles } from "../files.ts";
import { openOrTell } from "../open-case.ts";

export const check: Command = {
  name: "check",
  takes: "CASE|FOLDER",
  says: "say what is wrong in a case, or worth a second look",
  about: [
    "Every problem is listed: where it stands, what was read, what is allowed there, in the unit that was typed. " +
      "A reading that is allowed yet unusual is listed to be looked at again; it is no problem. " +
      "A folder is checked file by file (every .json).",
  ],
  options: {},
  examples: [
    ["check first.json", "one case"],
    ["check examples/cases", "every case of a folder"],
  ],
  async run({ takes: [path = ""] }, desk) {
    const files = caseFiles(path);
    let wrong = 0;
    for (const file of files) {
      const good = openOrTell(file, desk);
      if (!good) {
        wrong += 1;
        continue;
      }
      const again = good.flags.length === 0 ? "" : `, ${good.flags.length} to look at again`;
      for (const line of wrap(`${file}: good${again}`)) desk.say(line);
      for (const flag of good.flags)
        for (const line of wrap(`${flag.where}: ${flag.says}`, 2, 2)) desk.say(line);
    }
    return wrong === 0 ? EXIT.answered : EXIT.problemInCase;
  },
};
