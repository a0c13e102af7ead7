import { beside, wrap } from "./columns.ts";
import type { Command } from "./command.ts";
import { EXIT_SAYS } from "./exit.ts";

const cautions =
  "Pain, heat, swelling, sores or lameness go to a vet before any fit is judged. " +
  "The answers advise a qualified person; vet, maker, licensed practice and local rules come first.";

function exitLines(): string[] {
  return Object.entries(EXIT_SAYS).flatMap(([code, says]) => beside(code, says, 4));
}

/** What `treewright help` prints. */
export function helpOfAll(commands: readonly Command[]): string[] {
  return [
    "treewright: can the head of this saddle's tree be altered for this horse?",
    "",
    "  treewright COMMAND ...",
    "  treewright help COMMAND",
    "",
    "Commands, in the order of the work:",
    ...commands.flatMap((one) => beside(`${one.name} ${one.takes}`.trim(), one.says, 24)),
    "",
    "To begin:",
    ...beside("treewright new first.json", "asks the questions of a visit, in their order", 36),
    ...beside("treewright answer first.json", "three answers and their reasons", 36),
    "",
    "What the shell is told:",
    ...exitLines(),
    "",
    ...wrap(cautions),
  ];
}

/** What `treewright help COMMAND` prints. */
export function helpOfOne(command: Command): string[] {
  const options = Object.entries(command.options);
  return [
    ...wrap(`treewright ${command.name}: ${command.says}`),
    "",
    ...wrap(`treewright ${command.name} ${command.takes}${options.length > 0 ? " [options]" : ""}`, 2),
    "",
    ...command.about.flatMap((text) => [...wrap(text), ""]),
    ...(options.length > 0 ? ["Options:"] : []),
    ...options.flatMap(([name, { value, says }]) => beside(`--${name}${value ? ` ${value}` : ""}`, says, 18)),
    ...(options.length > 0 ? [""] : []),
    "Examples:",
    ...command.examples.flatMap(([line, says]) => [`  treewright ${line}`, ...wrap(says, 6)]),
    "",
    "What the shell is told:",
    ...exitLines(),
  ];
}
