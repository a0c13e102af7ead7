import { createInterface } from "node:readline";

/** Where a command speaks and listens. */
export interface Desk {
  /** A line of the answer. */
  say(line?: string): void;
  /** A line that is not part of the answer: progress, warnings, errors. */
  tell(line: string): void;
  /** Next line that the person types; undefined when there will be none. */
  ask(prompt: string): Promise<string | undefined>;
  close(): void;
}

/** Signs that steer a terminal or turn its text around; a case file may hold them, a screen never gets them. */
const steering = /[^\P{C}\n]/gu;
const plain = (text: string): string => text.replace(steering, "?");

/** The terminal, or whatever stands in its place. A reader that goes away (`| head`) ends the command quietly. */
export function terminal(): Desk {
  process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 3));
  let lines: AsyncIterator<string> | undefined;
  let reader: ReturnType<typeof createInterface> | undefined;
  const open = (): AsyncIterator<string> => {
    reader ??= createInterface({ input: process.stdin, crlfDelay: Number.POSITIVE_INFINITY });
    lines ??= reader[Symbol.asyncIterator]();
    return lines;
  };
  return {
    say: (line = "") => void process.stdout.write(`${plain(line)}\n`),
    tell: (line) => void process.stderr.write(`${plain(line)}\n`),
    async ask(prompt) {
      process.stdout.write(plain(prompt));
      const next = await open().next();
      // Where nobody's Enter is echoed, the answer's line ends here.
      if (!process.stdin.isTTY) process.stdout.write("\n");
      return next.done ? undefined : next.value;
    },
    close: () => reader?.close(),
  };
}
