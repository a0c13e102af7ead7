import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { type Given, give } from "./answer-request.ts";
import { HEADERS } from "./headers.ts";
import { shelf } from "./shelf.ts";

const HOST = "127.0.0.1";
const USUAL_PORT = 4310;

/** `root`: the repository, with the built page in `apps/web/dist` and the cases in `examples/cases`. */
export interface Place {
  readonly root: string;
  readonly port: number;
}

export interface Running {
  readonly url: string;
  close(): Promise<void>;
}

/** Serves the built page and the invented cases, to this machine only. Takes a free port when `port` is taken. */
export async function startServer({ root, port }: Place): Promise<Running> {
  const page = shelf(resolve(root, "apps/web/dist"));
  const examples = shelf(resolve(root, "examples/cases"));
  const server = createServer((request, response) => {
    respond(request, response, () => give(request.url ?? "", page, examples)).catch(() => response.destroy());
  });
  const taken = await listen(server, port).catch(() => listen(server, 0));
  return { url: `http://${HOST}:${taken}/`, close: () => close(server) };
}

async function respond(
  request: IncomingMessage,
  response: ServerResponse,
  look: () => Promise<Given>,
): Promise<void> {
  const given = refusal(request) ?? (await look());
  response.writeHead(given.status, {
    ...HEADERS,
    "Content-Type": given.type,
    "Content-Length": given.body.length,
    "Cache-Control": given.keep ? "public, max-age=31536000, immutable" : "no-cache",
  });
  response.end(request.method === "HEAD" ? undefined : given.body);
}

/** Only reading, and only under this machine's own names: another site's name that points here finds nothing. */
function refusal(request: IncomingMessage): Given | undefined {
  const refuse = (status: number, words: string): Given => ({
    status,
    type: "text/plain; charset=utf-8",
    body: Buffer.from(`${words}\n`),
    keep: false,
  });
  if (request.method !== "GET" && request.method !== "HEAD")
    return refuse(405, "This server only gives; it takes nothing.");
  const name = (request.headers.host ?? "").replace(/:\d+$/, "");
  return name === HOST || name === "localhost"
    ? undefined
    : refuse(403, "This server answers to 127.0.0.1 and localhost only.");
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((done, failed) => {
    server.once("error", failed);
    server.listen(port, HOST, () => {
      server.off("error", failed);
      const address = server.address();
      if (address === null || typeof address === "string") failed(new Error("no port"));
      else done(address.port);
    });
  });
}

function close(server: Server): Promise<void> {
  server.closeAllConnections();
  return new Promise((done) => server.close(() => done()));
}

if (process.argv[1] !== undefined && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  const root = fileURLToPath(new URL("../../../", import.meta.url));
  const { url } = await startServer({ root, port: USUAL_PORT });
  process.stdout.write(
    `Treewright stands at ${url}\nIt is served to this machine only. Stop it with Ctrl-C.\n`,
  );
}
