import type { Document, Measure } from "@treewright/core/engine/drawing.ts";
import type { FontFile } from "./fonts.ts";
import { paintPdf } from "./paint.ts";
import { paintSvg } from "./paint-svg.ts";
import { measureWith } from "./typesetter.ts";

/** Paper with its fonts at hand: one measures for the layout, the other paints what was laid out. */
export interface Paper {
  readonly measure: Measure;
  readonly paint: (document: Document) => Promise<Uint8Array>;
  /** The same as SVG, one text a page. */
  readonly paintSvg: (document: Document) => readonly string[];
}

export function paperOf(fonts: readonly FontFile[]): Paper {
  return {
    measure: measureWith(fonts),
    paint: (document) => paintPdf(document, fonts),
    paintSvg: (document) => paintSvg(document, fonts),
  };
}
