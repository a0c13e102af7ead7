import { proxy, type Remote, wrap } from "comlink";
import type { Bench } from "../bench/bench.ts";
import { benchWorker } from "../bench/open-bench.ts";
import { EN_PAPER } from "../catalogue/en-answers.ts";
import type { Press } from "../paper/press.ts";
import { pressWorker } from "../paper/press-worker.ts";
import type { ListedVisit } from "../practice/card.ts";
import type { Practice } from "../practice/practice.ts";
import { endsOf } from "../records.ts";
import { type Answer, type PaperKind, readCaseValue } from "../road.ts";
import type { MadePaper, Papers, VisitPapers } from "./pack.ts";

/** What goes into a copy: what an owner was given, and what the fitter worked by. */
const KINDS: readonly PaperKind[] = ["letter", "sheet"];

/** Which visit is being worked out. */
export interface PaperWork {
  readonly number: number;
  readonly of: number;
  readonly horse: string;
}

/** Workers of one copy's papers; ended with it. */
interface Hands {
  readonly answering: Remote<Bench>;
  readonly drawing: Remote<Bench>;
  readonly press: Remote<Press>;
}

/**
 * Letters and sheets of every finished visit that can be worked out, one after the other, in workers. A visit that cannot be, and
 * every one that was not begun when `stop` came, is told in a sentence instead. Letters are in that language. Nothing is written.
 */
export async function makePapers(
  practice: Practice,
  language: string,
  tell: (work: PaperWork) => void,
  stop: AbortSignal,
): Promise<Papers> {
  const visits = practice.shown.get().visits.filter(({ finished }) => finished);
  const made = new Map<string, VisitPapers>();
  const without: string[] = [];
  if (visits.length === 0) return { made, without };
  const workers = [benchWorker(), benchWorker(), pressWorker()] as const;
  const [answering, drawing, press] = workers;
  const hands = {
    answering: wrap<Bench>(answering),
    drawing: wrap<Bench>(drawing),
    press: wrap<Press>(press),
  };
  try {
    for (const [at, visit] of visits.entries()) {
      const about = `${visit.horseName}, ${visit.day}`;
      tell({ number: at + 1, of: visits.length, horse: visit.horseName });
      try {
        stop.throwIfAborted();
        made.set(visit.subject, await unlessStopped(papersOf(practice, language, visit, hands), stop));
      } catch (error) {
        without.push(`${about}: no papers. ${stop.aborted ? "They were not waited for." : saysOf(error)}`);
      }
    }
  } finally {
    for (const worker of workers) worker.terminate();
  }
  return { made, without };
}

const saysOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

function unlessStopped<Done>(work: Promise<Done>, stop: AbortSignal): Promise<Done> {
  const stopped = new Promise<never>((_, refuse) => {
    stop.addEventListener("abort", () => refuse(stop.reason), { once: true });
  });
  return Promise.race([work, stopped]);
}

async function papersOf(
  practice: Practice,
  language: string,
  { subject }: ListedVisit,
  hands: Hands,
): Promise<VisitPapers> {
  const entries = await practice.store.entriesOf(subject);
  const read = readCaseValue(practice.draftOf(entries).file);
  if (!read.ok) {
    const [first] = read.problems;
    throw new Error(`${first?.where}: read ${first?.read}, allowed: ${first?.allowed}.`);
  }
  const text = `${JSON.stringify(read.file, undefined, 2)}\n`;
  const papers: MadePaper[] = [];
  for (const horse of read.survey.horses.keys()) {
    const answer = await answered(text, horse, hands);
    for (const kind of KINDS) {
      const content = await hands.press.print(kind, text, answer, {}, language);
      // The page of a copy is in English alone.
      const name = `${EN_PAPER[kind].name}, horse ${horse + 1}`;
      if (content) papers.push({ name, path: `papers/${subject}-horse-${horse + 1}-${kind}.pdf`, content });
    }
  }
  return { ends: endsOf(entries).join(), papers };
}

/** The last of the answers that come in, with all its draws. */
async function answered(text: string, horse: number, { answering, drawing }: Hands): Promise<Answer> {
  let last: Answer | undefined;
  drawing.getReady(text, horse).catch(() => undefined);
  await answering.answer(
    text,
    horse,
    proxy((answer: Answer) => {
      last = answer;
    }),
    proxy((settingId, from, to) => drawing.draws(text, horse, settingId, from, to)),
  );
  if (last === undefined) throw new Error("it was not answered");
  return last;
}
