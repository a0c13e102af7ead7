import { commands } from "../../apps/cli/src/commands.ts";
import { helpOfAll, helpOfOne } from "../../apps/cli/src/help.ts";

const block = (lines: readonly string[]): string => `\`\`\`text\n${lines.join("\n").trimEnd()}\n\`\`\`\n`;

/** The help of every command, as it is printed. */
export function commandsPage(): string {
  const sections = commands.map((command) => `## ${command.name}\n\n${block(helpOfOne(command))}`);
  return [
    "# Commands",
    "Made from the help by `npm run docs`: do not edit. In the checkout: `npm run treewright -- COMMAND ...` or\n`npx treewright COMMAND ...`. Lines are at most 80 columns; answers go to the output, progress and errors\nbeside it; no colour is used.",
    block(helpOfAll(commands)),
    ...sections,
  ]
    .join("\n\n")
    .replace(/\n{3,}/g, "\n\n");
}
