import { readdirSync } from "node:fs";

/** A check computes something with the program and hands it to `published`. */
export interface Check {
  readonly name: string;
  readonly run: () => void;
}

/** All checks of the repository: what each file `*.checks.ts` under `evidence/` exports as `checks`, in order of path. */
export async function allChecks(): Promise<Check[]> {
  const root = new URL("../", import.meta.url);
  const files = readdirSync(root, { recursive: true, encoding: "utf8" });
  const found: Check[] = [];
  for (const file of files
    .filter((name) => name.endsWith(".checks.ts") && !name.includes("node_modules"))
    .sort()) {
    const module: { checks?: readonly Check[] } = await import(new URL(file, root).href);
    if (!module.checks) throw new Error(`evidence/${file} exports no checks`);
    found.push(...module.checks);
  }
  return found;
}
