import { X509Certificate } from "node:crypto";
import { createServer } from "node:https";
import { connect } from "node:tls";
import { daysLeft, makeAuthority, type Signed, signFor } from "@treewright/keys/authority.ts";
import { expect, test } from "vitest";

const NAME = "round.local";
const NOW = Date.now();

/** Whether a client that trusts `authority` alone takes what a server shows it under a name; OpenSSL inside Node decides. */
async function isTaken(shown: Signed, authority: Signed, name: string): Promise<true | string> {
  const server = createServer({ key: shown.key, cert: shown.certificate });
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  const address = server.address();
  const port = typeof address === "object" && address !== null ? address.port : 0;
  try {
    return await new Promise((done) => {
      const socket = connect({ port, host: "127.0.0.1", servername: name, ca: authority.certificate }, () => {
        socket.end();
        done(true);
      });
      socket.on("error", (error: NodeJS.ErrnoException) => done(`${error.code}: ${error.message}`));
    });
  } finally {
    server.close();
  }
}

test("a client that trusts the authority takes its certificate under its name, and under no other", async () => {
  const authority = await makeAuthority(NAME, NOW);
  const shown = await signFor(NAME, authority, NOW);
  expect(await isTaken(shown, authority, NAME)).toBe(true);
  expect(await isTaken(shown, authority, "other.local")).toContain("ERR_TLS_CERT_ALTNAME_INVALID");
  expect(await isTaken(shown, await makeAuthority(NAME, NOW), NAME)).not.toBe(true);
});

test("what the authority signs for another name is refused: its key opens no other site", async () => {
  const authority = await makeAuthority(NAME, NOW);
  const other = await signFor("bank.example", authority, NOW);
  expect(await isTaken(other, authority, "bank.example")).toMatch(/permitted subtree violation/);
});

test("one that has ended is refused, and its days are told", async () => {
  const authority = await makeAuthority(NAME, NOW);
  const long = 400 * 86_400_000;
  const ended = await signFor(NAME, authority, NOW - long);
  expect(daysLeft(ended, NOW)).toBeCloseTo(-3, 1);
  expect(await isTaken(ended, authority, NAME)).toContain("CERT_HAS_EXPIRED");
  expect(daysLeft(await signFor(NAME, authority, NOW), NOW)).toBeCloseTo(397, 1);
});

test("it is no authority itself, and says what it is for", async () => {
  const authority = await makeAuthority(NAME, NOW);
  const leaf = new X509Certificate((await signFor(NAME, authority, NOW)).certificate);
  expect(leaf.ca).toBe(false);
  expect(leaf.subjectAltName).toBe(`DNS:${NAME}`);
  expect(leaf.checkIssued(new X509Certificate(authority.certificate))).toBe(true);
  expect(new X509Certificate(authority.certificate).ca).toBe(true);
});
