import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { projectPaths, root } from "./sources.ts";

const manifestSchema = z.looseObject({
  dependencies: z.record(z.string(), z.string()).default({}),
  devDependencies: z.record(z.string(), z.string()).default({}),
});

/** Names of everything asked for by hand in a package.json of the project, but its own rooms. */
export function directDependencies(): string[] {
  const manifests = projectPaths()
    .filter((path) => /(^|\/)package\.json$/.test(path))
    .map((path) => manifestSchema.parse(JSON.parse(readFileSync(join(root, path), "utf8"))));
  const names = manifests.flatMap((one) => [
    ...Object.keys(one.dependencies),
    ...Object.keys(one.devDependencies),
  ]);
  return [...new Set(names)].filter((name) => !name.startsWith("@treewright/")).sort();
}

/** Those without a line of their own, "- `name` why", in the page of decisions. */
export function withoutReason(names: readonly string[], page: string): string[] {
  return names.filter((name) => !page.includes(`\n- \`${name}\` `));
}
