import { readFile } from "node:fs/promises";
import type { Page } from "playwright-core";
import type { ServedPage } from "../page/served-page.ts";
import { FittersHand } from "./hand.ts";

const PHONE = { width: 390, height: 844 };
/** The question that most of these visits take. */
export const SPREAD = "Spread at the tips, on the face named";

/** A phone with nothing kept from another, at the first screen. */
export async function phoneOf(
  served: ServedPage,
): Promise<{ page: Page; hand: FittersHand; asked: string[]; faults: string[] }> {
  const opened = await served.open("", PHONE);
  const hand = new FittersHand(opened.page);
  await hand.atFirstScreen();
  return { ...opened, hand };
}

/** Everything of a phone as the file that is copied out. */
export async function copiedOut(served: ServedPage, page: Page): Promise<string> {
  await page.goto(`${served.url}#/data`);
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("button.main")]);
  return readFile(await download.path(), "utf8");
}
