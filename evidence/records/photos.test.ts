import { GRAPH_KINDS } from "@treewright/core/records/kinds.ts";
import { standingOf } from "@treewright/core/records/stands.ts";
import {
  citing,
  erasedPhotoOf,
  erasing,
  photoPlace,
  photosOf,
} from "@treewright/core/survey/recorded/photos.ts";
import { describe, expect, it } from "vitest";
import { Device } from "./written.ts";

const photo = (digit: string) => ({ hash: digit.repeat(64), type: "image/jpeg" as const, bytes: 1200 });

/** What an entry says of the photo: plain JSON, as it is written. */
const says = (digit: string) => JSON.parse(JSON.stringify(citing(photo(digit), "saddle.panel")));

function cited(...entries: Device["entries"]) {
  const standing = standingOf(entries, GRAPH_KINDS);
  return photosOf(
    new Map(
      [...standing].map(
        ([
          at,
          {
            entries: [one],
          },
        ]) => [at, one?.value],
      ),
    ),
  );
}

describe("photos", () => {
  it("R21 two hands that had not seen each other cite two photos of one thing, and do not disagree", () => {
    const [one, other] = [new Device(1), new Device(2)];
    one.write("stated", says("a"));
    other.write("stated", says("b"));
    const all = [...one.entries, ...other.entries];
    expect(
      cited(...all)
        .map(({ hash, of }) => [hash[0], of])
        .sort(),
    ).toEqual([
      ["a", "saddle.panel"],
      ["b", "saddle.panel"],
    ]);
    expect([...standingOf(all, GRAPH_KINDS).values()].some(({ differ }) => differ)).toBe(false);
  });
  it("R21 one that is withdrawn is a cleared place: the entry that cited it stays", () => {
    const device = new Device(1);
    device.write("stated", says("a"));
    device.write("stated", { at: photoPlace(photo("a").hash) });
    expect(cited(...device.entries)).toEqual([]);
    expect(device.entries.length).toBe(2);
  });
  it("R22 one that is erased says so at its place: it is cited no more, and which it was is still told", () => {
    const device = new Device(1);
    device.write("stated", says("a"));
    device.write("stated", JSON.parse(JSON.stringify(erasing(photo("a")))));
    expect(cited(...device.entries)).toEqual([]);
    expect(device.entries.map(({ body }) => erasedPhotoOf(body))).toEqual([undefined, photo("a").hash]);
    for (const value of [{ erased: "yes" }, { erased: true, more: 1 }, "erased", undefined])
      expect(erasedPhotoOf({ at: photoPlace("a".repeat(64)), value })).toBeUndefined();
    expect(erasedPhotoOf({ at: "photos.short", value: { erased: true } })).toBeUndefined();
  });
  it("R21 what stands at such a place and is no photo is not shown as one", () => {
    const none: readonly (readonly [string, unknown])[] = [
      ["photos.short", { type: "image/jpeg", bytes: 1, of: "x" }],
      [photoPlace("a".repeat(64)), { type: "text/html", bytes: 1, of: "x" }],
      [photoPlace("b".repeat(64)), { type: "image/jpeg", bytes: 0, of: "x" }],
      [photoPlace("c".repeat(64)), "a photo"],
    ];
    expect(photosOf(new Map(none))).toEqual([]);
  });
});
