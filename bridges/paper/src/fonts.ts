import type { Face } from "@treewright/core/engine/drawing.ts";

/** One font file: its bytes, the face and weight it serves. */
export interface FontFile {
  readonly face: Face;
  readonly bold: boolean;
  readonly bytes: Uint8Array;
}

/**
 * Every file the paper needs, under node_modules; where two serve one face and weight, the first that has the
 * character sets it. WOFF, not WOFF2: the subsetter reads glyphs of the second wrongly once they are packed.
 * All are under the SIL Open Font License 1.1.
 */
export const FONT_PATHS: readonly { readonly face: Face; readonly bold: boolean; readonly path: string }[] = [
  {
    face: "text",
    bold: false,
    path: "atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff",
  },
  {
    face: "text",
    bold: false,
    path: "atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff",
  },
  {
    face: "text",
    bold: true,
    path: "atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff",
  },
  {
    face: "text",
    bold: true,
    path: "atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff",
  },
  { face: "figure", bold: false, path: "b612-mono/files/b612-mono-latin-400-normal.woff" },
  { face: "figure", bold: true, path: "b612-mono/files/b612-mono-latin-700-normal.woff" },
  { face: "letter", bold: false, path: "source-serif-4/files/source-serif-4-latin-400-normal.woff" },
  { face: "letter", bold: false, path: "source-serif-4/files/source-serif-4-latin-ext-400-normal.woff" },
  { face: "letter", bold: true, path: "source-serif-4/files/source-serif-4-latin-700-normal.woff" },
  { face: "letter", bold: true, path: "source-serif-4/files/source-serif-4-latin-ext-700-normal.woff" },
];
