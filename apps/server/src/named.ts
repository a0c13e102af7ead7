import { createServer as createPlain, type IncomingMessage, type ServerResponse } from "node:http";
import { createServer } from "node:https";
import { homedir } from "node:os";
import { join } from "node:path";
import { renderUnicodeCompact } from "uqr";
import { giverFor, type Place } from "./giver.ts";
import { HEADERS } from "./headers.ts";
import { INSTALL_LOOK, installPage } from "./install-page.ts";
import { installTag } from "./install-words.ts";
import { close, listen } from "./listen.ts";
import { ownAuthority } from "./own-authority.ts";

/** Beside the port that this machine uses itself, so that a start without the invented practice is another origin on phones too. */
const portsBeside = (port: number) => ({ secure: port + 1, plain: port + 2 });
const EVERYWHERE = "0.0.0.0";

export interface Named {
  readonly appUrl: string;
  readonly installUrl: string;
  readonly authority: string;
  /** What the person at this machine is told, with the code to hold a phone's camera at. */
  readonly says: string;
  close(): Promise<void>;
}

/**
 * Serves the page to this network under a name, over a connection that phones can trust: without one a page has no worker, camera or
 * kept storage. `folder` holds the authority between starts.
 */
export async function startNamed(
  place: Place,
  name: string,
  folder = join(homedir(), ".treewright"),
  ports = portsBeside(place.port),
): Promise<Named> {
  const { authority, shown } = await ownAuthority(folder, name, Date.now());
  const secure = createServer({ key: shown.key, cert: shown.certificate }, giverFor(place, [name]));
  const securePort = await listen(secure, ports.secure, EVERYWHERE);
  const appUrl = `https://${name}:${securePort}/`;
  const plain = createPlain((request, response) =>
    giveInstall(
      request,
      response,
      authority.certificate,
      installPage(name, appUrl, installTag(request.headers["accept-language"])),
    ),
  );
  const installUrl = `http://${name}:${await listen(plain, ports.plain, EVERYWHERE)}/`;
  return {
    appUrl,
    installUrl,
    authority: authority.certificate,
    says: says(installUrl, appUrl, folder),
    close: async () => {
      await close(secure);
      await close(plain);
    },
  };
}

/** Over plain http only what makes the phone trust the machine: a page with its look, and the authority; nothing of the practice. */
function giveInstall(
  request: IncomingMessage,
  response: ServerResponse,
  authority: string,
  page: string,
): void {
  const given: ReadonlyMap<string, readonly [type: string, body: string]> = new Map([
    ["/", ["text/html; charset=utf-8", page]],
    ["/look.css", ["text/css; charset=utf-8", INSTALL_LOOK]],
    ["/authority.crt", ["application/x-x509-ca-cert", authority]],
  ]);
  const reads = request.method === "GET" || request.method === "HEAD";
  const found = reads ? given.get(request.url ?? "") : undefined;
  if (!found) {
    response.writeHead(404, { ...HEADERS, "Content-Type": "text/plain" }).end("There is nothing here.\n");
    return;
  }
  response.writeHead(200, { ...HEADERS, "Content-Type": found[0] });
  response.end(request.method === "HEAD" ? undefined : found[1]);
}

const says = (installUrl: string, appUrl: string, folder: string): string =>
  `For phones of this network: ${appUrl}
First, once a phone: hold its camera at this code, or open ${installUrl}

${renderUnicodeCompact(installUrl)}

The name must lead to this machine in your network. The authority's key lies in ${folder}; keep it to yourself.
Stop it with Ctrl-C.
`;
