import {
  closeSync,
  createReadStream,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import { createInterface } from "node:readline";
import { CASE_BYTES_MAX } from "@treewright/core/survey/case.ts";
import { EXIT, Stop } from "./exit.ts";

const why: Readonly<Record<string, string>> = {
  ENOENT: "there is none of that name",
  EACCES: "this account may not",
  EPERM: "this account may not",
  EISDIR: "it is a folder",
  ENOTDIR: "a part of the path is no folder",
  ENOSPC: "the disk is full",
  EROFS: "the disk takes no writing",
  ENAMETOOLONG: "the name is too long",
  ELOOP: "its links lead in a circle",
};

function inWords(error: unknown): string {
  const code = error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : "";
  return why[code] ?? (code || "unknown reason");
}

function attempt<T>(does: string, path: string, act: () => T): T {
  try {
    return act();
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw new Stop(EXIT.notReadOrWritten, `Could not ${does} ${path}: ${inWords(error)}.`);
  }
}

export function isFolder(path: string): boolean {
  return attempt("read", path, () => statSync(path).isDirectory());
}

export const isThere = (path: string): boolean => existsSync(path);

/** The case files named: one, or every .json of a folder, in the order of their names. */
export function caseFiles(path: string): string[] {
  if (!isFolder(path)) return [path];
  const names = attempt("read", path, () => readdirSync(path)).filter((name) => name.endsWith(".json"));
  if (names.length === 0)
    throw new Stop(EXIT.notReadOrWritten, `Could not read ${path}: it holds no .json file.`);
  return names.sort().map((name) => join(path, name));
}

/** A case file's text. Anything that is no plain file, or larger than a case may be, is refused before it is read. */
export function readCaseText(path: string): string {
  const about = attempt("read", path, () => statSync(path));
  if (!about.isFile()) throw new Stop(EXIT.notReadOrWritten, `Could not read ${path}: it is no plain file.`);
  if (about.size > CASE_BYTES_MAX) {
    throw new Stop(EXIT.problemInCase, `${path}: read ${about.size} bytes; allowed are ${CASE_BYTES_MAX}.`);
  }
  return attempt("read", path, () => readFileSync(path, "utf8"));
}

/** The lines of a plain text file, read piece by piece: two million of them are no one text. */
export async function linesOf(path: string): Promise<readonly string[]> {
  const about = attempt("read", path, () => statSync(path));
  if (!about.isFile()) throw new Stop(EXIT.notReadOrWritten, `Could not read ${path}: it is no plain file.`);
  const lines: string[] = [];
  for await (const line of createInterface({ input: createReadStream(path, "utf8"), crlfDelay: Infinity }))
    lines.push(line);
  return lines;
}

export function bytesIfThere(path: string): Uint8Array | undefined {
  return existsSync(path) ? attempt("read", path, () => readFileSync(path)) : undefined;
}

/** Writes all or nothing: beside its place first, on the disk, then moved there. */
export function writeWhole(path: string, bytes: string | Uint8Array): void {
  attempt("write", path, () => {
    mkdirSync(dirname(path), { recursive: true });
    const draft = join(dirname(path), `.${basename(path)}.${process.pid}`);
    const file = openSync(draft, "w");
    try {
      const content = typeof bytes === "string" ? new TextEncoder().encode(bytes) : bytes;
      for (let at = 0; at < content.length; ) at += writeSync(file, content, at);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(draft, path);
  });
}

/** Name of a case for file names and lines: the file's name without its ending. */
export const caseName = (path: string): string => basename(path).replace(/\.json$/, "");
