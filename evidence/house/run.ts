/** Prints every broken house rule; exit 1 when there is one. Long files are listed, and pass. */
import { longFile } from "./plain-texts.ts";
import { unportableNames } from "./portable-names.ts";
import { houseRules } from "./rules.ts";
import { projectPaths, projectTexts } from "./sources.ts";

const files = projectTexts();
const findings = [
  ...files.flatMap((file) => houseRules.flatMap((rule) => rule(file))),
  ...unportableNames(projectPaths()),
];
for (const { path, line, says } of findings) console.log(`${path}:${line}  ${says}`);

for (const { path, text } of files) {
  const lines = text.split("\n").length - 1;
  if (/\.tsx?$/.test(path) && lines > longFile) console.log(`long: ${path}, ${lines} lines`);
}
console.log(`house rules: ${files.length} files read, ${findings.length} places to mend`);
process.exitCode = findings.length === 0 ? 0 : 1;
