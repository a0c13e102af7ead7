import { grouped } from "@treewright/core/engine/grouped.ts";
import { sha256Hex } from "@treewright/core/engine/hash.ts";
import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import { photosOf } from "@treewright/core/survey/recorded/photos.ts";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { FittersHand } from "./hand.ts";
import { phones, SPREAD } from "./phone.ts";

/*
 * Photos, in Chromium with its made camera (a moving pattern). What this cannot see: a real camera, a phone that puts the page away while
 * its own camera is open, a battery that dies.
 */
const { atHead, exported } = phones({ camera: true });

/** Photos in the store of the page, as fingerprints of what lies there: by name, and worked out anew from the bytes. */
async function kept(page: Page): Promise<readonly { named: string; is: string }[]> {
  const photos = await page.evaluate(async () => {
    const open = indexedDB.open("treewright");
    const base = await new Promise<IDBDatabase>((done) => {
      open.onsuccess = () => done(open.result);
    });
    const all = base.transaction("photos").objectStore("photos").getAll();
    const found = await new Promise<{ hash: string; content: Uint8Array }[]>((done) => {
      all.onsuccess = () => done(all.result);
    });
    base.close();
    return found.map(({ hash, content }) => ({ hash, content: [...content] }));
  });
  return photos.map(({ hash, content }) => ({ named: hash, is: sha256Hex(Uint8Array.from(content)) }));
}

async function cited(page: Page): Promise<readonly string[]> {
  const read = readRecords((await exported(page)).split("\n"));
  if (!read.ok) throw new Error("the records are read");
  const bySubject = grouped(read.records.entries, ({ subject }) => subject);
  return [...bySubject.values()].flatMap((entries) => {
    const standing = standingOf(entries, GRAPH_KINDS);
    return photosOf(
      new Map(
        [...standing].map(
          ([
            at,
            {
              entries: [one],
            },
          ]) => [at, one?.value],
        ),
      ),
    ).map(({ hash }) => hash);
  });
}

async function openCamera(page: Page): Promise<void> {
  await page.locator(".step-keys button", { hasText: "Photo" }).first().click();
  await page.locator(".camera button.main").waitFor();
}

