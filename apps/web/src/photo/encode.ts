import type { Photo } from "../records.ts";
import { refusedPhotoFile } from "../road.ts";

/** Longest side of a photo that is kept, px: a label or a crack can be read on it, and thirty of them are some 15 MB. Working limit, no source. */
const LONGEST_PX = 2048;
/** Working choice, no source: edges of a crack stay sharp to the eye. */
const JPEG_QUALITY = 0.85;

export interface Encoded {
  readonly type: Photo["type"];
  readonly content: Uint8Array<ArrayBuffer>;
}

/** Why a file is no photo that can be kept here: what was read, and what is allowed. */
export interface NoPhoto {
  readonly read: string;
  readonly allowed: string;
}

/**
 * A picture as a JPEG of bounded size. It is drawn anew, so nothing of a file but what can be seen is kept: a phone writes the place
 * where a photo was taken, and the owner's stable, into the file.
 */
export async function encoded(picture: ImageBitmap | HTMLVideoElement): Promise<Encoded> {
  const isVideo = picture instanceof HTMLVideoElement;
  const width = isVideo ? picture.videoWidth : picture.width;
  const height = isVideo ? picture.videoHeight : picture.height;
  const smaller = Math.min(1, LONGEST_PX / Math.max(width, height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(width * smaller));
  canvas.height = Math.max(1, Math.round(height * smaller));
  canvas.getContext("2d")?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, "image/jpeg", JPEG_QUALITY));
  if (blob === null) throw new Error("this browser made no JPEG of the picture");
  return { type: "image/jpeg", content: new Uint8Array(await blob.arrayBuffer()) };
}

/** A file that was chosen, as a photo; or why it is none. */
export async function photoOfFile(file: File): Promise<Encoded | NoPhoto> {
  const tooLarge = refusedPhotoFile(file.size);
  if (tooLarge) return tooLarge;
  try {
    const picture = await createImageBitmap(file, { imageOrientation: "from-image" });
    return await encoded(picture);
  } catch {
    return { read: file.type || file.name, allowed: "JPEG, PNG, WebP" };
  }
}
