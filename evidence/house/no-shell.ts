import { z } from "zod";
import { findAll, type HouseRule } from "./finding.ts";

/** One program and plain words after it: what every shell, and Windows's too, reads in the same way. */
const PLAIN_WORDS = /^[a-z][\w-]*( [\w./:@=,+-]+)*$/;
/** A word before the program that sets a variable is the Unix shells' own. */
const scripts = z.looseObject({ scripts: z.record(z.string(), z.string()).default({}) });

/** Scripts of a package.json say the same to every shell: no signs between commands, no variables, no patterns, no quotes. */
export const scriptsNeedNoShell: HouseRule = ({ path, text }) => {
  if (!/(^|\/)package\.json$/.test(path)) return [];
  return Object.entries(scripts.parse(JSON.parse(text)).scripts)
    .filter(([, says]) => !PLAIN_WORDS.test(says))
    .map(([name]) => ({
      path,
      line: text.slice(0, text.indexOf(`"${name}"`)).split("\n").length,
      says: `"${name}" needs a shell that not every machine has: let it be \`node scripts/...mjs\`, and start programs there`,
    }));
};

/** Names that start a program through a shell, or a program that is a script of the shell's on Windows. */
const THROUGH_SHELL =
  /\bshell: (true|["'`])|\bexecSync\(|\bexec\((?=["'`])|\b(spawn|spawnSync|execFile|execFileSync)\(\s*"(npm|npx|tsx)"/g;

/** What starts a program names it and its arguments one by one. */
export const startsWithoutShell: HouseRule = (file) => {
  if (!/\.(ts|tsx|mjs)$/.test(file.path)) return [];
  return findAll(
    file,
    THROUGH_SHELL,
    (word) =>
      `"${word}" goes through a shell: start process.execPath with a list of arguments (npm: scripts/npm.mjs)`,
  );
};
