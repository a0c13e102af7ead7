import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/** Workbox marks each of its packages in what it writes, minified or not. */
const MARK = /["']workbox:([a-z-]+):[\d.]+["']/g;
/** Loads the parts of a service worker; comes from the bundler that workbox calls, which gives no list of its own. */
const LOADER = "node_modules/@trickfilm400/rollup-plugin-off-main-thread";
const LOADS = "didn’t register its module";

/** Folders of the packages in a service worker that workbox wrote into `folder`; none where there is no such worker. */
export function packagesOfServiceWorker(folder: string): string[] {
  if (!existsSync(join(folder, "sw.js"))) return [];
  const texts = readdirSync(folder)
    .filter((name) => /^(sw|workbox-[\w-]+)\.js$/.test(name))
    .map((name) => readFileSync(join(folder, name), "utf8"));
  const marked = texts.flatMap((text) =>
    [...text.matchAll(MARK)].map(([, name]) => `node_modules/workbox-${name}`),
  );
  if (marked.length === 0) throw new Error("shipped: the service worker bears no mark of what it is made of");
  return [...new Set([...marked, ...(texts.some((text) => text.includes(LOADS)) ? [LOADER] : [])])];
}
