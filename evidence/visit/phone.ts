import { readFile } from "node:fs/promises";
import { openPack } from "@treewright/zip/read.ts";
import type { Page } from "playwright-core";
import { afterAll, beforeAll } from "vitest";
import { type ServedPage, servePage } from "../page/served-page.ts";
import { FittersHand } from "./hand.ts";

const PHONE = { width: 390, height: 844 };
/** The question that most of these visits take. */
export const SPREAD = "Spread at the tips, on the face named";

interface Opened {
  readonly page: Page;
  readonly hand: FittersHand;
  readonly asked: string[];
  readonly faults: string[];
}

export interface Phones {
  served(): ServedPage;
  /** A phone with nothing kept from another, at the first screen. */
  phone(): Promise<Opened>;
  /** One with a visit begun, at its step of the head. */
  atHead(): Promise<Opened>;
  /** Everything of a phone as the file of records in what is copied out. */
  exported(page: Page): Promise<string>;
}

/** What the key of the data screen copies out, without papers: those take minutes. */
export async function copiedOut(page: Page): Promise<Blob> {
  await page.uncheck(".tick input");
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("button.main")]);
  return new Blob([await readFile(await download.path())]);
}

/** The file of records in a copy. */
export async function recordsIn(copy: Blob): Promise<string> {
  const pack = await openPack(copy, { files: 1000, bytes: 1e9 });
  return new TextDecoder().decode(await pack.bytesOf("records.jsonl", 1e9));
}

/** Phones for the tests of one file; the page is served while they run. */
export function phones(given: { camera?: boolean } = {}): Phones {
  let served: ServedPage;
  beforeAll(async () => {
    served = await servePage(given);
  });
  afterAll(() => served.close());
  const phone = async (): Promise<Opened> => {
    const opened = await served.open("", PHONE);
    const hand = new FittersHand(opened.page);
    await hand.atFirstScreen();
    return { ...opened, hand };
  };
  return {
    served: () => served,
    phone,
    atHead: async () => {
      const opened = await phone();
      await opened.hand.beginVisit("Curlew");
      await opened.hand.goTo("Head and points");
      return opened;
    },
    exported: async (page) => {
      await page.goto(`${served.url}#/data`);
      return recordsIn(await copiedOut(page));
    },
  };
}
