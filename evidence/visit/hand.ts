import type { Question } from "@treewright/core/survey/questions.ts";
import type { Page } from "playwright-core";
import type { AtScreens } from "./scripted.ts";

/** One of the three answers on the screen. */
export const ANSWER = ".answer[data-answer]";

/** What a fitter does at the screens, in the words of a trainer's script. */
export class FittersHand implements AtScreens {
  constructor(readonly page: Page) {}

  /** Chooses a case file on the data screen: a visit of its own. */
  async choose(name: string, text: string): Promise<void> {
    await this.page
      .locator("input[accept^='.json']")
      .setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
    await this.page.waitForSelector(".dock");
  }

  async answersShown(): Promise<readonly string[]> {
    await this.goTo("What to do");
    // The answers of a machine with other work beside it take their time.
    await this.page.waitForSelector(`.answers[aria-busy=false] ${ANSWER}`, { timeout: 120_000 });
    return this.page
      .locator(ANSWER)
      .evaluateAll((all) => all.map((one) => one.getAttribute("data-answer") ?? ""));
  }

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

  /** Answers one question, wherever it is asked, by its keys or by typing, and waits until it stands. */
  async answer({ section, path, words }: Question, value: string): Promise<void> {
    const { page } = this;
    await this.goTo(section);
    await page.locator(`.questions button[data-at="${path}"]`).click();
    await page.waitForSelector(`.dock[data-at="${path}"]`);
    if (words)
      await page
        .locator(".choices")
        .getByRole("button", { name: value.replaceAll("-", " "), exact: true })
        .click();
    else {
      await page.fill("#taken", value);
      await page.keyboard.press("Enter");
    }
    // After the last question of a step the next step is there.
    await page.waitForFunction((at) => {
      const row = document.querySelector(`.questions button[data-at="${at}"]`);
      return row === null || row.getAttribute("data-said") === "yes";
    }, path);
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
