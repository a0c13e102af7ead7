const CHANNEL = "treewright-records";

/** Tells other tabs of this browser that something was kept, and hears of it from them. */
export function betweenTabs(heard: () => void): { tell(): void; close(): void } {
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = heard;
  return { tell: () => channel.postMessage("kept"), close: () => channel.close() };
}
