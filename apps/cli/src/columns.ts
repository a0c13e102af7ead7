/** Widest line that is printed. */
const COLUMNS = 80;

function* linesOf(words: readonly string[], width: number): Generator<string> {
  let line = "";
  for (const word of words) {
    if (line !== "" && line.length + 1 + word.length > width) {
      yield line;
      line = "";
    }
    line = line === "" ? word : `${line} ${word}`;
    while (line.length > width) {
      yield line.slice(0, width);
      line = line.slice(width);
    }
  }
  if (line !== "") yield line;
}

/** Wraps a text at 80 columns; every line but the first hangs by `hang` more spaces. A word too long is cut, never lost. */
export function wrap(text: string, indent = 0, hang = 0): string[] {
  const width = COLUMNS - indent - hang;
  const lines = [...linesOf(text.split(/\s+/).filter(Boolean), width)];
  return lines.map((line, at) => " ".repeat(at === 0 ? indent : indent + hang) + line);
}

/** A word in a left column, its text wrapped beside it. */
export function beside(left: string, text: string, leftWidth: number, indent = 2): string[] {
  const lines = wrap(text, indent + leftWidth);
  if (left.length > leftWidth - 2) return [" ".repeat(indent) + left, ...lines];
  const first = lines[0] ?? "";
  return [" ".repeat(indent) + left.padEnd(leftWidth) + first.trimStart(), ...lines.slice(1)];
}
