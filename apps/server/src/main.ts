import { createServer } from "node:http";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { giverFor, type Place } from "./giver.ts";
import { close, listen } from "./listen.ts";
import { startNamed } from "./named.ts";
import { readWords } from "./start-words.ts";

const HOST = "127.0.0.1";
const USUAL_PORT = 4310;
/** Another port is another origin to a browser: what lies in its store under the usual one is not touched. */
const FRESH_PORT = 4320;

export interface Running {
  readonly url: string;
  close(): Promise<void>;
}

/** Serves the built page and the invented cases, to this machine only. Takes a free port when `port` is taken. */
export async function startServer(place: Place): Promise<Running> {
  const server = createServer(giverFor(place, [HOST, "localhost"]));
  const taken = await listen(server, place.port).catch(() => listen(server, 0));
  return { url: `http://${HOST}:${taken}/`, close: () => close(server) };
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  run().catch((error: unknown) => {
    process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 1;
  });
}

async function run(): Promise<void> {
  const root = fileURLToPath(new URL("../../../", import.meta.url));
  const { name, fresh } = readWords(process.argv.slice(2));
  const place = { root, port: fresh ? FRESH_PORT : USUAL_PORT, fresh };
  const { url } = await startServer(place);
  process.stdout.write(`Treewright stands at ${url}\n`);
  if (name === undefined) process.stdout.write("It is served to this machine only. Stop it with Ctrl-C.\n");
  else process.stdout.write((await startNamed(place, name)).says);
}
