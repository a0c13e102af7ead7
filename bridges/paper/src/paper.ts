import type { Document, Measure } from "@treewright/core/engine/drawing.ts";
import type { FontFile } from "./fonts.ts";
import { paintPdf } from "./paint.ts";
import { measureWith } from "./typesetter.ts";

/** Paper with its fonts at hand: one measures for the layout, the other paints what was laid out. */
export interface Paper {
  readonly measure: Measure;
  readonly paint: (document: Document) => Promise<Uint8Array>;
}

export function paperOf(fonts: readonly FontFile[]): Paper {
  return { measure: measureWith(fonts), paint: (document) => paintPdf(document, fonts) };
}
