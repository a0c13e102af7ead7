// The library marks its classes through this polyfill, which has to be there before it.
import "reflect-metadata";
import { AsnConvert } from "@peculiar/asn1-schema";
import { GeneralName, GeneralSubtree, GeneralSubtrees, NameConstraints } from "@peculiar/asn1-x509";
import * as x509 from "@peculiar/x509";

/** A key and its certificate, as PEM. */
export interface Signed {
  readonly certificate: string;
  readonly key: string;
}

const ALGORITHM = { name: "ECDSA", namedCurve: "P-256", hash: "SHA-256" } as const;
const DAY_MS = 86_400_000;
const AUTHORITY_DAYS = 3650;
/** CA/Browser Forum Baseline Requirements (2020), 6.3.2: at most 398 days; phones hold to it. */
const CERTIFICATE_DAYS = 397;
/** A clock that is an hour behind still finds a new certificate valid. */
const BEFORE_MS = 2 * 3_600_000;
/** RFC 5280, 4.2.1.10. */
const NAME_CONSTRAINTS = "2.5.29.30";
const SERVER_AUTH = "1.3.6.1.5.5.7.3.1";
const SERIAL_BYTES = 16;

/** An authority that can sign for `name` alone. nowMs: milliseconds since 1970. */
export async function makeAuthority(name: string, nowMs: number): Promise<Signed> {
  const keys = await crypto.subtle.generateKey(ALGORITHM, true, ["sign", "verify"]);
  const permitted = new GeneralSubtrees([new GeneralSubtree({ base: new GeneralName({ dNSName: name }) })]);
  const certificate = await x509.X509CertificateGenerator.createSelfSigned({
    serialNumber: serial(),
    name: `CN=Treewright authority for ${name}`,
    ...validFor(nowMs, AUTHORITY_DAYS),
    signingAlgorithm: ALGORITHM,
    keys,
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.keyCertSign | x509.KeyUsageFlags.cRLSign, true),
      new x509.Extension(
        NAME_CONSTRAINTS,
        true,
        AsnConvert.serialize(new NameConstraints({ permittedSubtrees: permitted })),
      ),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey),
    ],
  });
  return { certificate: certificate.toString("pem"), key: await pemOf(keys.privateKey) };
}

/** A certificate for `name`, signed by the authority. */
export async function signFor(name: string, authority: Signed, nowMs: number): Promise<Signed> {
  const issuer = new x509.X509Certificate(authority.certificate);
  const keys = await crypto.subtle.generateKey(ALGORITHM, true, ["sign", "verify"]);
  const certificate = await x509.X509CertificateGenerator.create({
    serialNumber: serial(),
    subject: `CN=${name}`,
    issuer: issuer.subject,
    ...validFor(nowMs, CERTIFICATE_DAYS),
    signingAlgorithm: ALGORITHM,
    publicKey: keys.publicKey,
    signingKey: await privateKeyOf(authority.key),
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature, true),
      new x509.ExtendedKeyUsageExtension([SERVER_AUTH]),
      new x509.SubjectAlternativeNameExtension([{ type: "dns", value: name }]),
      await x509.AuthorityKeyIdentifierExtension.create(issuer.publicKey),
    ],
  });
  return { certificate: certificate.toString("pem"), key: await pemOf(keys.privateKey) };
}

/** Days left until a certificate ends; negative once it has. */
export const daysLeft = ({ certificate }: Signed, nowMs: number): number =>
  (new x509.X509Certificate(certificate).notAfter.getTime() - nowMs) / DAY_MS;

const validFor = (nowMs: number, days: number) => ({
  notBefore: new Date(nowMs - BEFORE_MS),
  notAfter: new Date(nowMs + days * DAY_MS),
});

/** A positive number of 16 bytes of chance (RFC 5280, 4.1.2.2). */
function serial(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(SERIAL_BYTES));
  bytes[0] = 0x40 | ((bytes[0] ?? 0) & 0x3f);
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

async function pemOf(key: CryptoKey): Promise<string> {
  return x509.PemConverter.encode(await crypto.subtle.exportKey("pkcs8", key), "PRIVATE KEY");
}

function privateKeyOf(pem: string): Promise<CryptoKey> {
  return crypto.subtle.importKey("pkcs8", x509.PemConverter.decodeFirst(pem), ALGORITHM, false, ["sign"]);
}
