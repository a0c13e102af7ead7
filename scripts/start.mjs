// npm start: packages, page, then the server on this machine only. The server prints the address.
import { spawn } from "node:child_process";
import { join } from "node:path";
import { buildPage } from "./page.mjs";
import { makeReady, root } from "./ready.mjs";

try {
  makeReady();
  if (!buildPage()) throw new Error("the page could not be built; the lines above say why");
} catch (error) {
  console.error(error.message);
  process.exit(1);
}

const server = spawn(
  process.execPath,
  ["--import", "tsx", join(root, "apps/server/src/main.ts"), ...process.argv.slice(2)],
  { cwd: root, stdio: "inherit" },
);
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => server.kill(signal));
// npm does not pass a signal on to what it started: when it is gone, nobody could stop the server by the name they know.
const caller = process.ppid;
if (process.env.npm_lifecycle_event) {
  setInterval(() => process.ppid === caller || server.kill("SIGTERM"), 1000).unref();
}
server.on("exit", (code) => process.exit(code ?? 0));
