import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { root } from "./sources.ts";

/** Licences under which a package may come in, for anything. */
const allowed = new Set([
  "MIT",
  "MIT-0",
  "ISC",
  "Apache-2.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "0BSD",
  "BlueOak-1.0.0",
  "CC0-1.0",
  "Unlicense",
  "Python-2.0",
  "OFL-1.1",
  "Zlib",
]);

/** Weaker copyleft and data licences: only these packages, for the reason beside each. */
const byName: Readonly<Record<string, readonly [licence: string, why: string]>> = {
  "axe-core": ["MPL-2.0", "checks only, never shipped"],
  "@axe-core/playwright": ["MPL-2.0", "checks only, never shipped"],
  lightningcss: ["MPL-2.0", "build only, never shipped"],
  "caniuse-lite": ["CC-BY-4.0", "data, build only"],
};

/** Packages whose package.json says nothing; read by hand in the LICENSE file they bring. */
const readByHand: Readonly<Record<string, string>> = { "png-js": "MIT" };

const packageSchema = z.looseObject({
  version: z.string().optional(),
  license: z.union([z.string(), z.looseObject({ type: z.string() })]).optional(),
  licenses: z.array(z.looseObject({ type: z.string() })).optional(),
});
const lockSchema = z.looseObject({
  packages: z.record(
    z.string(),
    z.looseObject({ link: z.boolean().optional(), license: z.string().optional() }),
  ),
});

/** An expression of SPDX passes when one branch of each OR passes and every part of an AND does. */
export function isAllowed(name: string, expression: string): boolean {
  const bare = expression.trim().replace(/^\((.*)\)$/, "$1");
  if (/ OR /.test(bare)) return bare.split(" OR ").some((part) => isAllowed(name, part));
  if (/ AND /.test(bare)) return bare.split(" AND ").every((part) => isAllowed(name, part));
  const excepted = Object.entries(byName).find(([key]) => name === key || name.startsWith(`${key}-`))?.[1];
  return allowed.has(bare) || excepted?.[0] === bare;
}

/** A package whose code or letters go out with ours needs a licence that stands for anything: no name is an exception there. */
export const mayBeShipped = (expression: string): boolean => isAllowed("", expression);

/** The licence that an installed package says of itself, or that was read in it by hand; `path` from the root of the project. */
export function licenceOfPackage(path: string): string | undefined {
  return ownWord(path) ?? readByHand[nameOf(path)];
}

const nameOf = (path: string): string => path.split("node_modules/").at(-1) ?? path;

function ownWord(path: string): string | undefined {
  const file = join(root, path, "package.json");
  if (!existsSync(file)) return undefined;
  const { license, licenses } = packageSchema.parse(JSON.parse(readFileSync(file, "utf8")));
  if (typeof license === "string") return license;
  return license?.type ?? licenses?.map((one) => one.type).join(" OR ");
}

export interface Licence {
  readonly name: string;
  /** As the package itself says; where it is not installed on this machine, as the lock says. */
  readonly licence: string | undefined;
  readonly isInstalled: boolean;
}

/** Every package of the lock with its licence. */
export function licencesOfLock(lockText: string): Licence[] {
  const { packages } = lockSchema.parse(JSON.parse(lockText));
  return Object.entries(packages)
    .filter(([path, entry]) => path.includes("node_modules/") && entry.link !== true)
    .map(([path, entry]) => ({
      name: nameOf(path),
      licence: licenceOfPackage(path) ?? entry.license,
      isInstalled: existsSync(join(root, path)),
    }));
}
