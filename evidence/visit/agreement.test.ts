import { readFile } from "node:fs/promises";
import { readRecords } from "@treewright/core/records/records-file.ts";
import { emptyCase } from "@treewright/core/survey/answer-question.ts";
import { signatureIn } from "@treewright/core/survey/recorded/signature.ts";
import { openPack } from "@treewright/zip/read.ts";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { wordsOf } from "../paper/poppler.ts";
import { phones } from "./phone.ts";

/* What is agreed and signed, in Chromium with a mouse for a finger. What this cannot see: whether a court takes such a signature. */
const { phone, exported, served } = phones();
const OWNER = "Philippa Quennell";

async function atAgreed() {
  const opened = await phone();
  await opened.hand.beginVisit("Curlew");
  await opened.hand.goTo("Agreed");
  await opened.page.getByLabel("What was agreed").fill("The head is let out by 6 mm in two passes.");
  await opened.page.getByLabel("The limit that is not passed").fill("10 mm at the tips.");
  await opened.page.getByLabel("Name of who signs").focus();
  await opened.page.locator(".agreed-text", { hasText: "10 mm at the tips." }).waitFor();
  return opened;
}

async function draw(page: Page): Promise<void> {
  const box = await page.locator(".signature-field svg").boundingBox();
  if (!box) throw new Error("the field is there");
  await page.locator(".signature-field svg").scrollIntoViewIfNeeded();
  const { x, y, width, height } = (await page.locator(".signature-field svg").boundingBox()) ?? box;
  await page.mouse.move(x + 0.1 * width, y + 0.5 * height);
  await page.mouse.down();
  for (let at = 1; at <= 8; at++)
    await page.mouse.move(x + (0.1 + 0.1 * at) * width, y + (0.5 + 0.3 * (at % 2)) * height);
  await page.mouse.up();
}

async function sign(page: Page): Promise<void> {
  await page.getByLabel("Name of who signs").fill(OWNER);
  await page.getByRole("button", { name: "Sign this text" }).click();
  await page.getByText(`Signed over this text by ${OWNER}`).waitFor();
}

