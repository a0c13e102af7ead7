import web from "../../package.json" with { type: "json" };
import { today } from "../case/open-save.ts";
import { offlineNow } from "../offline.ts";
import type { Practice } from "../practice/practice.ts";
import { RECORDS_VERSION, STORE_VERSION } from "../records.ts";
import { CASE_VERSION } from "../road.ts";
import type { Action } from "./actions.ts";
import { browserKind, languageOf, screenNow } from "./device.ts";

const PROBLEM_FORMAT = "treewright-problem";
const PROBLEM_VERSION = 1;

/** File of the script that runs, which tells one build from another. */
const SCRIPT = /([\w-]+\.(?:js|ts))(?:[?#]|$)/.exec(import.meta.url)?.[1] ?? "unknown";

/**
 * What helps to find a fault, as the text of one JSON file: versions, kind of browser, screen, language, counts and the last actions.
 * Never a value, a name, free words, an id, or a time finer than how many minutes, hours or days ago.
 */
export async function problemText(practice: Practice, language: string): Promise<string> {
  const facts = {
    format: PROBLEM_FORMAT,
    version: PROBLEM_VERSION,
    made: today(),
    app: { version: web.version, script: SCRIPT },
    formats: { store: STORE_VERSION, records: RECORDS_VERSION, case: CASE_VERSION },
    browser: browserKind(navigator.userAgent),
    screen: screenNow(),
    language: { app: languageOf(language), browser: languageOf(navigator.language) },
    withoutSignal: offlineNow().state,
    counts: await countsOf(practice),
  };
  const minute = Math.floor(practice.machine.now() / 60_000);
  const actions = practice.actions.list().map((one) => `    ${lineOf(one, minute)}`);
  const head = JSON.stringify(facts, undefined, 2).replace(/\n}$/, "");
  return `${head},\n  "actions": [\n${actions.join(",\n")}\n  ]\n}\n`;
}

async function countsOf(practice: Practice) {
  const { visits, notCopied, copiedAt, trouble } = practice.shown.get();
  const { usage = 0, quota = 0 } = await navigator.storage.estimate();
  return {
    ...(await practice.store.count()),
    people: practice.names().length,
    visits: visits.length,
    invented: visits.filter(({ invented }) => invented).length,
    unfinished: visits.filter(({ finished }) => !finished).length,
    notCopied,
    everCopied: copiedAt !== undefined,
    notKept: trouble ?? "no trouble",
    usedMB: Math.ceil(usage / 1e6),
    roomMB: Math.floor(quota / 1e6),
    promised: await navigator.storage.persisted(),
  };
}

const lineOf = ({ did, place, minute }: Action, now: number): string =>
  JSON.stringify({ ago: agoWords(Math.max(0, now - minute)), did, place });

const HOUR = 60;
const DAY = 24 * HOUR;
/** As coarse as it is long ago. */
const agoWords = (minutes: number): string => {
  if (minutes < HOUR) return `${minutes} min`;
  return minutes < DAY ? `${Math.floor(minutes / HOUR)} h` : `${Math.floor(minutes / DAY)} days`;
};
