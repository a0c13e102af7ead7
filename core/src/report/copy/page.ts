import { grouped } from "../../engine/grouped.ts";
import { horseWords, saddleWords, type Words, workWords } from "../../judge/answer-words.ts";
import { photoPath } from "../../records/photo-file.ts";
import { OF_VISIT } from "../../survey/recorded/places.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../../terms/answers.ts";
import { said, words } from "./markup.ts";
import { PAGE_STYLE } from "./page-style.ts";
import { inWords, type ListedForCopy, ofVisitIn, saidIn, type Told, type ToldVisit } from "./visit-told.ts";

/** What the page says of the copy itself. */
export interface CopyTold {
  /** Moment of the copy, UTC. */
  readonly madeAt: string;
  /** Papers that are not beside it, and why: a sentence each. */
  readonly without: readonly string[];
}

/** Visits on one page. Working limit, no source: a page that an old tablet still opens, and a practice of some years. */
export const VISITS_ON_PAGE = 500;

/** The page that the visit at this place of the list stands on. */
export const pageAt = (at: number): string =>
  at < VISITS_ON_PAGE ? "index.html" : `visits-${Math.floor(at / VISITS_ON_PAGE) + 1}.html`;

/*
 * Visits as pages of HTML that open without the program: no script, nothing asked of anywhere, everything that was typed escaped. Each
 * page's own policy says the same to the browser. Photos and papers are links to the files beside it.
 */

/** What the first page begins with: what the copy is, and the list of all visits. */
export function pageBegins(listed: readonly ListedForCopy[], { madeAt, without }: CopyTold): string {
  const more = listed.length > VISITS_ON_PAGE;
  return [
    ...HEAD,
    "<header>",
    "<h1>Visits</h1>",
    `<p>Copied from Treewright: ${words(moment(madeAt))}. ${counted(listed.length, "visit")}. Names stand here in plain text: keep this as you keep the book that it replaces.</p>`,
    "<p>What was read says nothing by itself. Vet, maker, licensed practice and local rules come first.</p>",
    "<p>Beside this page: <code>records.jsonl</code>, everything as it was recorded, which Treewright reads back; <code>tables</code>, for a spreadsheet; <code>photos</code>; <code>papers</code>.</p>",
    ...(more
      ? [`<p>The latest ${VISITS_ON_PAGE} visits stand on this page, the others on pages beside it.</p>`]
      : []),
    ...(without.length === 0 ? [] : [list(without.map((one) => said(one)))]),
    "</header>",
    `<nav aria-label="Visits"><ol>${listed.map(inList).join("\n")}</ol></nav>`,
    "<main>",
    "",
  ].join("\n");
}

/** What a further page begins with. */
export const furtherPageBegins = (): string =>
  [
    ...HEAD,
    "<header>",
    "<h1>Earlier visits</h1>",
    '<p><a href="index.html">List of all visits</a></p>',
    "</header>",
    "<main>",
    "",
  ].join("\n");

export const PAGE_ENDS = "</main>\n</body>\n</html>\n";

const HEAD = [
  "<!doctype html>",
  '<html lang="en">',
  "<head>",
  '<meta charset="utf-8">',
  `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">`,
  '<meta name="referrer" content="no-referrer">',
  '<meta name="viewport" content="width=device-width, initial-scale=1">',
  "<title>Visits, copied from Treewright</title>",
  `<style>${PAGE_STYLE}</style>`,
  "</head>",
  "<body>",
] as const;

const counted = (count: number, name: string): string => `${count} ${name}${count === 1 ? "" : "s"}`;
const list = (items: readonly string[]): string =>
  `<ul>${items.map((one) => `<li>${one}</li>`).join("")}</ul>`;

/** An id is checked where records are read; what is not one gets no address. */
const nameOf = ({ subject }: { subject: string }): string =>
  /^[0-9a-f-]{36}$/.test(subject) ? `v-${subject}` : "v";

const NO_NAME = "a horse without a name";

/** Letters of a name in the list of visits; its section has all of them. */
const LONGEST_IN_LIST = 80;

const inList = (visit: ListedForCopy, at: number): string => {
  const [day = "", title = ""] = [visit.day, visit.horse || NO_NAME].map((text) =>
    text.length > LONGEST_IN_LIST ? `${text.slice(0, LONGEST_IN_LIST)}…` : text,
  );
  const page = at < VISITS_ON_PAGE ? "" : pageAt(at);
  return `<li><a href="${page}#${nameOf(visit)}">${said(day)} ${said(title)}</a></li>`;
};

/** One visit. */
export function section(visit: ToldVisit): string {
  const finished = ofVisitIn(visit, OF_VISIT.finished);
  return [
    `<section id="${nameOf(visit)}">`,
    `<h2>${said(saidIn(visit, "horses[0].name") || NO_NAME)}</h2>`,
    ...(saidIn(visit, "invented") === "true" ? ["<p><strong>An invented example.</strong></p>"] : []),
    pairs([
      ["Day", saidIn(visit, "visit.date")],
      ["Yard", saidIn(visit, "visit.place")],
      ["Owner", ownerOf(visit)],
      ["Rider", saidIn(visit, "rider.name")],
      ["Saddle", saidIn(visit, "saddle.name")],
      ["Asked", saidIn(visit, "visit.asked")],
      ["Finished", finished === "" ? "not finished" : moment(finished)],
    ]),
    answers(visit),
    ...agreed(visit),
    ...beside(visit),
    ...readings(visit),
    "</section>",
    "",
  ].join("\n");
}

