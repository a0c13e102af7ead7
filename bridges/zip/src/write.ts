import {
  BlobReader,
  BlobWriter,
  TextReader,
  Uint8ArrayReader,
  ZipWriter,
} from "@zip.js/zip.js/lib/zip-core-native.js";

/** One file of a pack. Path: steps parted by "/". */
export interface PackedFile {
  readonly path: string;
  readonly content: Uint8Array | string | Blob;
}

/** What holds no more than its own packing: photos and PDF are packed already. */
const AS_IT_IS = /\.(jpg|png|webp|heic|pdf)$/;

/**
 * The files as one ZIP, in their order, one after the other: nothing but the pack itself is in memory at once, and a browser may lay
 * that, and what is given as a `Blob`, on its disk. The same files at the same moment give the same bytes. Published: ISO/IEC 21320-1
 * (2015), stored or deflated, names in UTF-8, never locked.
 */
export async function packed(files: AsyncIterable<PackedFile>, at: Date): Promise<Blob> {
  const writer = new ZipWriter(new BlobWriter("application/zip"), { useWebWorkers: false, lastModDate: at });
  for await (const { path, content } of files) {
    await writer.add(path, readerOf(content), AS_IT_IS.test(path) ? { level: 0 } : {});
  }
  return writer.close();
}

function readerOf(content: PackedFile["content"]) {
  if (content instanceof Blob) return new BlobReader(content);
  return typeof content === "string"
    ? new TextReader(content)
    : new Uint8ArrayReader(new Uint8Array(content));
}
