import { X509Certificate } from "node:crypto";
import { mkdir, readFile, rename, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { daysLeft, makeAuthority, type Signed, signFor } from "@treewright/keys/authority.ts";

/** A certificate with fewer days than this is made anew. */
const RENEW_DAYS = 30;
/** Only this account reads a key. */
const OWN = 0o600;

/** The authority for a name and its certificate: those in the folder, or new ones that are put there. nowMs: milliseconds since 1970. */
export async function ownAuthority(
  folder: string,
  name: string,
  nowMs: number,
): Promise<{ readonly authority: Signed; readonly shown: Signed }> {
  const place = join(folder, name);
  await mkdir(place, { recursive: true, mode: 0o700 });
  const lasts = (one: Signed) => daysLeft(one, nowMs) > RENEW_DAYS;
  const authority = await kept(place, "authority", lasts, () => makeAuthority(name, nowMs));
  const shown = await kept(
    place,
    "certificate",
    (one) => lasts(one) && isSignedBy(one, authority),
    () => signFor(name, authority, nowMs),
  );
  return { authority, shown };
}

/** A new authority has signed nothing that lies here. */
const isSignedBy = (one: Signed, authority: Signed): boolean =>
  new X509Certificate(one.certificate).verify(new X509Certificate(authority.certificate).publicKey);

async function kept(
  place: string,
  what: string,
  isGood: (before: Signed) => boolean,
  make: () => Promise<Signed>,
): Promise<Signed> {
  const file = join(place, `${what}.json`);
  const before = await readFile(file, "utf8").catch(() => undefined);
  if (before !== undefined) {
    const read: Signed = JSON.parse(before);
    if (isGood(read)) return read;
  }
  const made = await make();
  await writeFile(`${file}.new`, JSON.stringify(made), { mode: OWN });
  await rename(`${file}.new`, file);
  return made;
}
