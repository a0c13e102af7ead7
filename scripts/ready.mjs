// Makes the checkout ready to run: packages as the lock says. Node's own modules only, since nothing else is there yet.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { npm } from "./npm.mjs";

export const root = dirname(dirname(fileURLToPath(import.meta.url)));
const stamp = join(root, "node_modules", ".treewright-ready");
const lock = join(root, ".cache", "ready.lock");
const waitAtMostMs = 15 * 60 * 1000;

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

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}

/** Two starts at once must not install into one folder: the second waits for the first. */
function holdLock() {
  mkdirSync(dirname(lock), { recursive: true });
  const until = Date.now() + waitAtMostMs;
  for (;;) {
    try {
      writeFileSync(lock, String(process.pid), { flag: "wx" });
      return;
    } catch (error) {
      if (error.code !== "EEXIST") throw error;
    }
    const holder = Number(readOr(lock, ""));
    if (holder > 0 && !isAlive(holder)) rmSync(lock, { force: true });
    else if (Date.now() > until)
      throw new Error(`another start holds ${lock}; remove that file if none is running`);
    else Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
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
  holdLock();
  try {
    if (readOr(stamp, "") === wanted()) return;
    console.log("Installing packages as package-lock.json says ...");
    install();
    writeFileSync(stamp, wanted());
  } finally {
    rmSync(lock, { force: true });
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) makeReady();