/** A moment as records hold it, to the minute; anything else as it stands. */
const moment = (text: string): string =>
  text.replace(/^(\d{4}-\d\d-\d\d)T(\d\d:\d\d):\d\d\.\d{3}Z$/, "$1, $2 (UTC)");

function ownerOf(visit: ToldVisit): string {
  const one = visit.said.find(({ at }) => at === "visit.owner");
  return one?.state === "erased" ? "erased" : saidIn(visit, "visit.owner");
}

/** Pairs of a name of ours and what was typed; what was not said is left out. */
function pairs(all: readonly (readonly [string, string])[]): string {
  const rows = all.filter(([, text]) => text !== "");
  return `<dl>${rows.map(([name, text]) => `<div><dt>${words(name)}</dt><dd>${said(text)}</dd></div>`).join("")}</dl>`;
}

function answers(visit: ToldVisit): string {
  const all = [
    ["May this horse work", answerWords(visit, OF_VISIT.horseAnswer, HORSE_ANSWERS, horseWords)],
    ["Is this saddle sound", answerWords(visit, OF_VISIT.saddleAnswer, SADDLE_ANSWERS, saddleWords)],
    ["What should be done", answerWords(visit, OF_VISIT.workAnswer, WORK_ANSWERS, workWords)],
  ] as const;
  const known = all.filter(([, text]) => text !== "");
  return `<h3>Answers</h3>\n${known.length === 0 ? "<p>They were not worked out in this visit.</p>" : pairs(known)}`;
}

/** An answer in words. What is no answer of this version is told as it stands. */
function answerWords<Id extends string>(
  visit: ToldVisit,
  at: string,
  ids: readonly Id[],
  wordsOf: (id: Id) => Words,
): string {
  const text = ofVisitIn(visit, at);
  const id = ids.find((one) => one === text);
  if (id === undefined) return text;
  const { heading, meaning } = wordsOf(id);
  return `${heading} ${meaning}`;
}

function agreed(visit: ToldVisit): readonly string[] {
  const weeks = ofVisitIn(visit, OF_VISIT.nextInWeeks);
  const all = [
    ["Agreed", ofVisitIn(visit, OF_VISIT.agreedWork)],
    ["Risks that were told", ofVisitIn(visit, OF_VISIT.agreedRisks)],
    ["The worse case", ofVisitIn(visit, OF_VISIT.agreedWorse)],
    ["The limit that is not passed", ofVisitIn(visit, OF_VISIT.agreedLimit)],
    ["Done", ofVisitIn(visit, OF_VISIT.done)],
    ["Next look", weeks === "" ? "" : `in ${weeks} weeks`],
  ] as const;
  return all.every(([, text]) => text === "") ? [] : ["<h3>Agreed and done</h3>", pairs(all)];
}

/** The paths are the program's own; they hold nothing that was typed. */
function beside({ papers, photos }: ToldVisit): readonly string[] {
  const links = [
    ...papers.map(({ name, path }) => `<a href="${words(path)}">${words(name)} (PDF)</a>`),
    ...photos.map((photo, at) => `<a href="${photoPath(photo)}">photo ${at + 1}</a>`),
  ];
  return links.length === 0 ? [] : ["<h3>Papers and photos</h3>", list(links)];
}

function readings({ said: all }: ToldVisit): readonly string[] {
  const parts = grouped(
    all.filter(({ part }) => part !== ""),
    ({ part }) => part,
  );
  return [...parts].flatMap(([part, told]) => [
    `<h3>${words(part)}</h3>`,
    '<table><thead><tr><th scope="col">what</th><th scope="col">as typed</th></tr></thead><tbody>',
    ...told.map((one) => `<tr><th scope="row">${words(one.asks)}</th><td>${reading(one)}</td></tr>`),
    "</tbody></table>",
  ]);
}

function reading({ value, unit, state }: Told): string {
  if (state === "erased") return "erased";
  const typed = said(fullWords(value));
  const withUnit = unit !== "" && isBare(value) ? `${typed} ${words(unit)}` : typed;
  return state === "disputed" ? `${withUnit} <strong>(two said different things)</strong>` : withUnit;
}

const isBare = (value: unknown): boolean =>
  typeof value === "number" || (typeof value === "string" && /^[-+]?\d+([.,]\d+)?$/.test(value.trim()));

/** A full reading is its repeats and by what they were taken. */
function fullWords(value: unknown): string {
  if (typeof value !== "object" || value === null || !("read" in value)) return inWords(value);
  const read = Array.isArray(value.read) ? value.read.map(inWords).join(" · ") : inWords(value.read);
  const by = "by" in value ? `, by ${inWords(value.by)}` : "";
  const doubt = "uncertainty" in value ? `, ± ${inWords(value.uncertainty)}` : "";
  return `${read}${by}${doubt}`;
}
