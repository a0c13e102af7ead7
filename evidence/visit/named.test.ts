import { createHash, X509Certificate } from "node:crypto";
import { mkdtemp, readFile, rm, stat } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { connect } from "node:tls";
import { chromium } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Named, startNamed } from "../../apps/server/src/named.ts";
import { builtPage } from "../page/served-page.ts";

/*
 * Served to a network under a name. The browser is told where the name leads and which key it may trust, as a phone is by its owner;
 * that the chain holds is decided by OpenSSL inside Node. What this cannot see: a phone's own settings.
 */
const NAME = "round.local";
let root: string;
let folder: string;
let named: Named;

beforeAll(async () => {
  root = await builtPage();
  folder = join(root, "own");
  named = await startNamed({ root, port: 0 }, NAME, folder, { secure: 0, plain: 0 });
});
afterAll(async () => {
  await named.close();
  await rm(root, { recursive: true });
});

/** The certificate that the server shows to a client which trusts the authority. */
function shown(): Promise<X509Certificate> {
  return new Promise((done, failed) => {
    const port = Number(new URL(named.appUrl).port);
    const socket = connect({ port, host: "127.0.0.1", servername: NAME, ca: named.authority }, () => {
      const { raw } = socket.getPeerCertificate();
      socket.end();
      done(new X509Certificate(raw));
    });
    socket.on("error", failed);
  });
}

function plain(
  path: string,
  language = "en-GB,en;q=0.9",
): Promise<{ status: number; type: string; body: string }> {
  return new Promise((done, failed) => {
    const { port } = new URL(named.installUrl);
    request({ host: "127.0.0.1", port, path, headers: { "Accept-Language": language } }, (response) => {
      let body = "";
      response.on("data", (bytes) => {
        body += bytes;
      });
      response.on("end", () =>
        done({ status: response.statusCode ?? 0, type: response.headers["content-type"] ?? "", body }),
      );
    })
      .on("error", failed)
      .end();
  });
}

test("a phone that trusts the authority has a secure page, and is made ready for no signal", async () => {
  const key = (await shown()).publicKey.export({ type: "spki", format: "der" });
  const profile = await mkdtemp(join(tmpdir(), "treewright-profile-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: "/usr/bin/chromium",
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      `--host-resolver-rules=MAP ${NAME} 127.0.0.1`,
      `--ignore-certificate-errors-spki-list=${createHash("sha256").update(key).digest("base64")}`,
    ],
  });
  const page = await context.newPage();
  await page.goto(named.appUrl);
  await page.getByText("Ready without signal").waitFor();
  expect(await page.evaluate("isSecureContext")).toBe(true);
  await context.close();
  await rm(profile, { recursive: true });
});

test("over plain http there are the authority and the steps for both phone families, in the language that is asked for, and nothing else", async () => {
  const page = await plain("/");
  expect(page.status).toBe(200);
  for (const words of ["iPhone", "Android", named.appUrl, "/authority.crt"])
    expect(page.body).toContain(words);
  // A picture beside each step, and each says in words what is pressed.
  const [pictures, steps] = ["<svg", "<li>"].map((tag) => page.body.split(tag).length - 1);
  expect([pictures, steps]).toEqual([7, 7]);
  expect(page.body.match(/aria-label="On the phone, [^"]+: press [^"]+"/g)).toHaveLength(7);
  const german = await plain("/", "de-AT,de;q=0.9,en;q=0.8");
  expect(german.body).toContain('lang="de"');
  expect(german.body.match(/aria-label="Auf dem Telefon, [^"]+ drücken"/g)).toHaveLength(7);
  for (const words of [named.appUrl, "/authority.crt", NAME]) expect(german.body).toContain(words);
  for (const other of ["fr-FR,fr;q=0.9,en;q=0.8", ""])
    expect((await plain("/", other)).body).toContain('lang="en"');
  expect(await plain("/look.css")).toMatchObject({ status: 200, type: "text/css; charset=utf-8" });
  const file = await plain("/authority.crt");
  expect(file).toMatchObject({ status: 200, type: "application/x-x509-ca-cert", body: named.authority });
  for (const path of [
    "/constructor",
    "/index.html",
    "/examples/",
    "/certificate.json",
    "/../own/round.local/authority.json",
  ])
    expect((await plain(path)).status, path).toBe(404);
});

test("the next start shows the same authority, whose key only this account reads", async () => {
  const again = await startNamed({ root, port: 0 }, NAME, folder, { secure: 0, plain: 0 });
  expect(again.authority).toBe(named.authority);
  await again.close();
  const file = join(folder, NAME, "authority.json");
  expect((await stat(file)).mode & 0o077).toBe(0);
  expect(await readFile(file, "utf8")).toContain("PRIVATE KEY");
  expect(named.says).not.toContain("PRIVATE KEY");
});

test("a new authority signs anew: what an old one had signed is not shown", async () => {
  const other = join(root, "other");
  const first = await startNamed({ root, port: 0 }, NAME, other, { secure: 0, plain: 0 });
  await first.close();
  await rm(join(other, NAME, "authority.json"));
  const second = await startNamed({ root, port: 0 }, NAME, other, { secure: 0, plain: 0 });
  expect(second.authority).not.toBe(first.authority);
  const port = Number(new URL(second.appUrl).port);
  const taken = await new Promise((done) => {
    const socket = connect({ port, host: "127.0.0.1", servername: NAME, ca: second.authority }, () => {
      socket.destroy();
      done("taken");
    });
    socket.on("error", (error) => done(error.message));
  });
  expect(taken).toBe("taken");
  await second.close();
});
