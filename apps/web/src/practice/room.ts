import type { Refusal } from "../records.ts";

/**
 * Kept free of photos, so that readings never find the device full. Working limit, no source: a visit of 300 entries takes about
 * 1 MB with what a browser's data base adds, so this is a season's visits.
 */
export const READINGS_RESERVE_BYTES = 100_000_000;

/**
 * Whether photos of so many bytes in all may be kept; undefined where they may. Photos are refused while there is still room for
 * readings. Where a browser does not tell its room nothing is refused here: the store itself still refuses what it cannot keep.
 */
export async function roomForPhoto(
  bytes: number,
  estimate: () => Promise<StorageEstimate> = () => navigator.storage.estimate(),
): Promise<Refusal | undefined> {
  const { usage, quota } = await estimate();
  if (usage === undefined || quota === undefined) return undefined;
  const freeBytes = Math.max(0, quota - usage);
  if (freeBytes - bytes >= READINGS_RESERVE_BYTES) return undefined;
  return {
    where: "room on this device",
    read: `${megabytes(bytes)} of photo, and ${megabytes(freeBytes)} free`,
    allowed: `photos while ${megabytes(READINGS_RESERVE_BYTES)} stay free for readings: copy your data elsewhere and make room; readings are still kept`,
  };
}

const BYTES_A_MB = 1e6;
const megabytes = (bytes: number): string => `${Math.round(bytes / (BYTES_A_MB / 10)) / 10} MB`;
