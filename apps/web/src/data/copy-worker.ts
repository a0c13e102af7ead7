/// <reference lib="webworker" />
import { indexedStore } from "@treewright/store/indexed.ts";
import { expose } from "comlink";
import { thisMachine } from "../practice/machine.ts";
import type { Store } from "../records.ts";
import { type Brought, bring } from "./bring.ts";
import type { TellBring } from "./bring-records.ts";
import { copyOf, type Papers, type TellCopy } from "./pack.ts";

/* Copying and bringing in beside the page: a practice of many years takes minutes, in which the screen still answers. */
async function at<Done>(name: string, act: (store: Store) => Promise<Done>): Promise<Done> {
  const store = await indexedStore(name);
  try {
    return await act(store);
  } finally {
    store.close();
  }
}

const copying = {
  copy: (name: string, papers: Papers, unixMs: number, tell: TellCopy): Promise<Blob> =>
    at(name, (store) => copyOf(store, papers, new Date(unixMs), seldom(tell))),
  bring: (name: string, file: Blob, tell: TellBring): Promise<Brought> =>
    at(name, (store) => bring(store, thisMachine(), file, seldom(tell))),
};

/** Told no more often than an eye sees. Working value, ms. */
const TOLD_EVERY_MS = 200;

function seldom<Given extends unknown[]>(tell: (...given: Given) => void): (...given: Given) => void {
  let last = 0;
  return (...given) => {
    const time = performance.now();
    if (time - last < TOLD_EVERY_MS) return;
    last = time;
    tell(...given);
  };
}

export type Copying = typeof copying;

expose(copying);
