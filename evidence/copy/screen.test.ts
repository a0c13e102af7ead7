import { createHash } from "node:crypto";
import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { openPack } from "@treewright/zip/read.ts";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { folderWith } from "../cli/run-treewright.ts";
import { copiedOut, phones, recordsIn } from "../visit/phone.ts";

/* "Your data" at the screen, in Chromium. What this cannot see: where a phone puts the file, and another browser. */
const { served, phone } = phones();
const LIMITS = { files: 1000, bytes: 1e9 };

const PHOTO = Uint8Array.from({ length: 20_000 }, (_, at) => (at * 7) % 253);
const HASH = createHash("sha256").update(PHOTO).digest("hex");

/** As if a visit had taken it. */
const putPhoto = (page: Page) =>
  page.evaluate(
    async ({ hash, bytes }) => {
      const base = await new Promise<IDBDatabase>((done) => {
        const opening = indexedDB.open("treewright");
        opening.onsuccess = () => done(opening.result);
      });
      const put = base.transaction("photos", "readwrite").objectStore("photos");
      const content = Uint8Array.from(bytes);
      put.put({ hash, type: "image/jpeg", bytes: content.length, content });
      await new Promise((done) => {
        put.transaction.oncomplete = done;
      });
      base.close();
    },
    { hash: HASH, bytes: [...PHOTO] },
  );

const atData = (page: Page) => page.goto(`${served().url}#/data`);

describe("everything copied at the screen", () => {
  it("comes back on another phone: entries and photo, and its page opens without the app", async () => {
    const { page, hand } = await phone();
    await hand.beginVisit("<script>document.title='ran'</script>");
    await putPhoto(page);
    await atData(page);
    const copy = await copiedOut(page);
    await page.getByText("The file was handed to the browser").waitFor();
    expect(await page.locator(".saved-here").textContent()).toContain("All visits are copied");
    const pack = await openPack(copy, LIMITS);
    expect(await pack.bytesOf(`photos/${HASH}.jpg`, 1e6)).toEqual(PHOTO);

    const other = await phone();
    await atData(other.page);
    const folder = folderWith({});
    const file = join(folder, "copy.zip");
    await writeFile(file, new Uint8Array(await copy.arrayBuffer()));
    await other.page.setInputFiles("input[type=file]", file);
    await other.page.getByText("and 1 photos.").first().waitFor();
    const back = await copiedOut(other.page);
    expect(await (await openPack(back, LIMITS)).bytesOf(`photos/${HASH}.jpg`, 1e6)).toEqual(PHOTO);
    const [sent, kept] = [await recordsIn(copy), await recordsIn(back)].map((text) =>
      readRecords(text.split("\n")),
    );
    if (!sent?.ok || !kept?.ok) throw new Error("both are read");
    const hashes = new Set(kept.records.entries.map(({ hash }) => hash));
    expect(sent.records.entries.filter(({ hash }) => !hashes.has(hash))).toEqual([]);

    await writeFile(join(folder, "index.html"), await pack.bytesOf("index.html", 1e8));
    const reader = await page.context().newPage();
    const asked: string[] = [];
    reader.on("request", (request) => asked.push(request.url()));
    await reader.goto(`file://${join(folder, "index.html")}`);
    expect(await reader.title()).toBe("Visits, copied from Treewright");
    expect(asked).toHaveLength(1);
    expect(await reader.locator("script").count()).toBe(0);
    await page.context().close();
    await other.page.context().close();
  });
  it("holds letters and sheets as far as they were waited for, and says which are not there", async () => {
    const { page } = await phone();
    await atData(page);
    await page.click("button.main");
    await page.getByText(/Letter and sheet of visit 2 of \d+ are being made/).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Go on without the other papers" }).click(),
    ]);
    const pack = await openPack(new Blob([await readFile(await download.path())]), LIMITS);
    const papers = pack.paths.filter((path) => path.startsWith("papers/"));
    expect(papers.length).toBeGreaterThan(1);
    for (const path of papers)
      expect(new TextDecoder().decode((await pack.bytesOf(path, 1e7)).slice(0, 5))).toBe("%PDF-");
    const html = new TextDecoder().decode(await pack.bytesOf("index.html", 1e8));
    for (const path of papers) expect(html).toContain(`href="${path}"`);
    expect(html).toContain("They were not waited for.");
    await page.context().close();
  });
});

