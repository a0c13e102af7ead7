import { readFileSync, writeFileSync } from "node:fs";
import { FROZEN_FILE, frozen, frozenText, PAGE, pageWith } from "./frozen.ts";
import { tableOf } from "./table.ts";

// `npx tsx evidence/experiments/run.ts`: the twelve backs anew, printed; `--write` freezes them and puts the tables into the page.
const text = frozenText();
if (process.argv.includes("--write")) {
  writeFileSync(FROZEN_FILE, text);
  writeFileSync(PAGE, pageWith(readFileSync(PAGE, "utf8"), frozen()));
}
console.log(tableOf(JSON.parse(text)));
