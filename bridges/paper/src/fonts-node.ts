import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { FONT_PATHS, type FontFile } from "./fonts.ts";

/** Reads the fonts from their installed packages. Throws what the disk throws when one is not there. */
export function fontsFromPackages(): Promise<readonly FontFile[]> {
  const { resolve } = createRequire(import.meta.url);
  return Promise.all(
    FONT_PATHS.map(async ({ face, bold, path }) => {
      return { face, bold, bytes: new Uint8Array(await readFile(resolve(`@fontsource/${path}`))) };
    }),
  );
}