describe("a table at the screen", () => {
  it("shows what each row would become, writes nothing before it is confirmed, and then each row once", async () => {
    const { page } = await phone();
    await atData(page);
    const before = await page.getByText("entries,").textContent();
    const hostile = "<img src=x onerror=\"document.title='ran'\">";
    const table = `\ufeffPferd;Besitzer;Stall\nCurlew;Ottoline Quarrender;Low Byre\n;Nobody;\n"${hostile.replaceAll('"', '""')}";=1+1;\n`;
    const file = join(folderWith({ "t.csv": table }), "t.csv");
    const input = "input[accept*=csv]";
    await page.setInputFiles(input, file);
    await page.getByText("2 rows would each begin a visit; 1 are refused. Nothing is written yet.").waitFor();
    expect(await page.locator(".row-refused").textContent()).toContain("no horse");
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await page.getByRole("button", { name: "Write nothing" }).click();
    expect(await page.getByText("entries,").textContent()).toBe(before);
    await page.setInputFiles(input, file);
    await page.getByRole("button", { name: "Begin these 2 visits" }).click();
    await page.getByText("2 visits were begun.").waitFor();
    await page.setInputFiles(input, file);
    await page.getByText("0 rows would each begin a visit; 3 are refused").waitFor();
    expect(await page.title()).toBe("Treewright");
    await page.goto(`${served().url}#/`);
    await page.locator(".visit-row", { hasText: hostile }).waitFor();
    await page.context().close();
  });
  it("of many owners leaves a list of people in which each is found by letters", async () => {
    const { page } = await phone();
    await atData(page);
    const rows = Array.from({ length: 60 }, (_, n) => `Horse ${n};Owner ${n} Ödholm`);
    const buffer = Buffer.from(["horse;owner", ...rows].join("\n"));
    await page.setInputFiles("input[accept^='.csv']", { name: "table.csv", mimeType: "text/csv", buffer });
    await page.getByRole("button", { name: "Begin these 60 visits" }).click();
    await page.getByText("60 visits were begun.").waitFor();
    await page.goto(served().url);
    await atData(page);
    await page.getByText(/^50 of \d+ names stand here/).waitFor();
    expect(await page.locator(".person").count()).toBe(50);
    await page.fill("#people ~ .find input", "owner 59 odholm");
    await page.waitForFunction(() => document.querySelectorAll(".person").length === 1);
    await page.getByRole("button", { name: "Erase Owner 59 Ödholm" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Erase for good" }).click();
    await page.waitForFunction(() => document.querySelectorAll(".person").length === 0);
    await page.context().close();
  });
  it("that is not UTF-8 is refused in words", async () => {
    const { page } = await phone();
    await atData(page);
    const file = join(folderWith({}), "t.csv");
    await writeFile(file, Buffer.from("Pferd;Besitzer\nCurlew;M\u00fcller\n", "latin1"));
    await page.setInputFiles("input[accept*=csv]", file);
    await page.getByText("letters that are not UTF-8").waitFor();
    await page.context().close();
  });
});

describe("a copy that is too old", () => {
  it("is called for at the first screen and in the saved line, until one is made", async () => {
    const { page, hand } = await phone();
    const NINE_DAYS_MS = 9 * 86_400_000;
    await page.clock.install({ time: Date.now() + NINE_DAYS_MS });
    await page.goto(`${served().url}?again#/`);
    await hand.atFirstScreen();
    const says = "Something here has not been copied for 9 days.";
    expect(await page.locator(".copy-old").textContent()).toContain(says);
    await page.locator(".copy-old a").click();
    await page.getByText(says).waitFor();
    await copiedOut(page);
    await page.getByText("All visits are copied").waitFor();
    await page.goto(`${served().url}#/`);
    await hand.atFirstScreen();
    expect(await page.locator(".copy-old").count()).toBe(0);
    await page.context().close();
  });
});
