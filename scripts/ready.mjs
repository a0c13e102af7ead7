// Makes the checkout ready to run: packages as the lock says. Node's own modules only, since nothing else is there yet.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { alone } from "./lock.mjs";
import { npm } from "./npm.mjs";

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stamp = join(root, "node_modules", ".treewright-ready");

/** Short hash of the lock, the Node version and the machine: packages with compiled parts differ between them. */
function wanted() {
  const text = readFileSync(join(root, "package-lock.json"));
  return createHash("sha256")
    .update(text)
    .update(`${process.version} ${process.platform} ${process.arch}`)
    .digest("hex");
}

function readOr(path, otherwise) {
  try {
    return readFileSync(path, "utf8");
  } catch {
    return otherwise;
  }
}

function install() {
  const args = npm(["ci", "--include=dev", "--no-audit", "--no-fund"]);
  const done = spawnSync(process.execPath, args, { cwd: root, stdio: ["ignore", "inherit", "inherit"] });
  if (done.status !== 0) throw new Error("npm ci failed; the lines above say why");
}

/** Installs when the lock, Node or the machine changed since the last time; otherwise costs a few milliseconds. */
export function makeReady() {
  if (readOr(stamp, "") === wanted()) return;
  // Two starts at once must not install into one folder.
  alone("ready", () => {
    if (readOr(stamp, "") === wanted()) return;
    console.log("Installing packages as package-lock.json says ...");
    install();
    writeFileSync(stamp, wanted());
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) makeReady();
