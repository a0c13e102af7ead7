/** What the command tells the shell. The help and docs/reference/commands.md print this table. */
export const EXIT = {
  answered: 0,
  problemInCase: 1,
  wrongUse: 2,
  notReadOrWritten: 3,
  programFault: 4,
  leftEarly: 5,
} as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

export const EXIT_SAYS: Readonly<Record<ExitCode, string>> = {
  0: "answered",
  1: "a problem in a case: the lines say where, what was read, what is allowed",
  2: "wrong use of the command",
  3: "a file or folder could not be read or written",
  4: "a fault of the program itself",
  5: "left before the last question; what was typed is kept",
};

/** Ends the command with one sentence for the person and a code for the shell. */
export class Stop extends Error {
  readonly code: ExitCode;

  constructor(code: ExitCode, says: string) {
    super(says);
    this.code = code;
  }
}
