// npm run docs: writes the pages that are made from the program; with --check only says which are not current.
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describeTables } from "../core/src/report/copy/tables.ts";
import { describeCase, describeJob, describeStock } from "../core/src/survey/describe.ts";
import { accessPage } from "./docs/access-page.ts";
import { commandsPage } from "./docs/commands-page.ts";
import { readmeWithIdea } from "./docs/idea.ts";
import { limitsPage } from "./docs/limits-page.ts";
import { root } from "./docs/root.ts";

const pages: Readonly<Record<string, () => string>> = {
  "docs/reference/case-file.md": describeCase,
  "docs/reference/stock-file.md": describeStock,
  "docs/reference/job-file.md": describeJob,
  "docs/reference/tables.md": describeTables,
  "docs/reference/commands.md": commandsPage,
  "docs/reference/limits.md": limitsPage,
  "docs/reference/accessibility.md": accessPage,
  "README.md": readmeWithIdea,
};

const isCheck = process.argv.includes("--check");
for (const [path, write] of Object.entries(pages)) {
  const full = join(root, path);
  const text = write();
  if (existsSync(full) && readFileSync(full, "utf8") === text) continue;
  if (isCheck) {
    console.log(`${path} is not what the program says now: npm run docs`);
    process.exitCode = 1;
  } else {
    writeFileSync(full, text);
    console.log(`written: ${path}`);
  }
}
