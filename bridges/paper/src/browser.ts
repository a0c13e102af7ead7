import type { Paper } from "./paper.ts";

/**
 * Paper in a browser or worker, through a bundler that knows `?url`. The PDF library (about 215 kB packed) and the fonts come only
 * when the first sheet is asked for. pdfkit's own browser build bundles as it is; its standalone build is not needed.
 */
export async function paperInBrowser(): Promise<Paper> {
  const [{ paperOf }, { fontsFromOrigin }] = await Promise.all([
    import("./paper.ts"),
    import("./fonts-browser.ts"),
  ]);
  return paperOf(await fontsFromOrigin());
}
