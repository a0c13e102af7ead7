import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import AxeBuilder from "@axe-core/playwright";
import type { Entry } from "@treewright/core/records/entry.ts";
import { pageAt, VISITS_ON_PAGE } from "@treewright/core/report/copy/page.ts";
import { OF_VISIT } from "@treewright/core/survey/recorded/places.ts";
import { type Browser, chromium, type Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { Device, idOf } from "../records/written.ts";
import { HOSTILE, OTHER, PHOTO, recordsWith, SUBJECT, textsOf } from "./told.ts";

/*
 * The page that opens without the app, in Chromium with JavaScript on, from a disk. What this cannot see: another browser, and
 * whether a person reads it with ease.
 */
let browser: Browser;
let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "treewright-copy-"));
  browser = await chromium.launch({
    executablePath: "/usr/bin/chromium",
    args: ["--headless", "--no-sandbox"],
  });
});
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true });
});

const htmlWith = (text: string): string => {
  const papers = new Map([[SUBJECT, [{ name: "Letter", path: `papers/${SUBJECT}-horse-1-letter.pdf` }]]]);
  return textsOf(recordsWith(text), papers, [`${text}: no papers.`]).get("index.html") ?? "";
};

async function opened(html: string, width = 390): Promise<{ page: Page; asked: string[] }> {
  const file = join(folder, "index.html");
  await writeFile(file, html);
  const context = await browser.newContext({ viewport: { width, height: 844 } });
  const page = await context.newPage();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(pathToFileURL(file).href);
  return { page, asked };
}

describe("the page of a copy", () => {
  it("tells who, where, what was read, agreed and done, and leads to what lies beside it", async () => {
    const { page } = await opened(htmlWith("Avocet"));
    const first = page.locator(`#v-${OTHER}`);
    expect(await first.locator("h2").textContent()).toBe("Curlew");
    const text = (await first.textContent()) ?? "";
    expect(text).toContain("-3.5 mm");
    expect(text).toMatch(/Owner\s*erased/);
    expect(text).toContain("(two said different things)");
    expect(await first.locator("a").getAttribute("href")).toBe(`photos/${PHOTO.hash}.jpg`);
    const second = page.locator(`#v-${SUBJECT}`);
    expect(await second.textContent()).toContain("Agreed and done");
    expect(await second.locator("a").getAttribute("href")).toBe(`papers/${SUBJECT}-horse-1-letter.pdf`);
    await page.context().close();
  });
  it.each(HOSTILE.map((text) => [text.slice(0, 40), text]))(
    "shows %j as text: no script, no request",
    async (_, text) => {
      const html = htmlWith(text);
      // Without its own policy too: what is escaped needs none.
      for (const one of [html, html.replace(/<meta http-equiv[^>]*>/, "")]) {
        const { page, asked } = await opened(one);
        expect(await page.title()).toBe("Visits, copied from Treewright");
        expect(asked).toHaveLength(1);
        expect(
          await page.evaluate(() => ({
            strange: document.querySelectorAll("script, img, iframe, object, embed, link, form, base, svg")
              .length,
            handlers: [...document.querySelectorAll("*")].filter((one) =>
              one.getAttributeNames().some((name) => name.startsWith("on")),
            ).length,
            addresses: [...document.querySelectorAll("a")]
              .map((one) => one.getAttribute("href") ?? "")
              .filter(
                (href) =>
                  !/^(#v-[0-9a-f-]{36}|photos\/[0-9a-f]{64}\.jpg|papers\/[0-9a-f-]{36}-horse-1-letter\.pdf)$/.test(
                    href,
                  ),
              ),
            turns: /[\u202a-\u202e\u2066-\u2069]/.test(document.body.textContent ?? ""),
            wider: document.documentElement.scrollWidth > innerWidth,
            sections: document.querySelectorAll("section").length,
          })),
        ).toEqual({ strange: 0, handlers: 0, addresses: [], turns: false, wider: false, sections: 2 });
        const shown = (await page.locator(`#v-${SUBJECT} h2`).textContent()) ?? "";
        // biome-ignore lint/suspicious/noControlCharactersInRegex: signs that HTML does not allow are left out
        const plain = text.replace(/[\u0000-\u0008]/g, "").replace(/[\u202a-\u202e\u2066-\u2069]/g, "");
        expect(shown.replace(/\[U\+20[0-9A-F]{2}\]/g, "")).toBe(plain);
        await page.context().close();
      }
    },
  );
  it("has the latest visits on it, and leads to the others on pages beside it", async () => {
    const device = new Device(3);
    const all: Entry[] = [];
    const count = VISITS_ON_PAGE + 2;
    for (let n = 0; n < count; n++) {
      const subject = idOf(10_000 + n);
      device.entries = [];
      device.state(OF_VISIT.begun, "2031-04-12T08:00:00.000Z", subject);
      device.state("visit.date", `${2031 - n}-04-12`.padStart(10, "0"), subject);
      device.state("horses[0].name", `Horse ${n}`, subject);
      all.push(...device.entries);
    }
    const texts = textsOf({ entries: all, people: [], photos: [] });
    expect([...texts.keys()].filter((path) => path.endsWith(".html"))).toEqual([
      pageAt(0),
      pageAt(count - 1),
    ]);
    for (const [path, text] of texts) if (path.endsWith(".html")) await writeFile(join(folder, path), text);
    const { page } = await opened(texts.get("index.html") ?? "");
    expect(await page.locator("nav li").count()).toBe(count);
    expect(await page.locator("section").count()).toBe(VISITS_ON_PAGE);
    await page.locator("nav a").last().click();
    expect(new URL(page.url()).pathname).toContain("visits-2.html");
    expect(await page.locator("section:target h2").textContent()).toBe(`Horse ${count - 1}`);
    expect(await page.locator("section").count()).toBe(2);
    await page.getByText("List of all visits").click();
    expect(await page.locator("nav li").count()).toBe(count);
    expect(texts.get("tables/visits.csv")?.split("\r\n")).toHaveLength(count + 2);
    await page.context().close();
  });
  it("asks to run nothing and to fetch nothing, by its own policy", () => {
    expect(htmlWith("Avocet")).toContain(`content="default-src 'none'; style-src 'unsafe-inline'`);
  });
  it("has no barrier, and nothing beside its edge on a phone or in print", async () => {
    for (const width of [390, 820, 1440]) {
      const { page } = await opened(htmlWith("Avocet"), width);
      expect(
        (await new AxeBuilder({ page: page as never }).analyze()).violations.map(({ id }) => id),
      ).toEqual([]);
      await page.emulateMedia({ media: "print" });
      expect(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth)).toBe(false);
      await page.context().close();
    }
  });
});
