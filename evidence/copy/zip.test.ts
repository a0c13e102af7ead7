import { NotRead, openPack } from "@treewright/zip/read.ts";
import { type PackedFile, packed } from "@treewright/zip/write.ts";
import { describe, expect, it } from "vitest";

/* Bytes of a pack are changed by hand, by the places that the published format gives them. What this cannot see: a fault of the library's own. */
const AT = new Date("2031-04-12T09:00:00Z");
const LIMITS = { files: 10, bytes: 1e6 };

const packOf = (...files: PackedFile[]): Promise<Blob> =>
  packed(
    (async function* () {
      yield* files;
    })(),
    AT,
  );

/** Every place where a name stands, made another of the same length. */
async function renamed(pack: Blob, from: string, to: string): Promise<Blob> {
  const text = Buffer.from(await pack.arrayBuffer()).toString("latin1");
  return new Blob([Buffer.from(text.replaceAll(from, to), "latin1")]);
}

async function refused(act: Promise<unknown>): Promise<string> {
  try {
    await act;
  } catch (error) {
    if (error instanceof NotRead) return error.why;
    throw error;
  }
  return "not refused";
}

describe("a pack", () => {
  it("holds its files byte for byte, and the same files make the same bytes", async () => {
    const bytes = Uint8Array.from({ length: 70_000 }, (_, at) => (at * 31) % 251);
    const make = () =>
      packOf({ path: "photos/a.jpg", content: bytes }, { path: "b.txt", content: "Grüße\n".repeat(500) });
    const one = await make();
    const pack = await openPack(one, LIMITS);
    expect(pack.paths).toEqual(["photos/a.jpg", "b.txt"]);
    expect(await pack.bytesOf("photos/a.jpg", 1e6)).toEqual(bytes);
    expect(new TextDecoder().decode(await pack.bytesOf("b.txt", 1e6))).toBe("Grüße\n".repeat(500));
    expect(Buffer.from(await one.arrayBuffer()).equals(Buffer.from(await (await make()).arrayBuffer()))).toBe(
      true,
    );
  });
  it.each([
    ["aa/x.txt", "../x.txt"],
    ["aaax.txt", "/etc.txt"],
    ["aaax.txt", "C:/x.txt"],
    ["aa/x.txt", "..\\x.txt"],
  ])("is refused where a name leads out of it: %s as %s", async (from, to) => {
    const bad = await renamed(await packOf({ path: from, content: "x" }), from, to);
    expect(await refused(openPack(bad, LIMITS))).toBe("name");
  });
  it("is refused where two files have one name", async () => {
    const two = await packOf({ path: "one.txt", content: "1" }, { path: "two.txt", content: "2" });
    expect(await refused(openPack(await renamed(two, "two.txt", "one.txt"), LIMITS))).toBe("no-pack");
  });
  it("is refused for more files, or more bytes, than the limits", async () => {
    const files = Array.from({ length: 11 }, (_, at) => ({ path: `${at}.txt`, content: "x" }));
    expect(await refused(openPack(await packOf(...files), LIMITS))).toBe("too-many");
    const bomb = await packOf({ path: "a.txt", content: "0".repeat(1_000_001) });
    expect(bomb.size).toBeLessThan(5000);
    expect(await refused(openPack(bomb, LIMITS))).toBe("too-big");
  });
  it("is unpacked no further than its list tells, where the list lies", async () => {
    const bytes = Buffer.from(
      await (await packOf({ path: "a.txt", content: "0".repeat(900_000) })).arrayBuffer(),
    );
    // Every place that tells 900,000: the list's and the file's own.
    for (let at = 0; at < bytes.length - 4; at++)
      if (bytes.readUInt32LE(at) === 900_000) bytes.writeUInt32LE(10, at);
    const pack = await openPack(new Blob([bytes]), LIMITS);
    expect(await refused(pack.bytesOf("a.txt", 1e6))).toBe("damaged");
  });
  it("is refused where bytes were changed, cut off, or are none", async () => {
    const whole = Buffer.from(
      await (await packOf({ path: "a.jpg", content: new Uint8Array(1000).fill(7) })).arrayBuffer(),
    );
    const changed = Buffer.from(whole);
    changed[200] = 8;
    const pack = await openPack(new Blob([changed]), LIMITS);
    expect(await refused(pack.bytesOf("a.jpg", 1e6))).toBe("damaged");
    expect(await refused(openPack(new Blob([whole.subarray(0, 500)]), LIMITS))).toBe("no-pack");
    expect(await refused(openPack(new Blob(["PK\u0003\u0004"]), LIMITS))).toBe("no-pack");
  });
  it("gives a file piece by piece, and tells at the end that it was damaged", async () => {
    const text = Array.from({ length: 60_000 }, (_, at) => String((at * 7919) % 10_007)).join("\n");
    const whole = await packOf({ path: "a.txt", content: new Blob([text]) }, { path: "b.txt", content: "x" });
    const pack = await openPack(whole, LIMITS);
    const pieces = [];
    for await (const piece of pack.piecesOf("a.txt", 1e6)) pieces.push(piece);
    expect(pieces.length).toBeGreaterThan(1);
    expect(Buffer.concat(pieces).toString()).toBe(text);
    for await (const _ of pack.piecesOf("a.txt", 1e6)) break;
    expect(await refused(pack.piecesOf("a.txt", 1000).next())).toBe("too-big");
    const bytes = Buffer.from(await whole.arrayBuffer());
    bytes[20_000] = (bytes[20_000] ?? 0) ^ 255;
    const changed = await openPack(new Blob([bytes]), LIMITS);
    const all = async () => {
      for await (const piece of changed.piecesOf("a.txt", 1e6)) pieces.push(piece);
    };
    expect(await refused(all())).toBe("damaged");
  });
  it("is refused where a file is locked", async () => {
    const bytes = Buffer.from(await (await packOf({ path: "a.jpg", content: "x" })).arrayBuffer());
    // Bit 0 of the flags, in the file's own header and in the list (4.3.7, 4.3.12, 4.4.4 of the published format).
    for (const [sign, flags] of [
      ["PK\u0003\u0004", 6],
      ["PK\u0001\u0002", 8],
    ] as const) {
      const at = bytes.indexOf(Buffer.from(sign, "latin1")) + flags;
      bytes[at] = (bytes[at] ?? 0) | 1;
    }
    expect(await refused(openPack(new Blob([bytes]), LIMITS))).toBe("locked");
  });
  it("tells that a file is not there", async () => {
    const pack = await openPack(await packOf({ path: "a.txt", content: "x" }), LIMITS);
    expect(await refused(pack.bytesOf("b.txt", 10))).toBe("not-there");
  });
});
