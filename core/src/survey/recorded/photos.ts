import { z } from "zod";
import { type Photo, photoSchema } from "../../records/records-file.ts";
import type { Statement } from "./statements.ts";

/*
 * Photos of a visit. Each has a place of its own, named by the photo's fingerprint: two photos taken by two hands never disagree, and
 * one that is withdrawn is a cleared place. One that is erased says so at its place: its bytes are gone, and are not taken in again.
 */

const PLACE = /^photos\.([0-9a-f]{64})$/;

/** of: the place of the case that the photo shows. */
const citedSchema = z.strictObject({
  type: photoSchema.shape.type,
  bytes: photoSchema.shape.bytes,
  of: z.string().min(1).max(200),
});

/** A photo that a visit cites, and what it shows. */
export interface CitedPhoto extends Photo {
  readonly of: string;
}

export const photoPlace = (hash: string): string => `photos.${hash}`;

/** That this photo shows what stands at a place of the case. To be said once the photo itself is safe, never before. */
export const citing = ({ hash, type, bytes }: Photo, of: string): Statement => ({
  at: photoPlace(hash),
  value: { type, bytes, of },
});

const erasedSchema = z.strictObject({ erased: z.literal(true) });

/** That this photo was erased for good: a face was on it, or somebody asked for it. */
export const erasing = ({ hash }: Photo): Statement => ({ at: photoPlace(hash), value: { erased: true } });

/** The fingerprint of a photo that is said to be erased; undefined where nothing of that kind is said. */
export function erasedPhotoOf({
  at,
  value,
}: {
  readonly at?: unknown;
  readonly value?: unknown;
}): string | undefined {
  return typeof at === "string" && erasedSchema.safeParse(value).success ? PLACE.exec(at)?.[1] : undefined;
}

/** Photos that a visit cites, by their fingerprint. */
export function photosOf(ofVisit: ReadonlyMap<string, unknown>): readonly CitedPhoto[] {
  return [...ofVisit].flatMap(([at, value]) => {
    const hash = PLACE.exec(at)?.[1];
    const cited = citedSchema.safeParse(value);
    return hash !== undefined && cited.success ? [{ hash, ...cited.data }] : [];
  });
}
