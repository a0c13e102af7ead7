import { mkdirSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Plugin } from "vite";
import { root } from "../../evidence/house/sources.ts";
import { packagesOfServiceWorker } from "./kept-by-worker.ts";
import { noticesText } from "./notices.ts";
import { folderOfModule, shippedPackages } from "./packages.ts";
import { sbomText, type Whole } from "./sbom.ts";

export const NOTICES = "notices.txt";
export const SBOM = "sbom.cdx.json";

/** Two plugins that share what they see: one for the bundle, one for its workers, which are bundles of their own. */
export interface Saying {
  readonly bundle: Plugin;
  readonly worker: Plugin;
}

/**
 * Notes which modules and files of others end up in what is built, and writes the notices and the list of parts beside it. `also`: files
 * that are laid beside the bundle by hand, from the root of the project.
 */
export function sayWhatIsShipped(whole: Whole, also: readonly string[] = []): Saying {
  const files = new Set(also.map((path) => join(root, path)));
  let from = "";
  let out = "";
  const note = (name: string): Plugin => ({
    name,
    configResolved(config) {
      from = config.root;
      out = resolve(config.root, config.build.outDir);
    },
    generateBundle(_options, bundle) {
      for (const made of Object.values(bundle)) for (const file of madeOf(made, from)) files.add(file);
    },
  });
  return {
    worker: note("treewright-shipped-in-worker"),
    bundle: {
      ...note("treewright-shipped"),
      // The service worker is written when the bundle is closed, so what it is made of is seen only after.
      closeBundle: {
        order: "post",
        sequential: true,
        handler: () => writeBeside(out, whole, files),
      },
    },
  };
}

type Made = Parameters<Extract<Plugin["generateBundle"], (...args: never[]) => unknown>>[1][string];

/** What a file of the bundle is made of: modules that are still in it, or the file that it is a copy of. */
function madeOf(made: Made, from: string): string[] {
  if (made.type === "asset") return made.originalFileNames.map((name) => resolve(from, name));
  return Object.keys(made.modules);
}

function writeBeside(out: string, whole: Whole, files: ReadonlySet<string>): void {
  const folders = [...files].flatMap((file) => folderOfModule(file) ?? []);
  const packages = shippedPackages([...folders, ...packagesOfServiceWorker(out)], files);
  mkdirSync(out, { recursive: true });
  writeFileSync(join(out, NOTICES), noticesText(`${whole.name} ${whole.version}`, packages));
  writeFileSync(join(out, SBOM), sbomText(whole, packages));
}
