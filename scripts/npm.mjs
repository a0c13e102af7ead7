// npm without a shell: the Node that runs this, and npm's own program text. On Windows `npm` is a script of the shell's, which no process can start.
import { existsSync, realpathSync } from "node:fs";
import { basename, delimiter, dirname, join } from "node:path";

const PROGRAM = "npm-cli.js";

/** Where npm's program may lie: the npm that called us, beside this Node (Windows, elsewhere), and behind the name on the path. */
function* places() {
  yield process.env.npm_execpath ?? "";
  const beside = dirname(process.execPath);
  yield join(beside, "node_modules/npm/bin", PROGRAM);
  yield join(beside, "../lib/node_modules/npm/bin", PROGRAM);
  for (const folder of (process.env.PATH ?? "").split(delimiter)) {
    const named = join(folder, "npm");
    if (existsSync(named)) yield realpathSync(named);
    yield join(folder, "node_modules/npm/bin", PROGRAM);
  }
}

/** Arguments for `process.execPath` that run npm with `args`. Throws when there is no npm on this machine. */
export function npm(args) {
  for (const place of places()) if (basename(place) === PROGRAM && existsSync(place)) return [place, ...args];
  throw new Error(`npm was not found: no ${PROGRAM} beside ${process.execPath} or on the path`);
}
