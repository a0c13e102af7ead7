import { indexedStore } from "@treewright/store/indexed.ts";
import type { Store } from "@treewright/store/store.ts";
import { Device } from "../records/written.ts";
import { CONTRACT } from "./contract.ts";

/** One clause on a data base of its own; the words of what went wrong, or nothing. */
async function runClause(at: number): Promise<string> {
  const name = `clause ${at}`;
  const store = await indexedStore(name);
  try {
    await CONTRACT[at]?.holds(store, () => indexedStore(name));
    return "";
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** Every durability that a transaction which writes was asked for. `relax()` has them ask for nothing: a control for what counts syncs. */
const asked: (string | undefined)[] = [];
let relaxed = false;
const begin = IDBDatabase.prototype.transaction;
IDBDatabase.prototype.transaction = function (stores, mode, options) {
  if (mode === "readwrite") asked.push(options?.durability);
  return relaxed
    ? begin.call(this, stores, mode, { durability: "relaxed" })
    : begin.call(this, stores, mode, options);
};
const relax = (): void => {
  relaxed = true;
};

let written: Store | undefined;
/** Keeps so many entries, one at a time, each waited for, as readings are. */
async function keepOneByOne(count: number): Promise<void> {
  written ??= await indexedStore("one by one");
  const device = new Device(1);
  for (let n = 0; n < count; n++) await written.keep({ entries: [device.state("a", n)] });
}

/** A data base that a newer version has written. */
async function newer(): Promise<string> {
  await new Promise((done, failed) => {
    const opening = indexedDB.open("from later", 900);
    opening.onsuccess = () => done(opening.result.close());
    opening.onerror = () => failed(opening.error);
  });
  return indexedStore("from later").then(
    () => "opened",
    (error: { why?: string }) => String(error.why),
  );
}

Object.assign(globalThis, { runClause, newer, relax, keepOneByOne, durabilities: () => asked });
