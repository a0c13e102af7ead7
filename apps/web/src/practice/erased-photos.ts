import type { Store } from "../records.ts";
import { jsonIn } from "./noted.ts";

const ERASED = "erased-photos";

/** Fingerprints of photos that were erased for good on this device, or told as erased by a copy that was brought in. */
export async function erasedPhotos(store: Store): Promise<ReadonlySet<string>> {
  const noted = jsonIn(await store.noted(ERASED));
  return new Set(Array.isArray(noted) ? noted.map(String) : []);
}

export async function noteErased(store: Store, hashes: Iterable<string>): Promise<void> {
  const all = new Set([...(await erasedPhotos(store)), ...hashes]);
  await store.note(ERASED, JSON.stringify([...all]));
}
