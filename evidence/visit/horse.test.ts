import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { phones } from "./phone.ts";

/* A horse over its visits, in Chromium. The figures themselves are checked in `evidence/horse/back-widths.test.ts`. */
const { phone } = phones();

const WEDGE = (times: number): string =>
  Array.from({ length: 27 }, (_, at) => {
    const across = -130 + 10 * at;
    return `${across} ${(-Math.abs(across) * times).toFixed(1)}`;
  }).join("; ");

async function trace(page: Page, points: string): Promise<void> {
  await page.locator(".questions button[data-at$='traces[0].points']").click();
  await page.locator("textarea#taken").fill(points);
  await page.locator(".enter").click();
  await page.locator(".questions button[data-at$='traces[0].points'][data-said=yes]").waitFor();
}

describe("a horse over its visits", () => {
  it("shows its answers, every visit, the widths of its back with their doubt, and whether they differ", async () => {
    const { page, hand, faults } = await phone();
    await hand.beginVisit("Garganey");
    await hand.goTo("Tracings");
    await trace(page, WEDGE(1));
    await hand.goTo("Hand-over");
    await page.getByLabel("What was done, in one line").fill("Head let out by 6 mm");
    await page.getByRole("button", { name: "Finish the visit" }).click();
    await page.locator(".visit-list .visit-row", { hasText: "Garganey" }).click();
    await page.getByRole("button", { name: "Begin the next visit of this horse" }).click();
    await page.waitForFunction(() => document.querySelector(".dock") !== null);
    await hand.goTo("Tracings");
    await trace(page, WEDGE(0.8));
    await page.getByRole("link", { name: "This horse" }).click();
    await page.getByRole("heading", { name: "2 visits" }).waitFor();
    expect(await page.locator(".visit-row", { hasText: "Head let out by 6 mm" }).count()).toBe(1);
    const widths = await page.locator(".widths td").allTextContents();
    expect(widths.length).toBe(4);
    const [first, second] = widths.slice(0, 2).map((one) => Number.parseInt(one, 10));
    // Twice 50 mm, and that by 1 / 0.8.
    expect(first).toBeGreaterThan(95);
    expect(first).toBeLessThan(105);
    expect((second ?? 0) / (first ?? 1)).toBeCloseTo(1.25, 1);
    expect(await page.locator(".widths p").first().textContent()).toMatch(/^Wider by \d+ mm since/);
    expect(await page.locator(".backs-over polyline").count()).toBe(2);
    expect(await page.locator(".last-answers dd").allTextContents()).toEqual(
      Array(3).fill("not answered yet"),
    );
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it("tells of a horse that is to be seen by a vet before all else, in words", async () => {
    const { page, hand } = await phone();
    await page.locator(".visit-list .visit-row", { hasText: "Avocet" }).click();
    await hand.goTo("What to do");
    await page.locator(".paper-keys button:enabled").first().waitFor({ timeout: 200_000 });
    await page.getByRole("link", { name: "This horse" }).click();
    await page.locator(".last-answers dd").nth(2).waitFor();
    await page.waitForFunction(
      () => !document.querySelector(".last-answers")?.textContent?.includes("not answered yet"),
    );
    await page.context().close();
  });
});
