import { NotRead, openPack, type Pack } from "@treewright/zip/read.ts";
import { erasedPhotos, noteErased } from "../practice/erased-photos.ts";
import type { Machine } from "../practice/machine.ts";
import { type Photo, photoPath, RECORD_LIMITS, type Refusal, type Store } from "../records.ts";
import { type Checked, checkRecords, keepRecords, type TellBring } from "./bring-records.ts";
import { LineTooLong, linesIn, piecesOf } from "./lines.ts";
import { COPY_LIMITS, RECORDS_FILE } from "./pack.ts";

export type Brought =
  | { readonly ok: true; readonly entries: number; readonly photos: number; readonly photosNotBeside: number }
  | ({ readonly ok: false } & Refusal);

/** The first bytes of every ZIP that holds a file (its published format, 4.3.7). */
const ZIP_BEGINS = "PK\u0003\u0004";
/** Above what a line of records may have in bytes, so that the records' own refusal comes first. */
const MOST_LETTERS = 2 * RECORD_LIMITS.entryBytes;

/**
 * A copy that this app wrote, or the file of records out of it: taken whole or refused whole. It is read twice, piece by piece: once to
 * look at all of it, once to keep it (`keepRecords`). Whoever shows the practice has to hear of it after.
 */
export async function bring(
  store: Store,
  machine: Machine,
  file: Blob,
  tell: TellBring = () => undefined,
): Promise<Brought> {
  try {
    const isPack = (await file.slice(0, ZIP_BEGINS.length).text()) === ZIP_BEGINS;
    return isPack
      ? await bringPack(store, machine, file, tell)
      : await bringLines(store, machine, file, tell);
  } catch (error) {
    if (error instanceof NotRead) return { ok: false, ...inWords(error) };
    if (error instanceof LineTooLong) return { ok: false, ...lineTooLong(error) };
    throw error;
  }
}

async function bringLines(store: Store, machine: Machine, file: Blob, tell: TellBring): Promise<Brought> {
  if (file.size > COPY_LIMITS.recordsBytes) return { ok: false, ...tooLong(file.size) };
  const lines = () => linesIn(piecesOf(file), MOST_LETTERS);
  const checked = await checkRecords(lines, tell);
  if ("refusal" in checked) return { ok: false, ...checked.refusal };
  const gone = await photosGone(store, checked);
  await keepRecords(store, machine, lines, checked, tell);
  const here = new Set((await store.photos()).map(({ hash }) => hash));
  const photosNotBeside = checked.photos.filter(({ hash }) => !here.has(hash) && !gone.has(hash)).length;
  return { ok: true, entries: checked.entries, photos: 0, photosNotBeside };
}

/** Every photo is looked at before the first is put: what is refused leaves nothing behind. Then photos, then what cites them. */
async function bringPack(store: Store, machine: Machine, file: Blob, tell: TellBring): Promise<Brought> {
  const pack = await openPack(file, COPY_LIMITS);
  const lines = () => linesIn(pack.piecesOf(RECORDS_FILE, COPY_LIMITS.recordsBytes), MOST_LETTERS);
  const checked = await checkRecords(lines, tell);
  if ("refusal" in checked) return { ok: false, ...checked.refusal };
  const paths = new Set(pack.paths);
  for (const photo of checked.photos) {
    const refusal = await faultOf(pack, paths, photo);
    if (refusal) return { ok: false, ...refusal };
  }
  const gone = await photosGone(store, checked);
  const photos = checked.photos.filter(({ hash }) => !gone.has(hash));
  for (const photo of photos)
    await store.keepPhoto({ ...photo, content: await pack.bytesOf(photoPath(photo), photo.bytes) });
  await keepRecords(store, machine, lines, checked, tell);
  return { ok: true, entries: checked.entries, photos: photos.length, photosNotBeside: 0 };
}

/** Photos that were erased, here or there: they stay erased, and what is still here of them goes. */
async function photosGone(store: Store, { erasedPhotos: told }: Checked): Promise<ReadonlySet<string>> {
  await noteErased(store, told);
  for (const hash of told) await store.erasePhoto(hash, { entries: [] });
  return erasedPhotos(store);
}

async function faultOf(pack: Pack, paths: ReadonlySet<string>, photo: Photo): Promise<Refusal | undefined> {
  const where = photoPath(photo);
  if (!paths.has(where))
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

const tooLong = (bytes: number): Refusal => ({
  where: RECORDS_FILE,
  read: `${bytes} bytes`,
  allowed: `at most ${COPY_LIMITS.recordsBytes} bytes`,
});

const lineTooLong = ({ line }: LineTooLong): Refusal => ({
  where: `line ${line}`,
  read: "a line without an end",
  allowed: `at most ${RECORD_LIMITS.entryBytes} bytes`,
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
      allowed: `at most ${COPY_LIMITS.bytes / 1e9} GB unpacked, ${COPY_LIMITS.recordsBytes / 1e9} GB of them records, and each photo as long as the records tell`,
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
