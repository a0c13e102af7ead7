import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { phones, SPREAD } from "./phone.ts";

/*
 * Files that come from another app and go to one. What this cannot see: a phone's own list of apps, and which files its browser lets
 * through. The hand-over is played by a request of the same form as the browser sends; sending on by a stand-in that notes what it gets.
 */
const { phone, served, exported } = phones({ camera: true });

const CASE = readFileSync(new URL("../../examples/cases/01-sore-to-the-touch.json", import.meta.url), "utf8");

/** As the browser hands a file over: a form sent to the address that the manifest names, answered by the service worker. */
async function handOver(
  page: Page,
  name: string,
  type: string,
  content: readonly number[] | string,
): Promise<void> {
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  await page.evaluate(
    async ([called, kind, bytes]) => {
      const part = typeof bytes === "string" ? bytes : Uint8Array.from(bytes);
      const form = new FormData();
      form.append("file", new File([part], called, { type: kind }));
      await fetch("/taken-in", { method: "POST", body: form });
    },
    [name, type, content] as const,
  );
  await page.evaluate(() => {
    location.hash = "#/taken-in";
  });
  await page.locator("h2", { hasText: name }).waitFor();
}

/** A picture that the page itself drew: 64 by 48 of one grey. */
const picture = (page: Page): Promise<number[]> =>
  page.evaluate(async () => {
    const canvas = document.createElement("canvas");
    canvas.width = 64;
    canvas.height = 48;
    const pen = canvas.getContext("2d");
    if (pen) pen.fillStyle = "#777";
    pen?.fillRect(0, 0, 64, 48);
    const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/png"));
    return blob ? [...new Uint8Array(await blob.arrayBuffer())] : [];
  });

/** Opened once more, so that the service worker has the page. */
async function withWorker() {
  const opened = await phone();
  await opened.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await opened.page.reload();
  await opened.hand.atFirstScreen();
  return opened;
}

describe("handed over by another app", () => {
  it("the manifest names the address that the worker answers", async () => {
    const manifest = await (await fetch(`${served().url}manifest.webmanifest`)).json();
    expect(manifest.share_target).toMatchObject({ action: "/taken-in", method: "POST" });
  });

  it("a case file begins a visit with every reading as it was typed", async () => {
    const { page, hand, faults } = await withWorker();
    await handOver(page, "from a colleague.json", "application/json", CASE);
    await page.locator("button", { hasText: "Begin a visit from it" }).click();
    await page.waitForSelector(".dock");
    const title = JSON.parse(CASE).horses[0].name;
    expect(await page.locator(".visit-head").textContent()).toContain(title);
    await page.goto(`${served().url}#/taken-in`);
    await page.getByText("Nothing waits here").waitFor();
    await page.goto(served().url);
    await hand.atFirstScreen();
    expect(await page.locator("a", { hasText: "another app waits" }).count()).toBe(0);
    expect(faults).toEqual([]);
    await page.close();
  });

  it("what is no case is refused where it lies, nothing is written, and it waits over a restart", async () => {
    const { page, hand } = await withWorker();
    await handOver(page, "not a case.json", "text/plain", CASE.replace(/"version": \d+/, '"version": 99'));
    const before = (await exported(page)).split("\n").length;
    await page.goto(served().url);
    await hand.atFirstScreen();
    await page.locator("a", { hasText: "1 file of another app waits" }).click();
    await page.locator("button", { hasText: "Begin a visit from it" }).click();
    expect(await page.locator(".problems li").first().textContent()).toMatch(/version.*99.*[Aa]llowed/);
    expect((await exported(page)).split("\n").length).toBe(before);
    await page.goto(`${served().url}#/taken-in`);
    await page.locator("button", { hasText: "Do not keep it" }).click();
    await page.getByText("Nothing waits here").waitFor();
    await page.close();
  });

  it("a photo goes to the visit and the question that are named, and stands at its step", async () => {
    const { page, hand, faults } = await withWorker();
    await hand.beginVisit("Curlew");
    const bytes = await picture(page);
    await handOver(page, "label.png", "image/png", bytes);
    const visit = page.getByLabel("It belongs to the visit of");
    const curlew = visit.locator("option", { hasText: "Curlew, saddle, " });
    await visit.selectOption(await curlew.getAttribute("value"));
    const shows = page.getByLabel("It shows");
    const spread = shows.locator("option", { hasText: SPREAD }).first();
    await shows.selectOption(await spread.getAttribute("value"));
    await page.locator("button", { hasText: "Keep this photo" }).click();
    await page.getByText("Nothing waits here").waitFor();
    await page.goBack();
    await page.waitForSelector(".dock");
    await hand.goTo("Head and points");
    const shown = page.locator(".photo-key img").first();
    await shown.waitFor();
    expect(await shown.getAttribute("alt")).toContain(SPREAD);
    expect(faults).toEqual([]);
    await page.close();
  });

  it("a file that only calls itself a picture is refused, and waits", async () => {
    const { page, hand } = await withWorker();
    await hand.beginVisit("Curlew");
    await handOver(page, "broken.png", "image/png", "no picture");
    await page.getByLabel("It shows").selectOption({ index: 1 });
    await page.locator("button", { hasText: "Keep this photo" }).click();
    expect(await page.locator(".taken-photo .problem").textContent()).toContain("JPEG, PNG, WebP");
    expect(await page.locator("h2", { hasText: "broken.png" }).count()).toBe(1);
    await page.close();
  });
});

describe("sent on to another app", () => {
  it("case file: as JSON where the device lets it, else as plain text of the same content", async () => {
    const { page, hand } = await phone();
    await page.addInitScript(() => {
      const noted = { may: "application/json", got: [] as string[] };
      Object.assign(globalThis, { noted });
      Object.assign(navigator, {
        canShare: ({ files }: ShareData) => files?.[0]?.type === noted.may,
        share: async ({ files = [] }: ShareData) => {
          for (const file of files) noted.got.push(file.name, file.type, await file.text());
        },
      });
    });
    await page.reload();
    await hand.atFirstScreen();
    await page.locator(".visit-row").first().click();
    await page.waitForSelector(".dock");
    const got = async (may: string) => {
      await page.evaluate((type) => {
        (globalThis as unknown as { noted: { may: string; got: string[] } }).noted.may = type;
      }, may);
      await hand.goTo("Head and points");
      await hand.goTo("What to do");
      await page.locator("button", { hasText: "Send on: case file" }).click();
      await page.getByText("Handed to the other app").waitFor();
      return page.evaluate(() => (globalThis as unknown as { noted: { got: string[] } }).noted.got.splice(0));
    };
    const [name, type, text = ""] = await got("application/json");
    expect([name, type]).toEqual([expect.stringMatching(/\.json$/), "application/json"]);
    expect(JSON.parse(text).format).toBe("treewright-case");
    expect(await got("text/plain")).toEqual([expect.stringMatching(/\.json\.txt$/), "text/plain", text]);
    await page.close();
  });
});
