import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.ts";

const begin = "<!-- idea: made by `npm run docs` from examples/idea.ts -->";
const end = "<!-- idea ends -->";

function run(): string {
  const words = ["--import", "tsx", "examples/idea.ts"];
  const done = spawnSync(process.execPath, words, { cwd: root, encoding: "utf8" });
  if (done.status !== 0) throw new Error(`examples/idea.ts fails:\n${done.stderr}`);
  return done.stdout.trimEnd();
}

/** The README with the idea in twenty lines as they stand in examples/idea.ts, and what they print. */
export function readmeWithIdea(): string {
  const readme = readFileSync(join(root, "README.md"), "utf8");
  const [before, rest] = readme.split(begin);
  const after = rest?.split(end)[1];
  if (before === undefined || after === undefined)
    throw new Error(`README.md: the marks "${begin}" and "${end}" are gone`);
  const code = readFileSync(join(root, "examples/idea.ts"), "utf8").trimEnd();
  return `${before}${begin}\n\n\`\`\`ts\n${code}\n\`\`\`\n\n\`\`\`text\n${run()}\n\`\`\`\n\n${end}${after}`;
}
