// One at a time among the processes of a checkout. Node's own modules only: packages may not be there yet.
import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const locks = join(dirname(dirname(fileURLToPath(import.meta.url))), ".cache");
const waitAtMostMs = 15 * 60 * 1000;

function isAlive(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return error.code === "EPERM";
  }
}

function holderOf(lock) {
  try {
    return Number(readFileSync(lock, "utf8"));
  } catch {
    return 0;
  }
}

function hold(lock) {
  mkdirSync(locks, { recursive: true });
  const until = Date.now() + waitAtMostMs;
  for (;;) {
    try {
      writeFileSync(lock, String(process.pid), { flag: "wx" });
      return;
    } catch (error) {
      if (error.code !== "EEXIST") throw error;
    }
    const holder = holderOf(lock);
    if (holder > 0 && !isAlive(holder)) rmSync(lock, { force: true });
    else if (Date.now() > until)
      throw new Error(`another process holds ${lock}; remove that file if none is running`);
    else Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 200);
  }
}

/** Does it while nobody else holds the lock of that name, and returns what it returns; who comes second waits for the first. */
export function alone(name, act) {
  const lock = join(locks, `${name}.lock`);
  hold(lock);
  try {
    return act();
  } finally {
    rmSync(lock, { force: true });
  }
}
