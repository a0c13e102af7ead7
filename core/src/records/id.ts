/*
 * Ids that sort by the time they were made. Published: UUID version 7, RFC 9562 (2024), 5.7: 48 bits of milliseconds since
 * 1970, then chance. Clock and chance come from the caller.
 */

/** Bytes of chance that one id takes. */
export const ID_CHANCE_BYTES = 10;
const TWO_TO_48 = 281474976710656;

/** unixMs: whole milliseconds, 0 to 2^48 - 1; chance: ten bytes. Throws a RangeError for others. */
export function uuidV7(unixMs: number, chance: Uint8Array): string {
  if (!Number.isInteger(unixMs) || unixMs < 0 || unixMs >= TWO_TO_48)
    throw new RangeError(`read ${unixMs}; allowed: whole milliseconds from 0 to 2^48 - 1`);
  if (chance.length !== ID_CHANCE_BYTES)
    throw new RangeError(`read ${chance.length} bytes of chance; allowed: ${ID_CHANCE_BYTES}`);
  const [version = 0, low = 0, variant = 0, ...rest] = chance;
  const bytes = [(version & 0x0f) | 0x70, low, (variant & 0x3f) | 0x80, ...rest];
  const hex = bytes.map((byte) => byte.toString(16).padStart(2, "0")).join("");
  const time = unixMs.toString(16).padStart(12, "0");
  return `${time.slice(0, 8)}-${time.slice(8)}-${hex.slice(0, 4)}-${hex.slice(4, 8)}-${hex.slice(8)}`;
}
