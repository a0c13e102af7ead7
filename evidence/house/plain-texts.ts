import { findAll, type HouseRule } from "./finding.ts";

const isCode = (path: string): boolean => /\.(tsx?|mjs|css|html)$/.test(path);

/** Longest file that one still reads in one go, lines. */
export const longFile = 250;
export const tooLongFile = 400;

export const shortFiles: HouseRule = ({ path, text }) => {
  const lines = text.split("\n").length - 1;
  if (!isCode(path) || lines <= tooLongFile) return [];
  return [
    {
      path,
      line: lines,
      says: `${lines} lines, at most ${tooLongFile}: split it where the theory has two nouns`,
    },
  ];
};

/** Words of the trade; "side", "station", "points" and "layer" are words of mathematics too. */
const tradeWords =
  /(?<!arrow )\b(saddles?|saddlers?|horses?|trees?|heads?|gullets?|pommels?|cantles?|panels?|girths?|withers?|riders?|stirrups?|flock|tack|rump|shoulder|wool|leather)\b/gi;

export const engineKnowsNoTrade: HouseRule = (file) => {
  if (!/^core\/src\/(engine|records)\/.*\.ts$/.test(file.path)) return [];
  return findAll(
    file,
    tradeWords,
    (word) =>
      `"${word}" is a word of the trade: say it in words of mathematics here, and the trade's word in shape or fit`,
  );
};

const homeless = /(^|\/)(utils?|helpers?|common|misc)(\/|\.[a-z]+$)/;

export const everythingHasAHome: HouseRule = ({ path }) =>
  homeless.test(path)
    ? [
        {
          path,
          line: 1,
          says: "a thing without a home has not been understood yet: name the file after what it is about",
        },
      ]
    : [];

/** Where a source of this project may point: its own machine, names kept for examples, and names of standards. */
const mayPoint =
  /^(127\.0\.0\.1|localhost|\[::1\]|www\.w3\.org|json-schema\.org|cyclonedx\.org|doi\.org|.*\.example|x|h|host|a)$/;
const address = /\bhttps?:\/\/([^\s/:"'`<>()${}\\]+|\[::1\])/g;
/** Places of a workshop's own machine; written in parts so that this file does not hold them. */
const workplace = new RegExp(
  `["'\`\\s(](/(${["work", "tmp", "root", "home"].join("|")})/)[a-z]|\\.\\./${"sha" + "red"}/`,
  "g",
);

export const namesNoHost: HouseRule = (file) => {
  if (!isCode(file.path)) return [];
  const hosts = findAll(
    file,
    address,
    (found) => `${found}: a source text names no host; published sources stand in docs`,
  ).filter((_, at) => !mayPoint.test([...file.text.matchAll(address)][at]?.[1] ?? ""));
  return [
    ...hosts,
    ...findAll(file, workplace, (found) => `"${found.trim()}": a source text names no place on one machine`),
  ];
};
