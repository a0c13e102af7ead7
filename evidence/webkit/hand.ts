import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Question } from "@treewright/core/survey/questions.ts";
import { ANSWER } from "../visit/hand.ts";
import type { AtScreens } from "../visit/scripted.ts";
import type { WebKit } from "./webkit.ts";

const quoted = (text: string): string => JSON.stringify(text);

/** What a fitter does at the screens, in WebKit. */
export class WebKitHand implements AtScreens {
  constructor(
    private readonly webkit: WebKit,
    private readonly url: string,
  ) {}

  /** Chooses a case file on the data screen, out of a folder as from a phone's own files. */
  async choose(name: string, text: string): Promise<void> {
    const folder = await mkdtemp(join(tmpdir(), "treewright-case-"));
    try {
      await writeFile(join(folder, name), text);
      await this.webkit.goTo(`${this.url}#/data`);
      await this.webkit.type("input[accept^='.json']", join(folder, name));
      await this.webkit.sees("document.querySelector('.dock')");
    } finally {
      await rm(folder, { recursive: true });
    }
  }

  async goTo(step: string): Promise<void> {
    const link = `[...document.querySelectorAll(".steps a")].find((one) => one.textContent.includes(${quoted(step)}))`;
    await this.webkit.sees(link);
    await this.webkit.run(`${link}.click()`);
    await this.webkit.sees(`document.querySelector(".visit-head h1").textContent.includes(${quoted(step)})`);
  }

  async answer({ section, path, words }: Question, value: string): Promise<void> {
    await this.goTo(section);
    const row = `document.querySelector(${quoted(`.questions button[data-at="${path}"]`)})`;
    await this.webkit.sees(row);
    await this.webkit.run(`${row}.click()`);
    await this.webkit.sees(`document.querySelector(".dock").dataset.at === ${quoted(path)}`);
    if (words) await this.pressChoice(value.replaceAll("-", " "));
    else {
      await this.webkit.type("#taken", value);
      await this.webkit.press(".enter");
    }
    // After the last question of a step the next step is there.
    await this.webkit.sees(`${row} === null || ${row}.dataset.said === "yes"`);
  }

  async answersShown(): Promise<readonly string[]> {
    await this.goTo("What to do");
    await this.webkit.sees(`document.querySelector(${quoted(`.answers[aria-busy=false] ${ANSWER}`)})`);
    return this.webkit.run(
      `return [...document.querySelectorAll(${quoted(ANSWER)})].map((one) => one.dataset.answer)`,
    );
  }

  private async pressChoice(says: string): Promise<void> {
    const key = `[...document.querySelectorAll(".choices button")].find((one) => one.textContent.trim() === ${quoted(says)})`;
    await this.webkit.sees(key);
    await this.webkit.run(`${key}.click()`);
  }
}
