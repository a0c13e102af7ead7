import { type Remote, wrap } from "comlink";
import type { Bench } from "./bench.ts";

/** A worker of its own with the whole calculation in it: the caller's to end. */
export const benchWorker = (): Worker =>
  new Worker(new URL("./bench.ts", import.meta.url), { type: "module" });

/** The same for as long as the page is there. */
export const openBench = (): Remote<Bench> => wrap<Bench>(benchWorker());
