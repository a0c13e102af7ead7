import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { build } from "vite";
import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import { letterOf } from "../../core/src/report/letter.ts";
import { sheetOf } from "../../core/src/report/sheet.ts";
import { templateOf } from "../../core/src/report/template.ts";
import { letter, sheet, template } from "./samples.ts";

/*
 * The bundle that a page would load, in a real browser: the same bytes as in Node, from one origin.
 * What this cannot see: a browser that is not of Chromium's family.
 */

const TYPES: { readonly [end: string]: string } = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".woff": "font/woff",
};

async function served(folder: string) {
  const server = createServer((request, response) => {
    const path = request.url === "/" ? "/index.html" : (request.url ?? "/");
    readFile(join(folder, path)).then(
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
    close: () => new Promise((resolve) => server.close(resolve)),
  };
}

test("Chromium paints the same bytes as Node, and asks only its own origin", async () => {
  const folder = await mkdtemp(join(tmpdir(), "treewright-paper-"));
  const entry = fileURLToPath(new URL("./browser-entry.ts", import.meta.url));
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
  const { origin, close } = await served(out);
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--no-sandbox", "--disable-gpu"],
  });
  try {
    const page = await browser.newPage();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url()));
    await page.goto(origin);
    await page.waitForFunction("typeof paintAll === 'function'");
    expect(asked.some((url) => url.endsWith(".woff"))).toBe(false);
    const painted = await page.evaluate<Record<string, number[]>>("paintAll()");
    const paper = await paperInNode();
    const here = {
      template: templateOf(template(232), paper.measure),
      letter: letterOf(letter(), paper.measure),
      sheet: sheetOf(sheet(), paper.measure),
    };
    for (const [kind, document] of Object.entries(here)) {
      const bytes = Buffer.from(await paper.paint(document));
      console.log(`${kind}: ${bytes.length} bytes in Node, ${painted[kind]?.length} in Chromium`);
      expect(Buffer.compare(Buffer.from(painted[kind] ?? []), bytes)).toBe(0);
    }
    for (const url of asked) expect(url.startsWith(origin) || url.startsWith("data:")).toBe(true);
  } finally {
    await browser.close();
    await close();
    await rm(folder, { recursive: true });
  }
});
