/** One place where a house rule is broken, and what to do instead. */
export interface Finding {
  readonly path: string;
  readonly line: number;
  readonly says: string;
}

/** One source file: path from the root of the project, with forward slashes. */
export interface SourceFile {
  readonly path: string;
  readonly text: string;
}

export type HouseRule = (file: SourceFile) => Finding[];

/** Line number, from 1, of a place in a text. */
export function lineAt(text: string, place: number): number {
  return text.slice(0, place).split("\n").length;
}

/** Every match of a pattern with the flag g as a finding. */
export function findAll(file: SourceFile, pattern: RegExp, says: (word: string) => string): Finding[] {
  return [...file.text.matchAll(pattern)].map((match) => ({
    path: file.path,
    line: lineAt(file.text, match.index),
    says: says(match[0]),
  }));
}
