import { EN } from "./en.ts";
import { useLanguage } from "./use-words.ts";

interface Refusal {
  /** Left out where the place stands beside it. */
  readonly where?: string;
  readonly read: string;
  readonly allowed: string;
}

/** A refusal in one language: the reader's where all of it has been translated, else English, and a voice is told so. */
export function RefusalWords({ where, read, allowed }: Refusal) {
  const { words, trade } = useLanguage();
  const isEnglish = [where ?? "", read, allowed].some((part) => trade.langOf(part) === "en");
  const say = isEnglish ? (english: string) => english : trade.said;
  const { refused } = isEnglish ? EN.visit : words.visit;
  const got = where === undefined ? say(read) : `${say(where)}: ${say(read)}`;
  return <span lang={isEnglish ? "en" : undefined}>{refused(got, say(allowed))}</span>;
}
