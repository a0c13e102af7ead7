import { type ParseArgsConfig, parseArgs } from "node:util";
import type { Desk } from "./desk.ts";
import { EXIT, type ExitCode, Stop } from "./exit.ts";

type ParseOptions = NonNullable<ParseArgsConfig["options"]>;

interface Option {
  readonly type: "string" | "boolean";
  /** What stands for the value in the help: FILE, N. */
  readonly value?: string;
  readonly says: string;
}

/** One word after `treewright`. Its help and its page in the reference come from here. */
export interface Command {
  readonly name: string;
  /** What it takes besides options, as printed: "CASE|FOLDER". */
  readonly takes: string;
  readonly says: string;
  readonly about: readonly string[];
  readonly options: Readonly<Record<string, Option>>;
  /** A command line after `treewright`, and what it does. */
  readonly examples: readonly (readonly [line: string, says: string])[];
  run(given: Given, desk: Desk): Promise<ExitCode>;
}

export interface Given {
  readonly takes: readonly string[];
  text(option: string): string | undefined;
  isOn(option: string): boolean;
}

/** Reads the words after the command's name; a word it does not know is wrong use. */
export function readWords(command: Command, words: readonly string[]): Given {
  const options: ParseOptions = {};
  for (const [name, { type }] of Object.entries(command.options)) options[name] = { type };
  const { values, positionals } = parse(command, words, options);
  const most = command.takes === "" ? 0 : 1;
  if (positionals.length > most || (positionals.length < most && !command.takes.startsWith("["))) {
    const wanted = most === 0 ? "takes nothing" : `takes one ${command.takes}`;
    throw new Stop(
      EXIT.wrongUse,
      `treewright ${command.name} ${wanted}; read: ${positionals.join(" ") || "none"}.`,
    );
  }
  return {
    takes: positionals,
    text: (option) => (typeof values[option] === "string" ? values[option] : undefined),
    isOn: (option) => values[option] === true,
  };
}

function parse(command: Command, words: readonly string[], options: ParseOptions) {
  try {
    return parseArgs({ args: [...words], options, allowPositionals: true, strict: true });
  } catch (error) {
    const says = error instanceof Error ? (error.message.split(". ")[0] ?? "") : "";
    throw new Stop(EXIT.wrongUse, `${says}. See: treewright help ${command.name}`);
  }
}

/** A whole number within a range, from an option. */
export function wholeNumber(given: Given, option: string, lo: number, hi: number): number | undefined {
  const text = given.text(option);
  if (text === undefined) return undefined;
  const value = Number(text);
  if (/^\d+$/.test(text) && value >= lo && value <= hi) return value;
  throw new Stop(
    EXIT.wrongUse,
    `--${option}: read "${text}"; allowed is a whole number from ${lo} to ${hi}.`,
  );
}
