import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { type Running, startServer } from "./main.ts";

let root = "";
let running: Running;

beforeAll(async () => {
  root = await mkdtemp(join(tmpdir(), "treewright-server-"));
  await mkdir(join(root, "apps/web/dist/assets"), { recursive: true });
  await mkdir(join(root, "examples/cases"), { recursive: true });
  await writeFile(join(root, "apps/web/dist/index.html"), "<!doctype html><title>page</title>");
  await writeFile(join(root, "apps/web/dist/assets/a-1.js"), "1");
  await writeFile(join(root, "apps/web/dist/.hidden.json"), "hidden");
  await writeFile(join(root, "examples/cases/one.json"), '{"title":"one"}');
  await writeFile(join(root, "secret.json"), "secret");
  await symlink(join(root, "secret.json"), join(root, "examples/cases/link.json"));
  running = await startServer({ root, port: 0 });
});
afterAll(async () => {
  await running.close();
  await rm(root, { recursive: true });
});

/** Sends the request line as it is; `fetch` would tidy a hostile path before it left. */
function raw(target: string, method = "GET", host = "127.0.0.1"): Promise<string> {
  const { port } = new URL(running.url);
  return new Promise((done, failed) => {
    let told = "";
    const socket = connect(Number(port), "127.0.0.1", () => {
      socket.write(`${method} ${target} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`);
    });
    socket.on("data", (bytes) => {
      told += bytes.toString();
    });
    socket.on("end", () => done(told));
    socket.on("error", failed);
  });
}

test("the page, its parts and the cases come with their types and the strict policy", async () => {
  for (const [path, type] of [
    ["", "text/html"],
    ["assets/a-1.js", "text/javascript"],
    ["examples/one.json", "application/json"],
  ]) {
    const given = await fetch(running.url + path);
    expect(given.status).toBe(200);
    expect(given.headers.get("content-type")).toContain(type);
    expect(given.headers.get("content-security-policy")).toMatch(/^default-src 'self'; script-src 'self';/);
    expect(given.headers.get("x-content-type-options")).toBe("nosniff");
  }
});

test("the list of cases names the files", async () => {
  expect(await (await fetch(`${running.url}examples/`)).json()).toEqual(["one.json"]);
});

test.each([
  "/../secret.json",
  "/examples/../../../secret.json",
  "/examples/..%2f..%2fsecret.json",
  "/examples/%2e%2e/%2e%2e/secret.json",
  "/examples/..\\..\\secret.json",
  "/examples/%252e%252e/secret.json",
  "/examples//secret.json",
  "/examples/link.json",
  "/examples/one.json%00.html",
  "/.hidden.json",
  "//secret.json",
  "/assets/../../../../secret.json",
])("hostile path %s finds nothing", async (path) => {
  const told = await raw(path);
  expect(told).toMatch(/^HTTP\/1\.1 40[04] /);
  expect(told.split("\r\n\r\n")[1]).not.toMatch(/secret|hidden/);
});

test("an unreadable address is refused, not a crash", async () => {
  expect(await raw("/%E0%A4%A")).toMatch(/^HTTP\/1\.1 400 /);
  expect(await raw("*")).toMatch(/^HTTP\/1\.1 400 /);
  expect(await raw("/")).toMatch(/^HTTP\/1\.1 200 /);
});

test("only reading, and only under this machine's own names", async () => {
  expect(await raw("/", "POST")).toMatch(/^HTTP\/1\.1 405 /);
  expect(await raw("/", "GET", "island.example")).toMatch(/^HTTP\/1\.1 403 /);
  expect(await raw("/", "GET", "localhost:4310")).toMatch(/^HTTP\/1\.1 200 /);
});

test("a taken port is answered with a free one", async () => {
  const { port } = new URL(running.url);
  const second = await startServer({ root, port: Number(port) });
  expect(new URL(second.url).port).not.toBe(port);
  expect((await fetch(second.url)).status).toBe(200);
  await second.close();
});
