/** One value of a JSON text with the place it takes in it: `start` up to, not including, `end`. */
export type Span =
  | { readonly kind: "plain"; readonly start: number; readonly end: number }
  | { readonly kind: "list"; readonly start: number; readonly end: number; readonly items: readonly Span[] }
  | {
      readonly kind: "record";
      readonly start: number;
      readonly end: number;
      readonly members: readonly Member[];
    };

export interface Member {
  readonly key: string;
  /** Where the key's quotation mark stands. */
  readonly start: number;
  readonly value: Span;
}

/** Finds the place of every value in a text that JSON.parse has already accepted. */
export function spansOf(text: string): Span {
  let at = 0;
  const skip = () => {
    while (/\s/.test(text.charAt(at))) at += 1;
  };
  const string = (): string => {
    const start = at;
    for (at += 1; text.charAt(at) !== '"'; at += 1) if (text.charAt(at) === "\\") at += 1;
    at += 1;
    return JSON.parse(text.slice(start, at));
  };
  const list = (start: number): Span => {
    const items: Span[] = [];
    for (at += 1, skip(); text.charAt(at) !== "]"; skip()) {
      if (text.charAt(at) === ",") at += 1;
      else items.push(value());
    }
    at += 1;
    return { kind: "list", start, end: at, items };
  };
  const record = (start: number): Span => {
    const members: Member[] = [];
    for (at += 1, skip(); text.charAt(at) !== "}"; skip()) {
      if (text.charAt(at) === ",") {
        at += 1;
        continue;
      }
      const keyAt = at;
      const key = string();
      skip();
      at += 1;
      members.push({ key, start: keyAt, value: value() });
    }
    at += 1;
    return { kind: "record", start, end: at, members };
  };
  const value = (): Span => {
    skip();
    const start = at;
    const first = text.charAt(at);
    if (first === "{") return record(start);
    if (first === "[") return list(start);
    if (first === '"') string();
    else while (at < text.length && !/[\s,\]}]/.test(text.charAt(at))) at += 1;
    return { kind: "plain", start, end: at };
  };
  return value();
}
