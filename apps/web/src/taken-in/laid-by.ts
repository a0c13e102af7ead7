/** The cache in which the service worker lays what another app hands over (`public/taken-in.js`). */
const LAID_BY = "taken-in";

/** One file that waits until somebody says where it belongs. */
export interface LaidBy {
  readonly address: string;
  readonly file: File;
}

/** All that waits, in the order of its addresses. A page without a secure address has no caches, and nothing waits there. */
export async function laidBy(): Promise<readonly LaidBy[]> {
  if (!("caches" in globalThis) || !(await caches.has(LAID_BY))) return [];
  const cache = await caches.open(LAID_BY);
  const all = await Promise.all(
    (await cache.keys()).map(async ({ url }): Promise<LaidBy[]> => {
      const kept = await cache.match(url);
      return kept ? [{ address: url, file: await fileOf(kept) }] : [];
    }),
  );
  return all.flat();
}

async function fileOf(kept: Response): Promise<File> {
  const type = kept.headers.get("content-type") ?? "";
  return new File([await kept.blob()], nameIn(kept.headers.get("x-name") ?? ""), { type });
}

function nameIn(written: string): string {
  try {
    return decodeURIComponent(written);
  } catch {
    return written;
  }
}

/** Lets one go: it was kept where it belongs, or is not wanted. */
export async function letGo({ address }: LaidBy): Promise<void> {
  await (await caches.open(LAID_BY)).delete(address);
}
