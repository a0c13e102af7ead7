import type { Document, Page } from "@treewright/core/engine/drawing.ts";
import type { FontFile } from "./fonts.ts";
import { paintItem } from "./paint-item.ts";
import { askForTrueSize, bytesOf, forgetClock, NO_CLOCK, newPdf } from "./pdfkit-inside.ts";
import { typesetter } from "./typesetter.ts";

/** PDF's unit is 1/72 inch; an inch is 25.4 mm exactly. */
const UNITS_PER_MM = 72 / 25.4;

/**
 * A drawing as PDF at true size: exact pages, fonts embedded, tagged, the same bytes for the same drawing.
 * Runs in Node and in a browser. Throws MissingGlyph for a character that no font of its face has, RangeError
 * for a length that is no number.
 */
export async function paintPdf(document: Document, fonts: readonly FontFile[]): Promise<Uint8Array> {
  const pdf = newPdf({
    pdfVersion: "1.7",
    // Pitfall: pdfkit packs with zlib in Node and with another packer in a browser, whose bytes differ. Unpacked, a
    // sheet made in the yard is to the byte the one made at home; a sheet takes 40 to 100 kB.
    compress: false,
    tagged: true,
    lang: document.language,
    displayTitle: true,
    info: { Title: document.title, Creator: "Treewright", CreationDate: NO_CLOCK },
  });
  askForTrueSize(pdf);
  forgetClock(pdf);
  // Collecting starts before drawing, so that an error in between leaves nothing waiting.
  const bytes = bytesOf(pdf);
  const setter = typesetter(pdf, fonts);
  const whole = pdf.struct("Document");
  pdf.addStructure(whole);
  document.pages.forEach((page, i) => {
    startPage(pdf, page);
    for (const item of page.items) paintItem(pdf, setter, whole, item, i + 1);
  });
  whole.end();
  pdf.end();
  return bytes;
}

function startPage(pdf: ReturnType<typeof newPdf>, page: Page): void {
  // Pitfall: the size goes in unrounded; the named size A4 is cut to hundredths of a point.
  pdf.addPage({ size: [page.width * UNITS_PER_MM, page.height * UNITS_PER_MM], margin: 0 });
  pdf.scale(UNITS_PER_MM);
}
