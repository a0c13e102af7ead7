import { type Remote, wrap } from "comlink";
import type { Bench } from "./bench.ts";

/** A worker of its own with the whole calculation in it. */
export function openBench(): Remote<Bench> {
  return wrap<Bench>(new Worker(new URL("./bench.ts", import.meta.url), { type: "module" }));
}
