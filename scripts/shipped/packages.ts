import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { licenceOfPackage, mayBeShipped } from "../../evidence/house/licences.ts";
import { root } from "../../evidence/house/sources.ts";
import { licenceTexts } from "./licence-texts.ts";

/** A package of others of which something goes out with ours. */
export interface Shipped {
  readonly name: string;
  readonly version: string;
  /** SPDX expression. */
  readonly licence: string;
  /** What has to go along: licence, notice, and what its sources say at their head. */
  readonly texts: readonly string[];
  /** SHA-512 of the package as the registry gave it, in hexadecimal. */
  readonly sha512: string;
  /** The packages that it asks for and that go out too, as `idOf` names them. */
  readonly asksFor: readonly string[];
}

/** One name for a package of one version, wherever it lies. */
export const idOf = ({ name, version }: { name: string; version: string }): string => `${name}@${version}`;

type Manifest = { name: string; version: string; author?: unknown; dependencies?: Record<string, string> };
type Lock = { packages: Record<string, { integrity?: string }> };

/** Code that a tool writes into what it makes, by the name it gives to that code, and the package it is of. */
const WRITTEN_BY_TOOLS: readonly (readonly [name: RegExp, of: string])[] = [
  [/^\0rolldown\/runtime/, "node_modules/rolldown"],
  [/^\0?vite\//, "node_modules/vite"],
];

/** The file that a bundler's name for a module stands for. */
const fileOf = (id: string): string => id.replace(/^\0/, "").replace(/\?.*$/, "");

/** The folder of the package that a module of a bundle is of; undefined for our own. Throws for a name that leads nowhere. */
export function folderOfModule(id: string): string | undefined {
  const tool = WRITTEN_BY_TOOLS.find(([name]) => name.test(id));
  if (tool) return tool[1];
  const path = relative(root, fileOf(id)).split(sep).join("/");
  const inPackage = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path);
  if (inPackage) return inPackage[1];
  if (!existsSync(join(root, path)) || path.startsWith(".."))
    throw new Error(`shipped: a module named ${JSON.stringify(id)} is of no package that is known here`);
  return undefined;
}

const readJson = <T>(path: string): T => JSON.parse(readFileSync(join(root, path), "utf8"));

const manifestOf = (folder: string): Manifest => readJson(`${folder}/package.json`);

/**
 * Everything that is to be said of the packages in `folders` (from the root of the project, with forward slashes), each once, by name.
 * `modules`: what of theirs goes out. Throws when one of them may not.
 */
export function shippedPackages(folders: Iterable<string>, modules: Iterable<string>): Shipped[] {
  const all = [...new Set(folders)].sort();
  const sources = [...modules].map(fileOf).filter((file) => existsSync(file));
  const lock = readJson<Lock>("package-lock.json");
  const said = all.map((folder): [string, Shipped] => {
    const { name, version, author, dependencies = {} } = manifestOf(folder);
    const own = sources.filter((file) => folderOfModule(file) === folder);
    const licence = licenceToShip(folder);
    const asked = Object.keys(dependencies).flatMap((wanted) => nearest(folder, wanted, all));
    const shipped = {
      ...{ name, version, licence },
      texts: licenceTexts(folder, licence, author, own),
      sha512: sha512Of(lock, folder),
      asksFor: asked.map((where) => idOf(manifestOf(where))),
    };
    return [idOf(shipped), shipped];
  });
  return [...new Map(said)].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, shipped]) => shipped);
}

function licenceToShip(folder: string): string {
  const licence = licenceOfPackage(folder);
  if (licence !== undefined && mayBeShipped(licence)) return licence;
  throw new Error(`shipped: ${idOf(manifestOf(folder))} may not go out under ${licence ?? "no licence"}`);
}

function sha512Of(lock: Lock, folder: string): string {
  const [kind, hash = ""] = (lock.packages[folder]?.integrity ?? "").split("-");
  if (kind !== "sha512") throw new Error(`shipped: ${folder} has no sha512 in the lock`);
  return Buffer.from(hash, "base64").toString("hex");
}

/** Where Node would find `wanted` from a package: in its own node_modules, else in those above it. */
function nearest(from: string, wanted: string, all: readonly string[]): string[] {
  for (let folder = from; ; folder = folder.slice(0, Math.max(0, folder.lastIndexOf("/node_modules/")))) {
    const here = `${folder === "" ? "" : `${folder}/`}node_modules/${wanted}`;
    if (existsSync(join(root, here))) return all.includes(here) ? [here] : [];
    if (folder === "") return [];
  }
}

/** Names that our own rooms ask for by hand. */
export function askedForByHand(): Set<string> {
  const rooms = ["core", ...["bridges", "apps"].flatMap((kind) => roomsOf(kind))];
  return new Set(
    rooms.flatMap((room) => Object.keys(readJson<Manifest>(`${room}/package.json`).dependencies ?? {})),
  );
}

const roomsOf = (kind: string): string[] => readdirSync(join(root, kind)).map((room) => `${kind}/${room}`);
