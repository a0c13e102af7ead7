import { NotRead, openPack, type Pack } from "@treewright/zip/read.ts";
import type { Practice } from "../practice/practice.ts";
import { type Photo, photoPath, type Refusal, readRecords } from "../records.ts";
import { bringRecords } from "./bring-records.ts";
import { COPY_LIMITS, RECORDS_FILE } from "./pack.ts";

export type Brought =
  | { readonly ok: true; readonly entries: number; readonly photos: number; readonly photosNotBeside: number }
  | ({ readonly ok: false } & Refusal);

/** The first bytes of every ZIP that holds a file (its published format, 4.3.7). */
const ZIP_BEGINS = "PK\u0003\u0004";

/** A copy that this app wrote, or the file of records out of it: all of it or nothing. */
export async function bring(practice: Practice, file: Blob): Promise<Brought> {
  try {
    const isPack = (await file.slice(0, ZIP_BEGINS.length).text()) === ZIP_BEGINS;
    return isPack ? await bringPack(practice, file) : await bringLines(practice, file);
  } catch (error) {
    if (error instanceof NotRead) return { ok: false, ...inWords(error) };
    throw error;
  }
}

async function bringLines(practice: Practice, file: Blob): Promise<Brought> {
  if (file.size > COPY_LIMITS.recordsBytes) return { ok: false, ...tooLong(file.size) };
  const text = await file.text();
  const read = readRecords(text.split(/\r?\n/));
  if (!read.ok) return { ok: false, ...firstOf(read.refusals) };
  const brought = await bringRecords(practice, read.records);
  if (!brought.ok) return brought;
  const { photos } = read.records;
  const here = new Set((await practice.store.photos()).map(({ hash }) => hash));
  return { ...brought, photos: 0, photosNotBeside: photos.filter(({ hash }) => !here.has(hash)).length };
}

/** Every photo is looked at before the first is put: what is refused leaves nothing behind. Then photos, then what cites them. */
async function bringPack(practice: Practice, file: Blob): Promise<Brought> {
  const pack = await openPack(file, COPY_LIMITS);
  const text = new TextDecoder().decode(await pack.bytesOf(RECORDS_FILE, COPY_LIMITS.recordsBytes));
  const read = readRecords(text.split(/\r?\n/));
  if (!read.ok) return { ok: false, ...firstOf(read.refusals) };
  const { photos } = read.records;
  for (const photo of photos) {
    const refusal = await faultOf(pack, photo);
    if (refusal) return { ok: false, ...refusal };
  }
  const brought = await bringRecords(practice, read.records, async () => {
    for (const photo of photos)
      await practice.store.keepPhoto({
        ...photo,
        content: await pack.bytesOf(photoPath(photo), photo.bytes),
      });
  });
  return brought.ok ? { ...brought, photos: photos.length, photosNotBeside: 0 } : brought;
}

async function faultOf(pack: Pack, photo: Photo): Promise<Refusal | undefined> {
  const where = photoPath(photo);
  if (!pack.paths.includes(where))
    return {
      where,
      read: "no such file in the copy",
      allowed: `every photo that ${RECORDS_FILE} names; that file can be brought in by itself, without photos`,
    };
  const content = await pack.bytesOf(where, photo.bytes);
  const hash = new Uint8Array(await crypto.subtle.digest("SHA-256", content));
  const hex = Array.from(hash, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return hex === photo.hash && content.length === photo.bytes
    ? undefined
    : { where, read: "other bytes than were recorded", allowed: "the photo whose SHA-256 its name tells" };
}

const firstOf = ([first]: readonly Refusal[]): Refusal => first ?? { where: "", read: "", allowed: "" };

const tooLong = (bytes: number): Refusal => ({
  where: RECORDS_FILE,
  read: `${bytes} bytes`,
  allowed: `at most ${COPY_LIMITS.recordsBytes} bytes`,
});

function inWords({ why, read }: NotRead): Refusal {
  const shown = read.slice(0, 60);
  const all: Readonly<Record<NotRead["why"], Refusal>> = {
    "no-pack": {
      where: "the whole file",
      read: "a ZIP that is cut short, not well formed, or to be read in two ways",
      allowed: "a copy as it was written",
    },
    name: {
      where: `"${shown}"`,
      read: "a name that leads out of the copy",
      allowed: "names of files within it",
    },
    locked: {
      where: `"${shown}"`,
      read: "a file locked with a password",
      allowed: "files that are not locked",
    },
    "too-many": {
      where: "the whole file",
      read: `${shown} files`,
      allowed: `at most ${COPY_LIMITS.files} files`,
    },
    "too-big": {
      where: `"${shown}"`,
      read: "more bytes, unpacked, than were told",
      allowed: `at most ${COPY_LIMITS.bytes / 1e9} GB unpacked, ${COPY_LIMITS.recordsBytes / 1e6} MB of them records, and each photo as long as the records tell`,
    },
    "not-there": {
      where: "the whole file",
      read: `no ${shown} in it`,
      allowed: "a copy that this app wrote",
    },
    damaged: { where: `"${shown}"`, read: "damaged bytes", allowed: "a copy as it was written" },
  };
  return all[why];
}
