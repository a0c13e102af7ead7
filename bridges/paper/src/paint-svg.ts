import { FAMILIES, svgOf } from "@treewright/core/engine/drawing/svg.ts";
import type { Document, Face } from "@treewright/core/engine/drawing.ts";
import type { FontFile } from "./fonts.ts";
import { newPdf } from "./pdfkit-inside.ts";
import { typesetter } from "./typesetter.ts";

/**
 * A drawing as SVG, one text a page, each with the fonts that set its words inside it. Throws MissingGlyph as the
 * PDF does, RangeError for a length that is no number.
 */
export function paintSvg(document: Document, fonts: readonly FontFile[]): readonly string[] {
  const setter = typesetter(newPdf({}), fonts);
  return document.pages.map((page, i) => {
    const used = new Set<string>();
    for (const item of page.items) {
      if (item.kind !== "text") continue;
      const runs = setter.runs(item.words, item.face, item.bold, { page: i + 1, part: item.name });
      for (const run of runs) used.add(run.font);
    }
    const style = setter.files.filter(({ name }) => used.has(name)).map(fontFace);
    return svgOf(page, document.title, document.language, style.join(""));
  });
}

/** Two files of one face and weight need no ranges: a browser takes from each the signs it has. */
function fontFace({ face, bold, bytes }: FontFile): string {
  const source = `url(data:font/woff;base64,${base64(bytes)}) format("woff")`;
  return `@font-face{font-family:${ownFamily(face)};font-weight:${bold ? 700 : 400};src:${source}}`;
}

function ownFamily(face: Face): string {
  return FAMILIES[face].split(",")[0] ?? "";
}

function base64(bytes: Uint8Array): string {
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}
