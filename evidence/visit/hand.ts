import type { Page } from "playwright-core";

/** What a fitter does at the screens, in the words of a trainer's script. */
export class FittersHand {
  constructor(readonly page: Page) {}

  async atFirstScreen(): Promise<void> {
    await this.page.waitForSelector(".begin");
  }

  async beginVisit(horse: string): Promise<void> {
    await this.page.fill(".begin input", horse);
    await this.page.click(".begin button");
    await this.page.waitForSelector(".dock");
  }

  async goTo(step: string): Promise<void> {
    await this.page.locator(".steps a", { hasText: step }).first().click();
    await this.page.waitForFunction(
      (title) => document.querySelector(".visit-head h1")?.textContent?.includes(title),
      step,
    );
  }

  /** Takes the question that asks so, out of the list. */
  async take(asks: string): Promise<void> {
    await this.page.locator(".questions button", { hasText: asks }).first().click();
    await this.page.waitForFunction(
      (words) => document.querySelector(".dock strong")?.textContent?.toLowerCase().includes(words),
      asks.toLowerCase(),
    );
  }

  async press(signs: string): Promise<void> {
    for (const sign of signs)
      await this.page.locator(".number-keys button", { hasText: sign }).first().click();
  }

  async type(words: string): Promise<void> {
    await this.page.fill("#taken", words);
  }

  async enter(): Promise<void> {
    await this.page.click(".enter");
  }

  async undo(): Promise<void> {
    await this.page.locator(".step-keys button", { hasText: "Undo" }).click();
  }

  /** What stands beside a question in the list. */
  async stands(asks: string): Promise<string> {
    const row = this.page.locator(".questions button", { hasText: asks }).first();
    return (await row.locator("span").nth(1).textContent()) ?? "";
  }

  /** Waits until a question has this beside it. */
  async sees(asks: string, words: string): Promise<void> {
    await this.page
      .locator(".questions button", { hasText: asks })
      .first()
      .locator("span", { hasText: words })
      .first()
      .waitFor();
  }
}
