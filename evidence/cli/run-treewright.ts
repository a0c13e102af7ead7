import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished } from "vitest";
import { builtCommand } from "../../scripts/command.mjs";

/**
 * The one file that a release has: it starts six times as fast as the checkout's own command, which compiles its sources first, and
 * says the same, word for word (`evidence/release/command.test.ts`).
 */
const program = builtCommand();
export const fullCase = fileURLToPath(new URL("../../core/src/survey/fixtures/full.json", import.meta.url));

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the real command in a process of its own; `typed` is what stands on its input. */
export function treewright(words: readonly string[], typed = ""): Ran {
  if (program === undefined) throw new Error("the command was not built; the lines above say why");
  const done = spawnSync(process.execPath, [program, ...words], {
    encoding: "utf8",
    input: typed,
    maxBuffer: 1 << 26,
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
}

/** A folder that is gone after the test, with these files in it. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(tmpdir(), "treewright-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
  return folder;
}

/** Lines too wide for a terminal of 80 columns. */
export const wideLines = ({ out, err }: Ran): string[] =>
  `${out}\n${err}`.split("\n").filter((line) => [...line].length > 80);

/** What a person must never be shown. */
export const innards =
  /\n\s+at \S+ ?\(|node:internal|\.ts:\d+:\d+|\[object Object\]|undefined|(?<!read: ")NaN|ZodError/;
