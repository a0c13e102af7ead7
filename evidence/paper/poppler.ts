import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Programs of Debian's poppler-utils; without them the test files that import this are left out, by name. */
type Program = "pdftoppm" | "pdftocairo" | "pdffonts" | "pdftotext" | "pdfinfo";

/** What a program writes for a PDF: to standard output, or to the file named OUT in its arguments. */
export function poppler(
  program: Program,
  pdf: Uint8Array,
  before: readonly string[],
  after: readonly string[] = ["-"],
): Buffer {
  const folder = mkdtempSync(join(tmpdir(), "treewright-paper-"));
  try {
    const file = join(folder, "sheet.pdf");
    writeFileSync(file, pdf);
    const named = after.map((word) => (word === "OUT" ? join(folder, "out") : word));
    const said = execFileSync(program, [...before, file, ...named], { maxBuffer: 1 << 28 });
    return after.includes("OUT") ? readFileSync(join(folder, "out")) : said;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

export function wordsOf(pdf: Uint8Array): string {
  return poppler("pdftotext", pdf, ["-layout"]).toString("utf8");
}

/** A page as ink from 0 (paper) to 1 (black), at a resolution in dots per inch. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly mmPerPixel: number;
  ink(x: number, y: number): number;
}

export function rasterOf(pdf: Uint8Array, page: number, dpi: number): Raster {
  const pgm = poppler(
    "pdftoppm",
    pdf,
    ["-gray", "-r", String(dpi), "-f", String(page), "-l", String(page)],
    [],
  );
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(pgm.subarray(0, 40).toString("latin1"));
  if (!head) throw new Error("pdftoppm wrote no grey picture");
  const [width, height] = [Number(head[1]), Number(head[2])];
  const start = head[0].length;
  return {
    width,
    height,
    mmPerPixel: 25.4 / dpi,
    ink: (x, y) => 1 - (pgm[start + y * width + x] ?? 255) / 255,
  };
}
