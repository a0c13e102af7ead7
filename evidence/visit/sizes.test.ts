import { expect, test } from "vitest";
import { phones } from "./phone.ts";

/* What is too long or too many at the screens: refused with its sentence, nothing cut off, nothing kept. Each limit: evidence/survey. */
const { phone } = phones();

test("a name, what was agreed and the weeks are taken at the limit and refused above it", async () => {
  const { page, hand } = await phone();
  await page.fill(".begin input", "a".repeat(121));
  await page.click(".begin button");
  await page.getByText("Read 121 letters. Allowed: 1 to 120 letters.").waitFor();
  expect(await page.inputValue(".begin input")).toHaveLength(121);
  await hand.beginVisit("a".repeat(120));

  await hand.goTo("Agreed");
  const agreed = page.locator("textarea").first();
  await agreed.fill("b".repeat(2001));
  await agreed.blur();
  await page.getByText("Read 2001 letters. Allowed: at most 2000 letters.").waitFor();
  expect(await agreed.inputValue()).toHaveLength(2001);
  await agreed.fill("b".repeat(2000));
  await agreed.blur();
  await page.locator(".problem").waitFor({ state: "detached" });

  await hand.goTo("Hand-over");
  const weeks = page.getByLabel("Weeks until the next look");
  for (const typed of ["105", "0", "soon"]) {
    await weeks.fill(typed);
    await weeks.blur();
    await page.getByText(`Read ${typed}. Allowed: 1 to 104 weeks.`).waitFor();
  }
  await weeks.fill("104");
  await weeks.blur();
  await page.locator(".problem").waitFor({ state: "detached" });
  // Both stand when the step is entered again; so nothing of what was refused does.
  await hand.goTo("Agreed");
  expect(await page.locator("textarea").first().inputValue()).toHaveLength(2000);
  await hand.goTo("Hand-over");
  expect(await weeks.inputValue()).toBe("104");
  await page.context().close();
});
