import { type Span, spansOf } from "./spans.ts";

export type Step = string | number;
export type Path = readonly Step[];
export type Json = string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/**
 * Writes one value into a JSON text and leaves every other sign as it was typed: spaces, 105.0, the order of things.
 * What the path needs and the text lacks is added behind what is there.
 */
export function put(text: string, path: Path, value: Json): string {
  const { span, depth } = reach(spansOf(text), path);
  if (depth === path.length) return splice(text, span.start, span.end, JSON.stringify(value));
  const rest = path.slice(depth);
  const [step] = rest;
  if (span.kind === "plain" || step === undefined)
    return splice(text, span.start, span.end, written(rest, value));
  if (span.kind === "list") return append(text, span, span.items, written(rest.slice(1), value));
  return append(
    text,
    span,
    span.members,
    `${JSON.stringify(String(step))}: ${written(rest.slice(1), value)}`,
  );
}

/** Takes one item of a list, or one named value, out of a JSON text. */
export function take(text: string, path: Path): string {
  const { span, depth } = reach(spansOf(text), path.slice(0, -1));
  if (depth < path.length - 1) return text;
  const parts =
    span.kind === "list"
      ? span.items
      : span.kind === "record"
        ? span.members.map(({ start, value }) => ({ start, end: value.end }))
        : [];
  const step = path.at(-1);
  const index = span.kind === "record" ? span.members.findIndex(({ key }) => key === step) : Number(step);
  const [before, part, after] = [parts[index - 1], parts[index], parts[index + 1]];
  if (part === undefined) return text;
  if (before) return splice(text, before.end, part.end, "");
  return after ? splice(text, part.start, after.start, "") : splice(text, part.start, part.end, "");
}

/** The value at a path of a parsed file; undefined where there is none. */
export function valueAt(file: unknown, path: Path): unknown {
  let here: unknown = file;
  for (const step of path) {
    if (typeof here !== "object" || here === null) return undefined;
    here = Object.getOwnPropertyDescriptor(here, step)?.value;
  }
  return here;
}

/** The deepest value on the way along a path, and how many steps lead to it. */
function reach(root: Span, path: Path): { span: Span; depth: number } {
  let span = root;
  for (const [depth, step] of path.entries()) {
    const next = child(span, step);
    if (next === undefined) return { span, depth };
    span = next;
  }
  return { span, depth: path.length };
}

function child(span: Span, step: Step): Span | undefined {
  if (span.kind === "list") return span.items[Number(step)];
  if (span.kind === "record") return span.members.find((member) => member.key === step)?.value;
  return undefined;
}

function written(path: Path, value: Json): string {
  const [step, ...rest] = path;
  if (step === undefined) return JSON.stringify(value);
  return typeof step === "number"
    ? `[${written(rest, value)}]`
    : `{ ${JSON.stringify(step)}: ${written(rest, value)} }`;
}

function append(text: string, into: Span, parts: readonly { start: number }[], words: string): string {
  const last = parts.at(-1);
  if (last === undefined)
    return splice(text, into.start + 1, into.end - 1, into.kind === "list" ? words : ` ${words} `);
  const tail = text.slice(0, into.end - 1).trimEnd().length;
  const line = text.slice(text.lastIndexOf("\n", last.start) + 1, last.start);
  const ownLine = line.trim() === "" && line !== text.slice(0, last.start);
  return splice(text, tail, tail, ownLine ? `,\n${line}${words}` : `, ${words}`);
}

const splice = (text: string, start: number, end: number, words: string) =>
  text.slice(0, start) + words + text.slice(end);
