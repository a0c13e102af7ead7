import { type Remote, wrap } from "comlink";
import type { Copying } from "./copy-worker.ts";

/** Work on everything that is kept, in a worker of its own that ends with it, or when `stop` comes: then it throws. */
export async function besideThePage<Done>(
  act: (copying: Remote<Copying>) => Promise<Done>,
  stop: AbortSignal,
): Promise<Done> {
  const worker = new Worker(new URL("./copy-worker.ts", import.meta.url), { type: "module" });
  const stopped = new Promise<never>((_, refuse) => {
    stop.addEventListener("abort", () => refuse(stop.reason), { once: true });
  });
  try {
    return await Promise.race([act(wrap<Copying>(worker)), stopped]);
  } finally {
    worker.terminate();
  }
}
