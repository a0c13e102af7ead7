import { createHash } from "node:crypto";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";
import { afterAll, describe, expect, it } from "vitest";
import { root } from "../house/sources.ts";
import { packagesOfMap, partsOf, sayingsOf } from "./parts.ts";

// Every file of the page is traced back by a road that is not our list's: code by the bundler's source maps, letters by their bytes, the
// service worker by the marks that workbox leaves. What it cannot see: code that somebody copied into a package without saying so.

const folder = mkdtempSync(join(tmpdir(), "treewright-page-parts-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
await build({
  configFile: join(root, "apps/web/vite.config.ts"),
  logLevel: "error",
  build: { outDir: folder, emptyOutDir: true, sourcemap: "hidden" },
});
const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).map((path) =>
  path.replaceAll("\\", "/"),
);
const read = (path: string): string => readFileSync(join(folder, path), "utf8");
const sha256 = (path: string): string => createHash("sha256").update(readFileSync(path)).digest("hex");

/** Packages whose files the page serves as they are, by the files' bytes. */
const served = new Map(
  [
    "@fontsource/atkinson-hyperlegible-next/files",
    "@fontsource/b612-mono/files",
    "@fontsource/source-serif-4/files",
    "pdfkit/js/data",
  ].flatMap((place) =>
    readdirSync(join(root, "node_modules", place)).map((name) => [
      sha256(join(root, "node_modules", place, name)),
      `node_modules/${/^(@[^/]+\/)?[^/]+/.exec(place)?.[0]}`,
    ]),
  ),
);

/** Where a file of the page comes from: packages of others; none for what is ours; undefined when nobody knows. */
function origin(path: string): readonly string[] | undefined {
  if (path.endsWith(".map") || existsInPublic(path) || OURS.test(path)) return [];
  if (/^assets\/.*\.js$/.test(path)) return ofCode(path);
  if (/^(sw|workbox-\w+)\.js$/.test(path)) return keptBy(read(path));
  const folderOf = served.get(sha256(join(folder, path)));
  return folderOf === undefined ? undefined : [folderOf];
}

/** Code without a map is written by the bundler whole, or nobody knows. */
function ofCode(path: string): readonly string[] | undefined {
  const written = helpers(read(path));
  if (ONWARD.test(read(path))) return [];
  if (files.includes(`${path}.map`)) return [...packagesOfMap(join(folder, `${path}.map`)), ...written];
  return written.length > 0 ? written : undefined;
}

/** Hands on what another file of the page holds, which is looked at by itself; no code of its own. */
const ONWARD = /^export\{[^{}]*\}from"\.\/[\w-]+\.js";\s*$/;
const OURS = /^(\w+\.html|assets\/.*\.css|manifest\.webmanifest|notices\.txt|sbom\.cdx\.json)$/;
const existsInPublic = (path: string): boolean => readdirSync(join(root, "apps/web/public")).includes(path);
const helpers = (text: string): string[] => [
  ...(text.includes("vite:preloadError") ? ["node_modules/vite"] : []),
  ...(/Object\.getOwnPropertyDescriptor.*Object\.getPrototypeOf.*__esModule/s.test(text)
    ? ["node_modules/rolldown"]
    : []),
];
const keptBy = (text: string): string[] => [
  ...[...text.matchAll(/workbox:(\w+):/g)].map(([, name]) => `node_modules/workbox-${name}`),
  ...(text.includes("importScripts(") && /self\.define\s*=/.test(text)
    ? ["node_modules/@trickfilm400/rollup-plugin-off-main-thread"]
    : []),
];

describe("the page says what others wrote in it", () => {
  const said = sayingsOf(folder);
  const paths = files.filter((path) => /\.\w+$/.test(path));

  it("every file of it is known", () => {
    expect(paths.length).toBeGreaterThan(30);
    expect(paths.filter((path) => origin(path) === undefined)).toEqual([]);
  });

  it("each package that came so far is listed and has its notice, and no other", () => {
    const found = partsOf(paths.flatMap((path) => origin(path) ?? []));
    expect(found.length).toBeGreaterThan(20);
    expect(said.components).toEqual(found);
    expect(said.noticed).toEqual(found);
  });

  it("what a licence asks to be passed on is passed on", () => {
    expect(said.notices).toContain("Copyright (c) 2014-2017 David Fahlander"); // a NOTICE (Apache 2.0, 4 d)
    expect(said.notices).toContain("Copyright 2013 Google Inc."); // a head in a package that itself says MIT
    expect(said.notices.match(/SIL OPEN FONT LICENSE Version 1\.1/g)).toHaveLength(3);
    expect(said.notices).toContain("4. Redistribution.");
  });
});