describe("what was agreed", () => {
  it("names every horse, the answers, the work and its limit; a gap is signed as a gap", async () => {
    const { page } = await atAgreed();
    const text = await page.locator(".agreed-text p").allTextContents();
    expect(text).toContain("What is done: The head is let out by 6 mm in two passes.");
    expect(text).toContain("The limit that is not passed: 10 mm at the tips.");
    expect(text).toContain("Risks that were told: Nothing was said.");
    expect(text.find((line) => line.startsWith("Every horse"))).toBe(
      "Every horse of this visit that wears it: Curlew. Whether other horses wear it was not said.",
    );
    expect(text).toContain("The work: not answered.");
    await page.context().close();
  });

  it("is signed over exactly this text: the signature is drawn, kept and on the paper; a change of one word asks for it anew", async () => {
    const { page, faults } = await atAgreed();
    await draw(page);
    await sign(page);
    await page.locator(".signature-shown polyline").waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Agreement as PDF" }).click(),
    ]);
    const paper = wordsOf(await readFile(await download.path()));
    expect(paper.replace(/\s+/g, " ")).toContain(`Signed: ${OWNER}, owner`);
    expect(paper.replace(/\s+/g, " ")).toContain("The head is let out by 6 mm in two passes.");
    const address = page.url();
    await page.reload();
    await page.goto(address);
    await page.getByText(`Signed over this text by ${OWNER}`).waitFor();
    await page.getByLabel("The limit that is not passed").fill("12 mm at the tips.");
    await page.getByLabel("What was agreed").focus();
    await page.getByText("it has to be signed anew").waitFor();
    expect(await page.getByText(`Signed over this text by ${OWNER}`).count()).toBe(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("erasing who signed takes the signature and the signed text along, and nothing of them is left", async () => {
    const { page } = await atAgreed();
    await draw(page);
    await sign(page);
    const address = page.url();
    const before = await exported(page);
    const read = readRecords(before.split("\n"));
    if (!read.ok) throw new Error("the records are read");
    const held = read.records.people.find(({ field }) => field === "signature");
    expect(signatureIn(held?.value)?.strokes[0]?.length).toBeGreaterThan(5);
    // The entries themselves hold neither name nor strokes.
    expect(JSON.stringify(read.records.entries)).not.toContain(OWNER);
    await page.getByRole("button", { name: `Erase ${OWNER}` }).click();
    await page.getByRole("button", { name: "Erase for good" }).last().click();
    await page.getByText("Erased. What was recorded stays").waitFor();
    const after = await exported(page);
    expect(after).not.toContain(OWNER);
    expect(after).not.toContain("strokes");
    await page.goto(address);
    await page.locator(".agreed-text").waitFor();
    expect(await page.getByText(`Signed over this text by ${OWNER}`).count()).toBe(0);
    await page.context().close();
  });

  it("is signed in the language of the screen, and stays signed and in that language when the screen speaks another", async () => {
    const { page, faults } = await atAgreed();
    const speak = (tag: string, shown: string) => async () => {
      const address = page.url();
      await page.evaluate((chosen) => localStorage.setItem("language", chosen), tag);
      await page.reload();
      await page.goto(address);
      await page.locator(".agreed-text", { hasText: shown }).waitFor();
    };
    await speak("de", "Vereinbart am")();
    expect(await page.getAttribute(".agreed-text", "lang")).toBe("de");
    await page.getByLabel("Name der Person, die unterschreibt").fill(OWNER);
    await page.getByRole("button", { name: "Diesen Text unterschreiben" }).click();
    await page.locator(".signed", { hasText: OWNER }).waitFor();
    const mark = await page.locator(".agreement .figure").textContent();
    await speak("en", "Vereinbart am")();
    await page.getByText(`Signed over this text by ${OWNER}`).waitFor();
    expect(await page.locator(".agreement .figure").textContent()).toBe(mark);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Agreement as PDF" }).click(),
    ]);
    const paper = wordsOf(await readFile(await download.path())).replace(/\s+/g, " ");
    expect(paper).toContain("Was gemacht wird: The head is let out by 6 mm in two passes.");
    expect(paper).toContain(`Unterschrieben: ${OWNER}, Eigentümer`);
    await page.getByLabel("The limit that is not passed").fill("12 mm at the tips.");
    await page.getByLabel("What was agreed").focus();
    await page.getByText("it has to be signed anew").waitFor();
    expect(await page.locator(".agreed-text").textContent()).toContain("Agreed on");
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("goes into a copy as it was signed, whatever was said after it", async () => {
    const { page, hand } = await phone();
    const early = { ...emptyCase("Early", "2001-01-01"), horses: [{ name: "Curlew" }] };
    await page.goto(`${served().url}#/data`);
    await hand.choose("early.json", JSON.stringify(early));
    await hand.goTo("Agreed");
    await page.getByLabel("What was agreed").fill("The head is let out by 6 mm in two passes.");
    await page.getByLabel("Name of who signs").focus();
    await page.locator(".agreed-text", { hasText: "in two passes." }).waitFor();
    await sign(page);
    await page.getByLabel("What was agreed").fill("The head stays.");
    await page.getByLabel("The limit that is not passed").focus();
    await page.getByText("it has to be signed anew").waitFor();
    await hand.goTo("Hand-over");
    await page.getByRole("button", { name: "Finish the visit" }).click();
    await page.locator(".visit-list").first().waitFor();
    await page.goto(`${served().url}#/data`);
    await page.click("button.main");
    await page.getByText(/Letter and sheet of visit 2 of \d+ are being made/).waitFor();
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Go on without the other papers" }).click(),
    ]);
    const pack = await openPack(new Blob([await readFile(await download.path())]), {
      files: 1000,
      bytes: 1e9,
    });
    const [path = ""] = pack.paths.filter((one) => one.endsWith("-agreement.pdf"));
    const paper = wordsOf(Buffer.from(await pack.bytesOf(path, 1e7))).replace(/\s+/g, " ");
    expect(paper).toContain("The head is let out by 6 mm in two passes.");
    expect(paper).toContain(`Signed: ${OWNER}, owner`);
    expect(new TextDecoder().decode(await pack.bytesOf("index.html", 1e8))).toContain(`href="${path}"`);
    await page.context().close();
  });
});
