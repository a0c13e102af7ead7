import { calledBack } from "../spoken/called.ts";
import { ENGLISH } from "../spoken/english.ts";
import type { Tongue } from "../spoken/tongue.ts";

/**
 * Words of another language for core's. The key is the English sentence as core says it, so that a sentence that changes
 * in core loses its translation and is looked at again; `{name}` stands for a figure or a name in the middle of it.
 */
export type Table = Readonly<Record<string, string>>;

/** Core's own words in one language. */
export interface Trade {
  /** A title, question, reason, caution or refusal. What has no translation stays in English. */
  readonly said: (english: string) => string;
  /** Something to choose, by its id; `place` is the name of the field, where one id wants two words. */
  readonly choice: (id: string, place?: string) => string;
  /** A figure as typed, in words, for the one who called it out; `unit` the usual one. Undefined for what is no figure. */
  readonly called: (typed: string, unit: string | undefined) => string | undefined;
  /** "en" where these words stay English in this language: a reader's voice is told so. */
  readonly langOf: (english: string) => "en" | undefined;
}

/** English is core's own: "cannot-be-seen" is "cannot be seen". */
export const TRADE_EN: Trade = {
  said: (english) => english,
  choice: (id) => id.replaceAll("-", " "),
  called: (typed, unit) => calledBack(typed, unit, ENGLISH),
  langOf: () => undefined,
};

/** The same through a change of each text: the made languages. */
export const changedTrade = (change: (words: string) => string): Trade => ({
  said: (english) => (english === "" ? "" : change(english)),
  choice: (id) => change(TRADE_EN.choice(id)),
  called: (typed, unit) => {
    const words = TRADE_EN.called(typed, unit);
    return words === undefined ? undefined : change(words);
  },
  langOf: () => undefined,
});

/** tables: English to the language. tongue: how it says figures. heard: told of each sentence that is used. */
export function tradeFrom(
  tables: readonly Table[],
  choices: Table,
  tongue: Tongue,
  heard: (english: string) => void = () => undefined,
): Trade {
  const all = new Map(tables.flatMap((table) => Object.entries(table)));
  // The more of a sentence is fixed, the earlier it is tried: "at most {size} long" before "at most {size}".
  const shapes = [...all]
    .filter(([english]) => HOLE.test(english))
    .sort(([a], [b]) => b.replace(HOLES, "").length - a.replace(HOLES, "").length)
    .map(([english, to]) => shapeOf(english, to));
  const kept = new Map<string, string | undefined>();
  const found = (english: string): string | undefined => {
    if (!kept.has(english)) kept.set(english, sought(english));
    return kept.get(english);
  };
  const sought = (english: string): string | undefined => {
    const whole = all.get(english);
    if (whole !== undefined) {
      heard(english);
      return whole;
    }
    for (const shape of shapes) {
      const given = shape.form.exec(english)?.groups;
      if (!given) continue;
      heard(shape.english);
      return shape.to.replace(HOLES, (_, name: string) => inside(given[name] ?? ""));
    }
    // A unit that is a word has its own shape above: "2001 letters".
    if (FIGURE.test(english)) return english.replace(".", tongue.stop);
    return inParts(english, "; ") ?? inParts(english, ", ");
  };
  // Core joins what it says: "clearance over the top of the withers, girthed up, horse 2".
  const inParts = (english: string, joint: string): string | undefined => {
    const part = english.lastIndexOf(joint);
    if (part < 0) return undefined;
    const [before, after] = [found(english.slice(0, part)), found(english.slice(part + joint.length))];
    return before !== undefined && after !== undefined ? `${before}${joint}${after}` : undefined;
  };
  const inside = (given: string): string => found(given) ?? choices[`unit/${given}`] ?? given;
  return {
    said: (english) => found(english) ?? english,
    choice: (id, place) => (place === undefined ? undefined : choices[`${place}/${id}`]) ?? choices[id] ?? id,
    called: (typed, unit) => calledBack(typed, unit, tongue),
    langOf: (english) => (english !== "" && found(english) === undefined ? "en" : undefined),
  };
}

const HOLE = /\{\w+\}/;
const HOLES = /\{(\w+)\}/g;
/** A figure by itself, with its unit where it has one. */
const FIGURE = /^[-−]?\d+(\.\d+)?(e[+-]?\d+)?( ?[a-zA-Z°]+)?$/;
const DATE = "\\d{1,2} \\w+ \\d{4}|\\d{4}-\\d\\d-\\d\\d";
/** What may stand in a hole of some names; in any other anything may. */
const FORMS: Readonly<Record<string, string>> = {
  side: "near|off",
  other: "near|off",
  lo: "[-−\\d./]+(?: \\d+/\\d+)?(?: \\S+)?",
  hi: "[-−\\d./]+(?: \\d+/\\d+)?(?: \\S+)?",
  n: "\\d+",
  mm: "\\d+(?: mm)?",
  u: "\\d+",
  deg: "\\d+(?:\\.\\d+)?",
  day: "\\d{1,2}",
  year: "\\d{4}",
  date: DATE,
  from: DATE,
  to: DATE,
  how: "a little|clearly|strongly",
  again: ".*",
  unit: "\\S+",
};

interface Shape {
  readonly english: string;
  readonly form: RegExp;
  readonly to: string;
}

/** Sentences with holes as a pattern: the words between stand for themselves. */
function shapeOf(english: string, to: string): Shape {
  const parts = english.split(HOLES);
  const source = parts.map((part, at) =>
    at % 2 === 1 ? `(?<${part}>${FORMS[part] ?? ".+"})` : part.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"),
  );
  return { english, form: new RegExp(`^${source.join("")}$`), to };
}
