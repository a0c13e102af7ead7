/** The press in a worker of its own: the caller's to end. */
export const pressWorker = (): Worker =>
  new Worker(new URL("./press.ts", import.meta.url), { type: "module" });
