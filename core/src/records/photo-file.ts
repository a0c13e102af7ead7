import type { Photo } from "./records-file.ts";

/** Photos of an export lie beside its file of records, in this folder, under their hash. */
export const PHOTOS_FOLDER = "photos";

const ENDING: Readonly<Record<Photo["type"], string>> = {
  "image/jpeg": "jpg",
  "image/png": "png",
  "image/webp": "webp",
  "image/heic": "heic",
};

/** Path of a photo's bytes, beside the file of records that names it. */
export const photoPath = ({ hash, type }: Pick<Photo, "hash" | "type">): string =>
  `${PHOTOS_FOLDER}/${hash}.${ENDING[type]}`;
