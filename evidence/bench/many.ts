import { readdirSync, readFileSync } from "node:fs";
import { mkdtemp, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium, type Page } from "playwright-core";
import { startServer } from "../../apps/server/src/main.ts";
import { builtScript } from "../page/built-script.ts";
import { builtPage } from "../page/served-page.ts";

// `npx tsx evidence/bench/many.ts [VISITS ...]`: a practice of many years on one device, in Chromium with a profile on the disk: opened,
// a horse found, everything copied to one file, and that file brought into an empty profile. Figures with their memory and growth, not
// tests. Main thread slowed four times where it opens and finds; copying runs beside it, as measured. Papers are left out: each takes seconds.

const sizes = process.argv.slice(2).map(Number);
const VISITS = sizes.length > 0 ? sizes : [1000, 3000, 10_000, 30_000];
const ENTRIES_EACH = 67;
const SLOWED = 4;
const PHONE = { width: 390, height: 844 };
const CASES = new URL("../../examples/cases/", import.meta.url);

const root = await builtPage();
const server = await startServer({ root, port: 0 });
const filler = await builtScript(new URL("./many-entry.ts", import.meta.url));
const cases = readdirSync(CASES)
  .filter((name) => name.endsWith(".json"))
  .map((name) => readFileSync(new URL(name, CASES), "utf8"));
const rows: { visits: number; took: Record<string, number> }[] = [];
for (const visits of VISITS) rows.push({ visits, took: await measured(visits) });
const [first, last] = [rows[0], rows.at(-1)];
if (first && last && first !== last)
  for (const name of Object.keys(first.took)) {
    const grows =
      Math.log((last.took[name] ?? 1) / (first.took[name] ?? 1)) / Math.log(last.visits / first.visits);
    console.log(`${name}: grows with the power ${grows.toFixed(2)} of the visits`);
  }
await server.close();
await rm(root, { recursive: true });

async function measured(visits: number): Promise<Record<string, number>> {
  const folder = await mkdtemp(join(tmpdir(), "treewright-many-"));
  // What fills it is no script of the page's.
  const context = await opened(join(folder, "profile"), { bypassCSP: true });
  const page = await at(context, "#/");
  const began = performance.now();
  await page.evaluate(filler);
  const entries: number = await page.evaluate(
    ({ texts, count, each }) => (globalThis as unknown as Filler).evidence.fill(texts, count, each),
    { texts: cases, count: visits, each: ENTRIES_EACH },
  );
  console.log(`\n${visits} visits, ${entries} entries (written in ${seconds(began)} s)`);
  await context.close();

  const again = await opened(join(folder, "profile"));
  const took: Record<string, number> = {};
  // Told as it is measured: what breaks later takes no figure along.
  const note = (name: string, figure: number) => {
    took[name] = figure;
    console.log(`  ${name}: ${figure.toFixed(figure < 10 ? 2 : 0)}`);
  };
  const shown = await slowed(again);
  const start = performance.now();
  await shown.goto(`${server.url}#/`);
  await shown.waitForSelector(".begin");
  note("open, ms", performance.now() - start);
  note("find, ms", await found(shown, `horse ${visits - 7}`));
  note("memory of the page, MB", await heapOf(shown));
  await shown.close();

  const data = await at(again, "#/data");
  await data.uncheck(".tick input");
  const most = watchMemory(folder);
  const copied = performance.now();
  const [download] = await Promise.all([
    data.waitForEvent("download", { timeout: 0 }),
    data.click("button.main"),
  ]);
  const file = join(folder, "copy.zip");
  await download.saveAs(file);
  note("copy, s", Number(seconds(copied)));
  note("copy, most memory of all of the browser, MB", most());
  note("the file, MB", (await stat(file)).size / 1e6);
  await again.close();

  const other = await opened(join(folder, "other"));
  const there = await at(other, "#/data");
  const mostIn = watchMemory(folder);
  const brought = performance.now();
  await there.setInputFiles("input[accept^='.zip']", file);
  await there.getByText("entries were brought in").waitFor({ timeout: 0 });
  note("bring in, s", Number(seconds(brought)));
  note("bring in, most memory of all of the browser, MB", mostIn());
  const said = await there.locator("#bring ~ [role=status]").textContent();
  await other.close();
  console.log(`  ${said}`);
  await rm(folder, { recursive: true });
  return took;
}

interface Filler {
  readonly evidence: { fill(cases: readonly string[], visits: number, each: number): Promise<number> };
}

async function opened(profile: string, { bypassCSP = false } = {}): Promise<BrowserContext> {
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: "/usr/bin/chromium",
    viewport: PHONE,
    acceptDownloads: true,
    bypassCSP,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--no-first-run",
      "--disable-background-networking",
    ],
  });
  // The compiler that runs this file names functions by a helper that a page does not have.
  await context.addInitScript("globalThis.__name = (named) => named");
  return context;
}

async function at(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(server.url + address);
  await page.waitForSelector("main");
  return page;
}

async function slowed(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWED });
  return page;
}

/** From the last letter until the list shows it alone, by the page's own clock, ms. */
function found(page: Page, words: string): Promise<number> {
  return page.evaluate(
    (sought) =>
      new Promise<number>((done) => {
        const field = document.querySelector<HTMLInputElement>(".find input");
        const start = performance.now();
        const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")?.set;
        set?.call(field, sought);
        field?.dispatchEvent(new Event("input", { bubbles: true }));
        const look = () =>
          document.querySelectorAll(".visit-list .visit-row").length === 1
            ? done(performance.now() - start)
            : requestAnimationFrame(look);
        look();
      }),
    words,
  );
}

function heapOf(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      ((performance as unknown as { memory: { usedJSHeapSize: number } }).memory.usedJSHeapSize ?? 0) / 1e6,
  );
}

/** The most that all processes of a profile's browser held at once, MB (proportional set size), looked at four times a second. */
function watchMemory(folder: string): () => number {
  let most = 0;
  const look = () => {
    const kB = processesOf(folder).reduce((sum, id) => sum + pssOf(id), 0);
    most = Math.max(most, kB / 1000);
  };
  const timer = setInterval(look, 250);
  return () => {
    clearInterval(timer);
    return most;
  };
}

/** The browser that has this folder in its command, and all that it started. */
function processesOf(folder: string): readonly string[] {
  const all = readdirSync("/proc").filter((name) => /^\d+$/.test(name));
  const parents = new Map(
    all.map((id) => [id, read(`/proc/${id}/stat`).split(") ")[1]?.split(" ")[1] ?? ""]),
  );
  const own = new Set(all.filter((id) => read(`/proc/${id}/cmdline`).includes(folder)));
  for (let before = -1; before !== own.size; ) {
    before = own.size;
    for (const [id, parent] of parents) if (own.has(parent)) own.add(id);
  }
  return [...own];
}

function pssOf(id: string): number {
  return Number(/^Pss:\s+(\d+)/m.exec(read(`/proc/${id}/smaps_rollup`))?.[1] ?? 0);
}

function read(path: string): string {
  try {
    return readFileSync(path, "utf8");
  } catch {
    // It has ended meanwhile.
    return "";
  }
}

function seconds(since: number): string {
  return ((performance.now() - since) / 1000).toFixed(1);
}
