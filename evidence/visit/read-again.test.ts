import { expect, it } from "vitest";
import { phones, SPREAD } from "./phone.ts";

/* The same thing read, and drawn, more than once: with keys alone, as a thumb does it. */
const { phone, atHead, served } = phones();

const POINTS = "-120 -72; -80 -32; -40 -8; 0 0; 40 -8; 80 -32; 120 -72";
const AGAIN = "-118 -72; -80 -33; -40 -8; 0 0; 40 -8; 80 -33; 118 -72";

it("a reading taken three times shows its spread before it is entered, and all three stand", async () => {
  const { page, hand, faults } = await atHead();
  await hand.take(SPREAD);
  const more = page.locator(".dock-ends button", { hasText: "once more" });
  expect(await more.count()).toBe(0);
  await hand.press("181");
  await more.click();
  await hand.press("183");
  await more.click();
  await hand.press("182");
  await page.getByText("3 readings: mean 182.0 mm, from 181.0 mm to 183.0 mm").waitFor();
  await hand.enter();
  await hand.sees(SPREAD, "181 · 183 · 182 mm");
  expect(faults).toEqual([]);
  await page.close();
});

it("a tracing is typed by its keys, drawn again, and its drawings told by their spread; cleared they go together", async () => {
  const { page, hand, faults } = await phone();
  await hand.beginVisit("Curlew");
  await hand.goTo("Tracings");
  const first = page.locator(".questions button[data-at$='traces[0].points']");
  await first.click();
  for (const sign of POINTS) {
    const key = sign === "-" ? "−" : sign === " " ? "␣" : sign;
    // The key to the next point types the space behind it too.
    if (sign === " " && /; $/.test(await page.inputValue("#taken"))) continue;
    await page.locator(".number-keys button", { hasText: key }).first().click();
  }
  expect(await page.inputValue("#taken")).toBe(POINTS);
  await hand.enter();
  // The tracing's own questions come with it, and the first of them is taken.
  await page.waitForSelector(".dock[data-at*='traces[0]']:not([data-at$='points'])");
  await first.click();
  await page.locator("button", { hasText: "Draw it again" }).click();
  await page.waitForSelector(".dock[data-at$='repeats[0]']");
  await hand.type(AGAIN);
  await hand.enter();
  await page.getByText(/Drawn 2 times; a drawing strays by 0\.\d+ mm/).waitFor();
  // What is typed of a third is there again after the page was gone.
  await page.locator("button", { hasText: "Draw it again" }).click();
  await hand.type("-118 -70; -80");
  await page.reload();
  await page.waitForSelector(".dock[data-at$='repeats[1]']");
  expect(await page.inputValue("#taken")).toBe("-118 -70; -80");
  await hand.type(`in ${AGAIN}`);
  await hand.enter();
  expect(await page.locator(".dock .problem").first().textContent()).toContain(
    "in which the first was typed",
  );
  await first.click();
  await page.locator(".dock button", { hasText: "Clear" }).click();
  await page.waitForFunction(() => document.querySelector(".dock")?.textContent?.includes("Drawn") === false);
  await hand.undo();
  await page.getByText(/Drawn 2 times/).waitFor();
  expect(faults).toEqual([]);
  await page.goto(served().url);
  await page.close();
});
