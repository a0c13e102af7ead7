import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { build } from "vite";

const TYPES: { readonly [end: string]: string } = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".woff": "font/woff",
};

/** Bundles one entry as the page would be, and serves it on this machine. */
export async function serveEntry(entry: string): Promise<{ origin: string; close(): Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), "treewright-entry-"));
  await writeFile(
    join(folder, "index.html"),
    `<!doctype html><link rel="icon" href="data:," /><script type="module" src="${entry}"></script>`,
  );
  const out = join(folder, "out");
  await build({
    root: folder,
    configFile: false,
    logLevel: "error",
    build: { outDir: out, chunkSizeWarningLimit: 600 },
  });
  const server = createServer((request, response) => {
    const path = request.url === "/" ? "/index.html" : (request.url ?? "/");
    readFile(join(out, path)).then(
      (bytes) =>
        response.setHeader("content-type", TYPES[extname(path)] ?? "application/octet-stream").end(bytes),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("the server has no port");
  return {
    origin: `http://127.0.0.1:${address.port}`,
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await rm(folder, { recursive: true });
    },
  };
}
