import {
  BlobReader,
  type FileEntry,
  Uint8ArrayWriter,
  ZipReader,
} from "@zip.js/zip.js/lib/zip-core-native.js";

/** What a pack may hold. Files: count; bytes: as unpacked. */
export interface PackLimits {
  readonly files: number;
  readonly bytes: number;
}

/** Why a pack was not opened, or a file in it not read. */
export class NotRead extends Error {
  constructor(
    readonly why: "no-pack" | "name" | "locked" | "too-many" | "too-big" | "not-there" | "damaged",
    /** The file that it is about, or the count that was read. */
    readonly read: string,
  ) {
    super(`${why}: ${read}`);
  }
}

export interface Pack {
  /** Paths of the files, in their order. */
  readonly paths: readonly string[];
  /** The bytes of one file; throws `NotRead` where it is not there, is damaged, or has more than `mostBytes`. */
  bytesOf(path: string, mostBytes: number): Promise<Uint8Array<ArrayBuffer>>;
  /** The same bytes piece by piece, so that they are never in memory at once. Whether they are damaged is known after the last. */
  piecesOf(path: string, mostBytes: number): AsyncGenerator<Uint8Array>;
}

/**
 * Opens a ZIP by its list and unpacks nothing yet. Refused whole: names that lead out of a folder, two files of one name (as
 * "no-pack": another program could read it otherwise), a locked file, more files or more bytes than allowed.
 */
export async function openPack(blob: Blob, limits: PackLimits): Promise<Pack> {
  const entries = await listed(blob, limits.files);
  const files = new Map<string, FileEntry>();
  let bytes = 0;
  for (const entry of entries) {
    if (entry.directory) continue;
    const { filename } = entry;
    if (entry.encrypted) throw new NotRead("locked", filename);
    bytes += entry.uncompressedSize;
    if (bytes > limits.bytes) throw new NotRead("too-big", String(bytes));
    files.set(filename, entry);
  }
  const fileAt = (path: string, mostBytes: number): FileEntry => {
    const entry = files.get(path);
    if (entry === undefined) throw new NotRead("not-there", path);
    if (entry.uncompressedSize > mostBytes) throw new NotRead("too-big", path);
    return entry;
  };
  return {
    paths: [...files.keys()],
    bytesOf: async (path, mostBytes) => unpacked(fileAt(path, mostBytes), new Uint8ArrayWriter()),
    async *piecesOf(path, mostBytes) {
      yield* inPieces(fileAt(path, mostBytes));
    },
  };
}

async function listed(blob: Blob, most: number) {
  const entries = [];
  try {
    const reader = new ZipReader(new BlobReader(blob), { useWebWorkers: false, strictness: "strict" });
    for await (const entry of reader.getEntriesGenerator()) {
      if (entries.length === most) throw new NotRead("too-many", String(most + 1));
      entries.push(entry);
    }
  } catch (error) {
    if (error instanceof NotRead) throw error;
    const name = error instanceof Error && "filename" in error ? String(error.filename) : undefined;
    if (name !== undefined) throw new NotRead("name", name);
    throw new NotRead("no-pack", error instanceof Error ? error.message : String(error));
  }
  return entries;
}

/** The library gives no byte past the size that the list tells, and holds size, sum and both headers against each other. */
async function unpacked<Into extends Uint8ArrayWriter | WritableStream<Uint8Array>>(
  entry: FileEntry,
  into: Into,
) {
  try {
    return await entry.getData(into, { useWebWorkers: false, checkSignature: true, strictness: "strict" });
  } catch {
    throw new NotRead("damaged", entry.filename);
  }
}

const NO_MORE = { done: true, value: undefined } as const;

async function* inPieces(entry: FileEntry): AsyncGenerator<Uint8Array> {
  const { readable, writable } = new TransformStream<Uint8Array, Uint8Array>();
  const reader = readable.getReader();
  const unpacking = unpacked(entry, writable);
  // Where it fails nothing more comes, and nobody closes the stream. (A race against one promise would hold every piece until the end.)
  unpacking.catch(() => reader.cancel().catch(() => undefined));
  try {
    for (;;) {
      const { done, value } = await reader.read().catch(() => NO_MORE);
      if (done) break;
      yield value;
    }
    await unpacking;
  } finally {
    // Whoever takes no more stops the unpacking, too.
    await reader.cancel().catch(() => undefined);
  }
}
