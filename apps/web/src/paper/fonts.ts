import text from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url";
import textBold from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url";
import textFar from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url";
import textFarBold from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url";
import figure from "@fontsource/b612-mono/files/b612-mono-latin-400-normal.woff?url";
import figureBold from "@fontsource/b612-mono/files/b612-mono-latin-700-normal.woff?url";
import letter from "@fontsource/source-serif-4/files/source-serif-4-latin-400-normal.woff?url";
import letterBold from "@fontsource/source-serif-4/files/source-serif-4-latin-700-normal.woff?url";
import letterFar from "@fontsource/source-serif-4/files/source-serif-4-latin-ext-400-normal.woff?url";
import letterFarBold from "@fontsource/source-serif-4/files/source-serif-4-latin-ext-700-normal.woff?url";
import { FONT_PATHS, type FontFile } from "@treewright/paper/fonts.ts";

const ADDRESSES = [
  text,
  textFar,
  textBold,
  textFarBold,
  figure,
  figureBold,
  letter,
  letterFar,
  letterBold,
  letterFarBold,
];

/** The file's own name at the end of a built address, before the hash. */
const nameIn = (path: string) => (path.split("/").at(-1) ?? "").replace(/\.woff$/, "");

/** The fonts of the paper, from this page's own origin, in the order in which the bridge wants them. */
export function fontsFromPage(): Promise<FontFile[]> {
  return Promise.all(
    FONT_PATHS.map(async ({ face, bold, path }) => {
      const address = ADDRESSES.find((one) => nameIn(one).startsWith(nameIn(path)));
      if (address === undefined) throw new Error(`the font ${path} is not part of this page`);
      return { face, bold, bytes: new Uint8Array(await (await fetch(address)).arrayBuffer()) };
    }),
  );
}
