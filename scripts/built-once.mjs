// Builds something only when its sources changed since the last time.
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { alone } from "./lock.mjs";
import { root } from "./ready.mjs";

const leftOut = new Set(["node_modules", "dist", "out", "coverage"]);

function* filesUnder(path) {
  const full = join(root, path);
  if (!existsSync(full)) return;
  if (statSync(full).isFile()) yield path;
  else
    for (const name of readdirSync(full).sort()) if (!leftOut.has(name)) yield* filesUnder(`${path}/${name}`);
}

function hashOf(sources) {
  const hash = createHash("sha256");
  for (const source of sources) {
    for (const path of filesUnder(source))
      hash
        .update(path)
        .update("\0")
        .update(readFileSync(join(root, path)));
  }
  return hash.digest("hex");
}

/**
 * Returns true when it stands in the folder, built now or before. sources: everything it is made of, as paths from the root. build:
 * returns true when it was built. Of two at once the second waits for the first.
 */
export function builtOnce({ name, sources, folder, build }) {
  const stamp = join(root, folder, ".sources");
  const hash = hashOf(sources);
  const stands = () => existsSync(stamp) && readFileSync(stamp, "utf8") === hash;
  return (
    stands() ||
    alone(name, () => {
      if (stands()) return true;
      if (!build()) return false;
      writeFileSync(stamp, hash);
      return true;
    })
  );
}
