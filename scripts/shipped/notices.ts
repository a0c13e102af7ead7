import type { Shipped } from "./packages.ts";

const RULE = "=".repeat(80);

/** The notices as plain text: every package of others in `of`, with its licence and all that has to go along with it. */
export function noticesText(of: string, packages: readonly Shipped[]): string {
  const head = [
    `What others wrote that is part of ${of}`,
    "",
    `${packages.length} packages, each with its version, its licence and the texts that go along with it.`,
    "The comments quoted are those at the head of sources that are in it.",
    "",
    ...packages.map(({ name, version, licence }) => `  ${name} ${version}  ${licence}`),
  ];
  const each = packages.flatMap(({ name, version, licence, texts }) => [
    "",
    RULE,
    `${name} ${version}  ${licence}`,
    RULE,
    "",
    texts.join("\n\n"),
  ]);
  return `${[...head, ...each].join("\n")}\n`;
}
