import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { root } from "../house/sources.ts";

/** The fields of CycloneDX (ECMA-424) that are compared here; whether the whole list keeps the standard's form is `form.test.ts`. */
const bom = z.object({
  components: z.array(z.object({ name: z.string(), version: z.string(), purl: z.string() })),
});
const manifest = z.object({ name: z.string(), version: z.string() });

const sourceMap = z.object({ sources: z.array(z.string()) });

/** Folders of the packages, from the root, that pieces of a bundled file came from, as the bundler's source map (ECMA-426) tells. */
export function packagesOfMap(path: string): string[] {
  const { sources } = sourceMap.parse(JSON.parse(readFileSync(path, "utf8")));
  const inPackage = /(node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+)\//;
  return [...new Set(sources.flatMap((source) => inPackage.exec(source)?.[1] ?? []))];
}

/** "name version" of the packages in folders, sorted, each once. */
export function partsOf(folders: readonly string[]): string[] {
  const named = folders.map((folder) => {
    const { name, version } = manifest.parse(
      JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8")),
    );
    return `${name} ${version}`;
  });
  return [...new Set(named)].sort();
}

export interface Sayings {
  /** "name version" of every component in the list of parts. */
  readonly components: readonly string[];
  /** "name version" of every package that has a text of its own in the notices. */
  readonly noticed: readonly string[];
  readonly notices: string;
}

/** What a build says of the work of others, read back from the folder it wrote. */
export function sayingsOf(folder: string): Sayings {
  const { components } = bom.parse(JSON.parse(readFileSync(join(folder, "sbom.cdx.json"), "utf8")));
  const notices = readFileSync(join(folder, "notices.txt"), "utf8");
  const headings = notices.matchAll(/^={80}\n(\S+ \S+) {2}.+\n={80}\n\n(?=\S)/gm);
  return {
    components: components.map(({ name, version }) => `${name} ${version}`).sort(),
    noticed: [...headings].map(([, heading]) => heading ?? "").sort(),
    notices,
  };
}
