import { readdir, readFile, realpath } from "node:fs/promises";
import { join, sep } from "node:path";

/** A folder whose files may be read, and nothing outside it. */
export interface Shelf {
  /** The bytes of one file; undefined when there is no such file on this shelf. */
  take(path: string): Promise<Buffer | undefined>;
  /** Names of the files lying on it, in order. */
  names(): Promise<string[]>;
}

/** Plain steps of letters, digits, dot, dash and underscore; no step starts with a dot. */
const PLAIN = /^[A-Za-z0-9_-][A-Za-z0-9._-]*(\/[A-Za-z0-9_-][A-Za-z0-9._-]*)*$/;

/** Reads from `folder` only. A path with any other sign in it, or a link that leads out, finds nothing. */
export function shelf(folder: string): Shelf {
  return {
    async take(path) {
      if (!PLAIN.test(path)) return undefined;
      try {
        const home = await realpath(folder);
        const file = await realpath(join(home, path));
        return file.startsWith(home + sep) ? await readFile(file) : undefined;
      } catch {
        return undefined;
      }
    },
    async names() {
      try {
        const entries = await readdir(folder, { withFileTypes: true });
        return entries
          .filter((entry) => entry.isFile() && PLAIN.test(entry.name))
          .map((entry) => entry.name)
          .sort();
      } catch {
        return [];
      }
    },
  };
}
