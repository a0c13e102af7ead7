import { paperInBrowser } from "../../bridges/paper/src/browser.ts";
import { letterOf } from "../../core/src/report/letter.ts";
import { sheetOf } from "../../core/src/report/sheet.ts";
import { templateOf } from "../../core/src/report/template.ts";
import { letter, sheet, template } from "./samples.ts";

/** The same three sheets as in Node, painted in the page. */
async function paintAll(): Promise<Record<string, number[]>> {
  const paper = await paperInBrowser();
  const documents = {
    template: templateOf(template(232), paper.measure),
    letter: letterOf(letter(), paper.measure),
    sheet: sheetOf(sheet(), paper.measure),
  };
  const painted: Record<string, number[]> = {};
  for (const [kind, document] of Object.entries(documents))
    painted[kind] = Array.from(await paper.paint(document));
  return painted;
}

Object.assign(globalThis, { paintAll });
