import { useSyncExternalStore } from "react";

/** What is ready without signal, and whether a new version waits. */
export interface Offline {
  readonly state: "not-here" | "getting-ready" | "ready";
  readonly newVersion: ServiceWorker | undefined;
}

let shown: Offline = { state: "not-here", newVersion: undefined };
const listeners = new Set<() => void>();
function change(part: Partial<Offline>): void {
  shown = { ...shown, ...part };
  for (const listener of listeners) listener();
}

const listen = (listener: () => void): (() => void) => {
  listeners.add(listener);
  return () => listeners.delete(listener);
};
export const offlineNow = (): Offline => shown;
export const useOffline = (): Offline => useSyncExternalStore(listen, offlineNow);

/** Has the app kept for a start without signal. A browser without a secure page has no such worker, and the line says so. */
export async function keepForOffline(): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  change({ state: navigator.serviceWorker.controller ? "ready" : "getting-ready" });
  const registration = await navigator.serviceWorker.register("/sw.js");
  const waiting = () => {
    if (registration.waiting && navigator.serviceWorker.controller)
      change({ newVersion: registration.waiting });
  };
  waiting();
  registration.addEventListener("updatefound", () =>
    registration.installing?.addEventListener("statechange", waiting),
  );
  await navigator.serviceWorker.ready;
  change({ state: "ready" });
}

/** Lets the waiting version take over, and begins anew with it. */
export function takeNewVersion(worker: ServiceWorker): void {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
  worker.postMessage({ type: "SKIP_WAITING" });
}
