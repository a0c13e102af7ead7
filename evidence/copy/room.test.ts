import { describe, expect, it } from "vitest";
import { daysSince, waitsTooLong } from "../../apps/web/src/practice/old-copy.ts";
import { READINGS_RESERVE_BYTES, roomForPhoto } from "../../apps/web/src/practice/room.ts";

/* What this cannot see: whether a browser tells its room rightly; most tell it roughly, on purpose. */
const device = (usage?: number, quota?: number) => async (): Promise<StorageEstimate> => ({
  ...(usage === undefined ? {} : { usage }),
  ...(quota === undefined ? {} : { quota }),
});
const PHOTO = 2_000_000;

describe("room for a photo", () => {
  it("is there while the readings' reserve stays free, to the byte", async () => {
    const quota = READINGS_RESERVE_BYTES + PHOTO;
    expect(await roomForPhoto(PHOTO, device(0, quota))).toBeUndefined();
    const refusal = await roomForPhoto(PHOTO, device(1, quota));
    expect(refusal?.read).toBe("2 MB of photo, and 102 MB free");
    expect(refusal?.allowed).toContain("100 MB stay free for readings");
  });
  it("is refused on a full device, also where more is used than there should be", async () => {
    expect(await roomForPhoto(1, device(2e9, 1e9))).toMatchObject({ read: "0 MB of photo, and 0 MB free" });
  });
  it("is not refused where the browser does not tell: the store refuses then", async () => {
    expect(await roomForPhoto(PHOTO, device())).toBeUndefined();
    expect(await roomForPhoto(PHOTO, device(5))).toBeUndefined();
  });
});

describe("a copy that waits", () => {
  const NOW = Date.parse("2031-04-12T09:00:00Z");
  it("is called for from the seventh day on", () => {
    expect(waitsTooLong("2031-04-05T09:00:01Z", NOW)).toBeUndefined();
    expect(waitsTooLong("2031-04-05T09:00:00Z", NOW)).toBe(7);
    expect(waitsTooLong(undefined, NOW)).toBeUndefined();
  });
  it("is not called for by a clock that was wrong", () => {
    expect(daysSince("2032-01-01T00:00:00Z", NOW)).toBe(0);
    expect(daysSince("yesterday", NOW)).toBeUndefined();
  });
});
