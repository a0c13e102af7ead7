import { expect, test } from "vitest";
import { phones, SPREAD } from "./phone.ts";

/*
 * Units as a setting of one device. That a whole visit in inches is the same survey is tried in
 * `evidence/survey/unit-beside.test.ts`; here, that the screens say the unit they mean.
 */
const { phone, exported } = phones();

test("a bare number is kept with the unit beside it, and shown so after the setting is another", async () => {
  const { page, hand, faults } = await phone();
  await page.getByLabel("Lengths").selectOption("in");
  await page.getByLabel("Weights").selectOption("lb");
  const first = page.url();
  await hand.beginVisit("Curlew");
  await hand.goTo("Head and points");
  await hand.take(SPREAD);
  expect(await page.locator(".dock .unit").textContent()).toBe("in");
  expect(await page.locator(".dock-asks").textContent()).toMatch(/\d+ [\d/]+ in to \d+.* in/);
  await hand.press("7");
  await hand.enter();
  await hand.sees(SPREAD, "7 in");
  await hand.take(SPREAD);
  await hand.press("17.4");
  await page.getByRole("button", { name: "cm", exact: true }).click();
  await hand.enter();
  await hand.sees(SPREAD, "17.4 cm");
  await hand.goTo("Tracings");
  await hand.take("Front trace");
  expect(await page.locator(".dock .unit").textContent()).toBe("in");
  await hand.type("-3.5 -3; -2.5 -2; -2 -1.5; -1 -0.5; 0 0; 1 -0.5; 2 -1.5; 2.5 -2; 3.5 -3");
  await page.waitForSelector(".trace-typed");
  await hand.enter();
  await hand.sees("Front trace", "9 ×");
  await page.goto(first);
  await page.getByLabel("Lengths").selectOption("mm");
  await page.locator(".visit-row", { hasText: "Curlew" }).first().click();
  await hand.goTo("Head and points");
  expect(await hand.stands(SPREAD)).toBe("17.4 cm");
  await hand.take(SPREAD);
  expect(await page.locator(".dock .unit").textContent()).toBe("mm");
  await hand.press("174");
  await hand.enter();
  await hand.sees(SPREAD, "174 mm");
  const text = await exported(page);
  for (const said of ['"value":"7 in"', '"value":"17.4 cm"', '"value":"174"', '"value":"in"'])
    expect(text).toContain(said);
  expect(faults).toEqual([]);
  await page.context().close();
});

test("what the answers and the drawing say follows the setting", async () => {
  const { page, hand } = await phone();
  await page.getByLabel("Lengths").selectOption("in");
  await page.locator(".visit-list .visit-row", { hasText: "Moss" }).first().click();
  await page.waitForSelector(".steps a");
  await hand.goTo("What to do");
  await page.waitForSelector(".follows");
  expect(await page.locator(".section-figure .on-line").first().textContent()).toMatch(
    /^\d+( \d+\/\d+)? in$/,
  );
  expect(await page.locator(".follows").textContent()).toMatch(/\d ± [\d/. ]+ in/);
  expect(await page.locator(".follows td.figure").allTextContents()).not.toContainEqual(
    expect.stringContaining("mm"),
  );
  await page.context().close();
});
