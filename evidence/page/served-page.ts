import { cp, mkdir, mkdtemp, rm, symlink } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";
import { startServer } from "../../apps/server/src/main.ts";
import { buildPage } from "../../scripts/page.mjs";

const REPOSITORY = fileURLToPath(new URL("../../", import.meta.url));

/** The page of one case file by itself. */
export const BENCH = "bench.html";

export interface ServedPage {
  readonly url: string;
  readonly browser: Browser;
  /** The bench, or the page at a path: a fresh one with nothing kept from another, and a list of every address it asked for. */
  open(
    path?: string,
    size?: { width: number; height: number },
  ): Promise<{ page: Page; asked: string[]; faults: string[] }>;
  /** Where a file of the built page lies. */
  file(name: string): string;
  /** Takes the server away, as where there is no signal. */
  down(): Promise<void>;
  close(): Promise<void>;
}

/** A folder of its own with the built page, built once for all, and the invented cases, as a server wants it. */
export async function builtPage(): Promise<string> {
  const root = await mkdtemp(join(tmpdir(), "treewright-page-"));
  await mkdir(join(root, "examples"));
  await symlink(join(REPOSITORY, "examples/cases"), join(root, "examples/cases"));
  if (!buildPage()) throw new Error("the page was not built");
  await cp(join(REPOSITORY, "apps/web/dist"), join(root, "apps/web/dist"), { recursive: true });
  return root;
}

/** Lays the built page into a folder of its own, serves it as `npm start` does, and opens a browser on it. */
export async function servePage({ camera = false } = {}): Promise<ServedPage> {
  const root = await builtPage();
  const server = await startServer({ root, port: 0 });
  const browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
      // Chromium's made camera: a moving pattern, and nobody is asked.
      ...(camera ? ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"] : []),
    ],
  });
  return {
    url: server.url,
    browser,
    open: (path = BENCH, size = { width: 1440, height: 900 }) => openOn(browser, server.url + path, size),
    file: (name) => join(root, "apps/web/dist", name),
    down: () => server.close(),
    close: async () => {
      await browser.close();
      await server.close().catch(() => undefined);
      await rm(root, { recursive: true });
    },
  };
}

async function openOn(browser: Browser, address: string, viewport: { width: number; height: number }) {
  const context = await browser.newContext({ viewport, acceptDownloads: true });
  const page = await context.newPage();
  const asked: string[] = [];
  const faults: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  page.on("pageerror", (error) => faults.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(message.text());
  });
  await page.goto(address);
  return { page, asked, faults };
}
