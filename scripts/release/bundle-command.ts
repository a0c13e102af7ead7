import { dirname, join, relative, resolve, sep } from "node:path";
import { build } from "vite";
import { FONT_PATHS } from "../../bridges/paper/src/fonts.ts";
import { root } from "../../evidence/house/sources.ts";
import { sayWhatIsShipped } from "../shipped/say-what-is-shipped.ts";
import type { Whole } from "../shipped/sbom.ts";

/** The oldest Node that the command promises to run on; package.json says the same. */
const TARGET = "node20.19";

const FILE = "treewright.mjs";
/** Name of the map of that file. */
export const MAP = `${FILE}.map`;

/** A source in the map by its path from the root of the project: the same on every machine. */
const fromRoot = (source: string, map: string): string =>
  relative(root, resolve(dirname(map), source))
    .split(sep)
    .join("/");

/** Files of the fonts that the paper reads while it runs, under node_modules. */
export const fontFiles: readonly string[] = FONT_PATHS.map(({ path }) => `@fontsource/${path}`);

/**
 * The command and all that it imports as one file of plain JavaScript, `folder/treewright.mjs`, with its notices and its list of parts
 * beside it. Nothing is made shorter: what runs can be read, and comments of others stay where they are.
 */
export async function bundleCommand(whole: Whole, folder: string): Promise<void> {
  const shipped = sayWhatIsShipped(
    whole,
    fontFiles.map((path) => `node_modules/${path}`),
  );
  await build({
    root,
    configFile: false,
    logLevel: "warn",
    plugins: [shipped.bundle],
    ssr: { noExternal: true },
    build: {
      ssr: join(root, "apps/cli/src/main.ts"),
      outDir: folder,
      emptyOutDir: true,
      copyPublicDir: false,
      target: TARGET,
      minify: false,
      // Lies beside the package, to find the place of a fault that somebody reports.
      sourcemap: "hidden",
      rolldownOptions: {
        output: {
          entryFileNames: FILE,
          sourcemapPathTransform: fromRoot,
          codeSplitting: false,
          banner: "#!/usr/bin/env node",
        },
      },
    },
  });
}
