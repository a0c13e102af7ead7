import { fontsFromPackages } from "./fonts-node.ts";
import { type Paper, paperOf } from "./paper.ts";

/** Paper in Node, its fonts read from the installed packages. */
export async function paperInNode(): Promise<Paper> {
  return paperOf(await fontsFromPackages());
}
