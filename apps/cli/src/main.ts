import { wrap } from "./columns.ts";
import { readWords } from "./command.ts";
import { commands } from "./commands.ts";
import { type Desk, terminal } from "./desk.ts";
import { EXIT, type ExitCode, Stop } from "./exit.ts";
import { helpOfAll, helpOfOne } from "./help.ts";

const asksForHelp = (word: string | undefined): boolean =>
  word === "help" || word === "--help" || word === "-h";

function commandNamed(name: string) {
  const command = commands.find((one) => one.name === name);
  if (command) return command;
  const known = commands.map((one) => one.name).join(", ");
  throw new Stop(EXIT.wrongUse, `There is no command "${name.slice(0, 40)}". There are: ${known}, help.`);
}

async function runWords(words: readonly string[], desk: Desk): Promise<ExitCode> {
  const [first, ...rest] = words;
  if (first === undefined || asksForHelp(first)) {
    const lines = rest[0] === undefined ? helpOfAll(commands) : helpOfOne(commandNamed(rest[0]));
    for (const line of lines) desk.say(line);
    return first === undefined ? EXIT.wrongUse : EXIT.answered;
  }
  const command = commandNamed(first);
  if (rest.some((word) => word === "--help" || word === "-h")) {
    for (const line of helpOfOne(command)) desk.say(line);
    return EXIT.answered;
  }
  return command.run(readWords(command, rest), desk);
}

/** Never a stack trace: a person gets a sentence, the shell a code. */
function lastWords(error: unknown, desk: Desk): ExitCode {
  if (error instanceof Stop) {
    for (const line of error.message.split("\n").flatMap((text) => wrap(text, 0, 2))) desk.tell(line);
    return error.code;
  }
  const says = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  for (const line of wrap(`A fault of the program, not of the case: ${says.slice(0, 400)}`)) desk.tell(line);
  return EXIT.programFault;
}

const desk = terminal();
process.exitCode = await runWords(process.argv.slice(2), desk).catch((error: unknown) =>
  lastWords(error, desk),
);
desk.close();