describe("photos", () => {
  it("three in a row are kept, each under its own fingerprint, and cited after that", async () => {
    const { page, faults } = await atHead();
    await openCamera(page);
    for (const count of ["1 photo is kept", "2 photos are kept", "3 photos are kept"]) {
      await page.locator(".camera button.main").click();
      await page.getByText(count).waitFor();
    }
    await page.getByText("Close the camera").click();
    await page.locator(".photo-key img").nth(2).waitFor();
    const photos = await kept(page);
    expect(photos.length).toBe(3);
    for (const { named, is } of photos) expect(is).toBe(named);
    expect([...(await cited(page))].sort()).toEqual(photos.map(({ named }) => named).sort());
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("one that is withdrawn is no longer shown; undo shows it again, for nothing was removed", async () => {
    const { page, hand } = await atHead();
    await openCamera(page);
    await page.locator(".camera button.main").click();
    await page.getByText("1 photo is kept").waitFor();
    await page.getByText("Close the camera").click();
    await page.locator(".photo-key").click();
    await page.getByText("Withdraw this photo").click();
    await page.locator(".photo-key").waitFor({ state: "detached" });
    await hand.undo();
    await page.locator(".photo-key img").waitFor();
    await page.context().close();
  });

  it("one that is erased is gone from the disk and from a copy; undo does not bring it back", async () => {
    const { page, hand } = await atHead();
    await openCamera(page);
    for (const count of ["1 photo is kept", "2 photos are kept"]) {
      await page.locator(".camera button.main").click();
      await page.getByText(count).waitFor();
    }
    await page.getByText("Close the camera").click();
    await page.locator(".photo-key").nth(1).click();
    await page.locator(".photos figure img").waitFor();
    await page.getByRole("button", { name: "Erase this photo" }).click();
    await page.getByRole("button", { name: "Erase for good" }).click();
    await page.locator(".photo-key").nth(1).waitFor({ state: "detached" });
    const [left] = await kept(page);
    expect(await kept(page)).toHaveLength(1);
    await hand.undo();
    await page.locator(".photo-key").waitFor({ state: "detached" });
    expect(await kept(page)).toEqual([left]);
    const read = readRecords((await exported(page)).split("\n"));
    if (!read.ok) throw new Error("the records are read");
    expect(read.records.photos.map(({ hash }) => hash)).toEqual([left?.named]);
    await page.context().close();
  });

  it("what was typed and not entered is there again after the page was killed with the camera open", async () => {
    const { page, hand } = await atHead();
    await hand.take(SPREAD);
    await hand.press("17");
    await openCamera(page);
    await killed(page);
    const again = await page.context().newPage();
    await again.goto(page.url());
    await new FittersHand(again).sees(SPREAD, "not said");
    await again.waitForFunction(() => document.querySelector<HTMLInputElement>("#taken")?.value === "17");
    await again.context().close();
  });

  it.each([
    ["is cited when the visit is opened", true],
    ["would stay uncited without the note of what was on its way (the control)", false],
  ])("a photo that was safe and not yet cited when the page was killed %s", async (_says, isNoted) => {
    const { page } = await atHead();
    await openCamera(page);
    // The entry that cites it never comes to the disk: what a killed page leaves behind.
    await page.evaluate((noted) => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
        if (this.name === "entries") throw new DOMException("killed", "AbortError");
        if (!noted && this.name === "notes" && given[0].name.startsWith("photo on its way"))
          given[0] = { ...given[0], value: "" };
        return put.apply(this, given);
      };
    }, isNoted);
    await page.locator(".camera button.main").click();
    await page.locator(".camera").waitFor({ state: "detached" });
    await killed(page);
    const again = await page.context().newPage();
    await again.goto(page.url());
    await again.locator(".step-keys").waitFor();
    if (isNoted) await again.locator(".photo-key img").waitFor();
    const photos = await kept(again);
    expect(photos.length).toBe(1);
    expect(await cited(again)).toEqual(isNoted ? photos.map(({ named }) => named) : []);
    await again.context().close();
  });

  it("a device that is short of room refuses photos in words, and still keeps readings", async () => {
    const { page, hand } = await atHead();
    await openCamera(page);
    // A stand-in: Chromium's own override of its quota changes nothing for a page like this.
    await page.evaluate(() => {
      navigator.storage.estimate = async () => ({ usage: 0, quota: 100_000_000 });
    });
    await page.locator(".camera button.main").click();
    await page.locator(".camera .problem", { hasText: "stay free for readings" }).waitFor();
    expect(await kept(page)).toEqual([]);
    await page.getByText("Close the camera").click();
    await hand.take(SPREAD);
    await hand.press("174");
    await hand.enter();
    await hand.sees(SPREAD, "174 mm");
    await page.context().close();
  });

  it("where there is no camera a file can be chosen; of it only the picture is kept, and what is no picture is refused", async () => {
    const { page } = await atHead();
    await openCamera(page);
    const chosen = page.locator(".camera input[type=file]");
    await chosen.setInputFiles({
      name: "notes.txt",
      mimeType: "text/plain",
      buffer: Buffer.from("no picture"),
    });
    expect(await page.locator(".camera .problem").textContent()).toMatch(/Read text\/plain.*Allowed: JPEG/);
    await chosen.setInputFiles({
      name: "yard.jpg",
      mimeType: "image/jpeg",
      buffer: withPlace(await jpegOf(page)),
    });
    await page.getByText("1 photo is kept").waitFor();
    const bytes = await page.evaluate(async () => {
      const open = indexedDB.open("treewright");
      const base = await new Promise<IDBDatabase>((done) => {
        open.onsuccess = () => done(open.result);
      });
      const all = base.transaction("photos").objectStore("photos").getAll();
      return new Promise<number[]>((done) => {
        all.onsuccess = () => done([...all.result[0].content]);
      });
    });
    expect(Buffer.from(bytes).includes(PLACE)).toBe(false);
    await page.context().close();
  });
});

/** Ends the page's own process, as the system of a phone does that needs memory. */
async function killed(page: Page): Promise<void> {
  const crashed = page.waitForEvent("crash");
  const session = await page.context().newCDPSession(page);
  // Never answered: who would answer is gone.
  session.send("Page.crash").catch(() => undefined);
  await crashed;
}

const PLACE = "53.5N 9.9E";

const jpegOf = async (page: Page): Promise<Buffer> =>
  Buffer.from(
    await page.evaluate(async () => {
      const canvas = document.createElement("canvas");
      canvas.width = 64;
      canvas.height = 48;
      canvas.getContext("2d")?.fillRect(8, 8, 20, 20);
      const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg"));
      return blob ? [...new Uint8Array(await blob.arrayBuffer())] : [];
    }),
  );

/** The same picture with a comment in it (JPEG marker FFFE, ITU-T T.81 B.2.4.5), where a phone writes the place. */
function withPlace(jpeg: Buffer): Buffer {
  const text = Buffer.from(PLACE);
  const mark = Buffer.from([0xff, 0xfe, 0, text.length + 2]);
  return Buffer.concat([jpeg.subarray(0, 2), mark, text, jpeg.subarray(2)]);
}
