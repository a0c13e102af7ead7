import PDFDocument from "pdfkit";

/**
 * The places where pdfkit 0.20.2 must be held by its inside, each with its reason. All else uses what it documents.
 */
type Pdf = InstanceType<typeof PDFDocument>;

/**
 * Pitfall: without `font: null` pdfkit sets up its built-in Helvetica, whose metrics are not there in a browser.
 * Its types do not know null.
 */
export function newPdf(options: PDFKit.PDFDocumentOptions): Pdf {
  return new PDFDocument({
    ...options,
    font: null,
    autoFirstPage: false,
  } as unknown as PDFKit.PDFDocumentOptions);
}

interface Inside {
  readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
  readonly _root: {
    readonly data: { readonly ViewerPreferences: { readonly data: { PrintScaling?: string } } };
  };
  readonly info: { CreationDate?: Date };
  endMetadata: () => void;
}

function inside(pdf: Pdf): Inside {
  return pdf as unknown as Inside;
}

/** Pitfall: for a character it does not have, pdfkit draws an empty box and says nothing. */
export function hasGlyph(pdf: Pdf, character: string): boolean {
  return inside(pdf)._font.font.hasGlyphForCodePoint(character.codePointAt(0) ?? 0);
}

/** Pitfall: viewers shrink to fit by default, which spoils a drawing at 1:1. This asks them not to; it cannot make them. */
export function askForTrueSize(pdf: Pdf): void {
  inside(pdf)._root.data.ViewerPreferences.data.PrintScaling = "None";
}

/** pdfkit makes the file's id from a date at the start; this one stands in and is not kept. */
export const NO_CLOCK = new Date(0);

/**
 * Pitfall: pdfkit writes the clock into every file, so no two are alike, and repeats the title in an XML packet
 * without escaping it, so that "&" in a horse's name spoils the packet. Title and language stand in the document itself.
 */
export function forgetClock(pdf: Pdf): void {
  delete inside(pdf).info.CreationDate;
  inside(pdf).endMetadata = () => {};
}

/** Everything the document will have written. Pitfall: `pdfkit/output` does the same but comes without types. */
export function bytesOf(pdf: Pdf): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on("error", reject);
    pdf.on("end", () => resolve(joined(chunks)));
  });
}

function joined(chunks: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(chunks.reduce((sum, chunk) => sum + chunk.length, 0));
  let at = 0;
  for (const chunk of chunks) {
    bytes.set(chunk, at);
    at += chunk.length;
  }
  return bytes;
}
