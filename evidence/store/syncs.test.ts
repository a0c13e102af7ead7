import { chmod, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { expect, test } from "vitest";
import { serveEntry } from "../page/served-entry.ts";

/*
 * A killed process says nothing of a dead battery: so the browser's own calls to the system are counted while it keeps entries on a
 * disk. What this cannot see: whether a phone's storage does what it is asked.
 */
const ENTRIES = 25;

/** Calls that sync a file, while so many entries are kept one by one, by a browser with a profile on the disk. */
async function syncsWhile(before: string): Promise<number> {
  const folder = await mkdtemp(join(tmpdir(), "treewright-syncs-"));
  const calls = join(folder, "calls");
  const wrapper = join(folder, "chromium");
  await writeFile(
    wrapper,
    `#!/bin/sh\nexec strace -f -qq -e trace=fsync,fdatasync -o ${calls} /usr/bin/chromium "$@"\n`,
  );
  await chmod(wrapper, 0o755);
  const served = await serveEntry(fileURLToPath(new URL("./browser-entry.ts", import.meta.url)));
  const context = await chromium.launchPersistentContext(join(folder, "profile"), {
    executablePath: wrapper,
    args: ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking"],
  });
  const count = async () =>
    (await readFile(calls, "utf8")).split("\n").filter((line) => /sync\(/.test(line)).length;
  try {
    const page = await context.newPage();
    await page.goto(served.origin);
    await page.waitForFunction("typeof keepOneByOne === 'function'");
    if (before !== "") await page.evaluate(before);
    await page.evaluate("keepOneByOne(1)");
    const start = await count();
    await page.evaluate(`keepOneByOne(${ENTRIES})`);
    return (await count()) - start;
  } finally {
    await context.close();
    await served.close();
    await rm(folder, { recursive: true, force: true });
  }
}

test("each entry kept is synced before it counts as kept; without being asked to, hardly any is", async () => {
  const strict = await syncsWhile("");
  const relaxed = await syncsWhile("relax()");
  console.log(`${ENTRIES} entries: ${strict} syncs, ${relaxed} where nothing was asked`);
  expect(strict).toBeGreaterThanOrEqual(ENTRIES);
  expect(relaxed).toBeLessThan(ENTRIES / 2);
});
