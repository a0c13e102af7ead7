import type { IncomingMessage, ServerResponse } from "node:http";
import { resolve } from "node:path";
import { type Given, give } from "./answer-request.ts";
import { HEADERS } from "./headers.ts";
import { shelf } from "./shelf.ts";

/** `root`: the repository, with the built page in `apps/web/dist` and the cases in `examples/cases`. */
export interface Place {
  readonly root: string;
  readonly port: number;
  /** Without the invented practice. */
  readonly fresh?: boolean;
}

/** What is given under an address, to a request that asks for this server by one of its own names. */
export function giverFor({ root, fresh }: Place, names: readonly string[]) {
  const page = shelf(resolve(root, "apps/web/dist"));
  // A folder that is not there is an empty shelf.
  const examples = shelf(resolve(root, fresh ? "examples/none" : "examples/cases"));
  return (request: IncomingMessage, response: ServerResponse): void => {
    respond(request, response, names, () => give(request.url ?? "", page, examples)).catch(() =>
      response.destroy(),
    );
  };
}

async function respond(
  request: IncomingMessage,
  response: ServerResponse,
  names: readonly string[],
  look: () => Promise<Given>,
): Promise<void> {
  const given = refusal(request, names) ?? (await look());
  response.writeHead(given.status, {
    ...HEADERS,
    "Content-Type": given.type,
    "Content-Length": given.body.length,
    "Cache-Control": given.keep ? "public, max-age=31536000, immutable" : "no-cache",
  });
  response.end(request.method === "HEAD" ? undefined : given.body);
}

/** Only reading, and only under this server's own names: another site's name that points here finds nothing. */
function refusal(request: IncomingMessage, names: readonly string[]): Given | undefined {
  const refuse = (status: number, words: string): Given => ({
    status,
    type: "text/plain; charset=utf-8",
    body: Buffer.from(`${words}\n`),
    keep: false,
  });
  if (request.method !== "GET" && request.method !== "HEAD")
    return refuse(405, "This server only gives; it takes nothing.");
  const name = (request.headers.host ?? "").replace(/:\d+$/, "");
  return names.includes(name)
    ? undefined
    : refuse(403, `This server answers to ${names.join(" and ")} only.`);
}
