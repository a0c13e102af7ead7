import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../../evidence/house/sources.ts";

/** Files that a package brings along to be passed on. */
const PASSED_ON = /^(licen[cs]e|copying|notice)([.-].*)?$/i;
/** What a tool says of packages that it was built with, and that do not go out with what it writes. */
const OF_ITS_OWN_PARTS = /^# Licenses of bundled dependencies$/m;
const APACHE = /Apache License,?\s+Version 2\.0/;
const APACHE_WHOLE = /TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION/;

const standard = (name: "MIT" | "Apache-2.0"): string =>
  readFileSync(join(root, `scripts/shipped/texts/${name}.txt`), "utf8");

/** Texts to pass on with a package. Throws when it brings none and its licence's own text is not kept here. */
export function licenceTexts(
  folder: string,
  licence: string,
  author: unknown,
  sources: readonly string[],
): string[] {
  const brought = readdirSync(join(root, folder), { withFileTypes: true })
    .filter((entry) => entry.isFile() && PASSED_ON.test(entry.name))
    .map(({ name }) => readFileSync(join(root, folder, name), "utf8").split(OF_ITS_OWN_PARTS)[0] ?? "");
  const texts = [
    ...(brought.length > 0 ? brought : [standardFor(folder, licence, author)]),
    ...heads(sources),
  ];
  if (texts.some((text) => APACHE.test(text)) && !texts.some((text) => APACHE_WHOLE.test(text)))
    texts.push(standard("Apache-2.0"));
  return texts.map((text) => text.replace(/\r\n?/g, "\n").trim());
}

function standardFor(folder: string, licence: string, author: unknown): string {
  if (licence !== "MIT")
    throw new Error(`shipped: ${folder} brings no licence text, and the text of ${licence} is not kept here`);
  return `The package brings no licence text of its own; it says "MIT"${by(author)}.\n\n${standard("MIT")}`;
}

function by(author: unknown): string {
  const name = typeof author === "object" && author !== null && "name" in author ? author.name : author;
  return typeof name === "string" ? `, and names as its author ${name}` : "";
}

/** Comments of sources in which somebody keeps a right or names a licence, each once. */
function heads(sources: readonly string[]): string[] {
  const found = sources
    .filter((path) => /\.[cm]?[jt]sx?$/.test(path))
    .flatMap((path) => [...readFileSync(path, "utf8").matchAll(/\/\*[\s\S]*?\*\//g)].map(([text]) => text))
    .filter((text) => /copyright|\blicen[cs]ed?\b/i.test(text));
  return [...new Set(found)];
}
