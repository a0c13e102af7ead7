/** Deepest nesting read; a case needs ten. */
const DEEPEST = 32;
/** More than this many doubled names are not listed. */
const MOST_DOUBLED = 100;

const BARE_WORD = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;

export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly read: string;
  readonly allowed: string;
}
export type JsonRead =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly faults: readonly JsonFault[] };

class Stop extends Error {
  constructor(
    readonly at: number,
    readonly allowed: string,
  ) {
    super(allowed);
  }
}

/**
 * Reads JSON (published: RFC 8259) strictly, with three things JSON.parse does not give: the line and column of a fault
 * in every engine, names that stand twice in one group (the second would silently replace the first), and a bound on depth.
 */
export function readJson(text: string): JsonRead {
  const reader = new Reader(text);
  try {
    const value = reader.whole();
    return reader.doubled.length === 0
      ? { ok: true, value }
      : { ok: false, faults: reader.doubled.map((fault) => placed(text, fault)) };
  } catch (stop) {
    if (!(stop instanceof Stop)) throw stop;
    return {
      ok: false,
      faults: [placed(text, { at: stop.at, read: around(text, stop.at), allowed: stop.allowed })],
    };
  }
}

interface Unplaced {
  readonly at: number;
  readonly read: string;
  readonly allowed: string;
}

function placed(text: string, { at, read, allowed }: Unplaced): JsonFault {
  const before = text.slice(0, at).split("\n");
  return { line: before.length, column: (before[before.length - 1] ?? "").length + 1, read, allowed };
}

const around = (text: string, at: number): string =>
  at >= text.length ? "the end of the text" : `"${text.slice(at, at + 20).split("\n")[0] || "end of line"}"`;

class Reader {
  private at = 0;
  readonly doubled: Unplaced[] = [];
  constructor(private readonly text: string) {
    if (text.startsWith("\uFEFF")) this.at = 1;
  }

  whole(): unknown {
    const value = this.value(0);
    this.space();
    if (this.at < this.text.length) throw new Stop(this.at, "nothing after the end of the case");
    return value;
  }

  private value(depth: number): unknown {
    if (depth > DEEPEST) throw new Stop(this.at, `groups and lists nested at most ${DEEPEST} deep`);
    this.space();
    const sign = this.text[this.at];
    if (sign === "{") return this.group(depth);
    if (sign === "[") return this.list(depth);
    if (sign === '"') return this.words();
    return this.bareWord();
  }

  private group(depth: number): Record<string, unknown> {
    const group: Record<string, unknown> = {};
    this.at += 1;
    if (this.taken("}")) return group;
    do {
      this.space();
      const at = this.at;
      if (this.text[at] !== '"') throw new Stop(at, 'a name in double quotes (and no comma before "}")');
      const name = this.words();
      if (name === "__proto__") throw new Stop(at, "a name that a case knows");
      if (!this.taken(":")) throw new Stop(this.at, `":" after the name "${name.slice(0, 40)}"`);
      if (Object.hasOwn(group, name)) this.twice(at, name);
      group[name] = this.value(depth + 1);
    } while (this.taken(","));
    if (!this.taken("}")) throw new Stop(this.at, '"," or "}"');
    return group;
  }

  private twice(at: number, name: string): void {
    if (this.doubled.length >= MOST_DOUBLED) return;
    this.doubled.push({
      at,
      read: `the name "${name.slice(0, 40)}" a second time in one group`,
      allowed: "each name once in a group",
    });
  }

  private list(depth: number): unknown[] {
    const list: unknown[] = [];
    this.at += 1;
    if (this.taken("]")) return list;
    do list.push(this.value(depth + 1));
    while (this.taken(","));
    if (!this.taken("]")) throw new Stop(this.at, '"," or "]"');
    return list;
  }

  private words(): string {
    const from = this.at;
    for (this.at += 1; this.text[this.at] !== '"'; this.at += this.text[this.at] === "\\" ? 2 : 1) {
      if (this.at >= this.text.length || this.text[this.at] === "\n")
        throw new Stop(from, "words that end with a double quote on the same line");
    }
    this.at += 1;
    try {
      return String(JSON.parse(this.text.slice(from, this.at)));
    } catch {
      throw new Stop(from, "words without control signs; a backslash is written \\\\");
    }
  }

  private bareWord(): unknown {
    BARE_WORD.lastIndex = this.at;
    const word = BARE_WORD.exec(this.text)?.[0];
    if (word === undefined || /[\w.]/.test(this.text[this.at + word.length] ?? "")) {
      throw new Stop(
        this.at,
        'a number such as 205 or 20.5, words in double quotes, true, false, "[" or "{"',
      );
    }
    this.at += word.length;
    return JSON.parse(word);
  }

  private taken(sign: string): boolean {
    this.space();
    if (this.text[this.at] !== sign) return false;
    this.at += 1;
    return true;
  }

  private space(): void {
    while (this.at < this.text.length && " \t\r\n".includes(this.text[this.at] ?? "x")) this.at += 1;
  }
}
