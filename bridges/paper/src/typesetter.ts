import type { Face, Measure } from "@treewright/core/engine/drawing.ts";
import type PDFDocument from "pdfkit";
import type { FontFile } from "./fonts.ts";
import { MissingGlyph } from "./missing-glyph.ts";
import { hasGlyph, newPdf } from "./pdfkit-inside.ts";

type Pdf = InstanceType<typeof PDFDocument>;
type Place = { readonly page: number; readonly part: string };

/** Words of one font file, in a row. */
export interface Run {
  readonly font: string;
  readonly words: string;
}

/** Chooses a font for each character and knows how wide words come out. */
export interface Typesetter {
  readonly files: readonly (FontFile & { readonly name: string })[];
  runs(words: string, face: Face, bold: boolean, place?: Place): readonly Run[];
  width(run: Run, size: number): number;
}

/** Fonts are registered with the document once; pdfkit embeds only those that set a word. */
export function typesetter(pdf: Pdf, fonts: readonly FontFile[]): Typesetter {
  const named = fonts.map((file, i) => ({ ...file, name: `F${i}` }));
  for (const { name, bytes } of named) pdf.registerFont(name, bytes);

  function fontFor(character: string, face: Face, bold: boolean): string | undefined {
    const serving = named.filter((file) => file.face === face && file.bold === bold);
    return serving.find(({ name }) => hasGlyph(pdf.font(name), character))?.name;
  }
  const chosen = new Map<string, string | undefined>();

  return {
    files: named,
    runs(words, face, bold, place) {
      const runs: { font: string; words: string }[] = [];
      for (const character of words) {
        const key = `${face} ${bold} ${character}`;
        if (!chosen.has(key)) chosen.set(key, fontFor(character, face, bold));
        const font = chosen.get(key);
        if (font === undefined)
          throw new MissingGlyph(character, `${face}${bold ? ", bold" : ""}`, words, place);
        const last = runs.at(-1);
        if (last?.font === font) last.words += character;
        else runs.push({ font, words: character });
      }
      return runs;
    },
    width: (run, size) => pdf.font(run.font).fontSize(size).widthOfString(run.words),
  };
}

/** Widths for the layout, from the very fonts that will set the words. Throws MissingGlyph. */
export function measureWith(fonts: readonly FontFile[]): Measure {
  const setter = typesetter(newPdf({}), fonts);
  return (words, face, bold, size) => {
    return setter.runs(words, face, bold).reduce((wide, run) => wide + setter.width(run, size), 0);
  };
}
