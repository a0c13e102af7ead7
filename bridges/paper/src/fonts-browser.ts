import text from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url";
import textBold from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url";
import textExt from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url";
import textBoldExt from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url";
import figure from "@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff?url";
import figureBold from "@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff?url";
import letter from "@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff?url";
import letterBold from "@fontsource/source-serif-4/files/source-serif-4-latin-700-normal.woff?url";
import letterExt from "@fontsource/source-serif-4/files/source-serif-4-latin-ext-400-normal.woff?url";
import letterBoldExt from "@fontsource/source-serif-4/files/source-serif-4-latin-ext-700-normal.woff?url";
import { FONT_PATHS, type FontFile } from "./fonts.ts";

/** In the order of FONT_PATHS; the bundler gives each its address on our own origin. */
const URLS = [
  text,
  textExt,
  textBold,
  textBoldExt,
  figure,
  figureBold,
  letter,
  letterExt,
  letterBold,
  letterBoldExt,
];

/** Fetches the fonts from the page's own origin. Throws an Error that names the file that did not come. */
export function fontsFromOrigin(): Promise<readonly FontFile[]> {
  return Promise.all(
    FONT_PATHS.map(async ({ face, bold, path }, i) => {
      const answer = await fetch(URLS[i] ?? "");
      if (!answer.ok) throw new Error(`the font ${path} did not come: ${answer.status}`);
      return { face, bold, bytes: new Uint8Array(await answer.arrayBuffer()) };
    }),
  );
}
