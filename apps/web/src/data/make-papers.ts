import { proxy, type Remote, wrap } from "comlink";
import type { Bench } from "../bench/bench.ts";
import { benchWorker } from "../bench/open-bench.ts";
import { EN_PAPER } from "../catalogue/en-answers.ts";
import type { Press } from "../paper/press.ts";
import { pressWorker } from "../paper/press-worker.ts";
import type { Practice } from "../practice/practice.ts";
import { endsOf, OF_VISIT, signatureIn, type VisitDraft } from "../records.ts";
import { type Answer, type PaperKind, readCaseValue } from "../road.ts";
import type { MadePaper, Papers, VisitPapers } from "./pack.ts";

/** What goes into a copy beside what was signed: what an owner was given, and what the fitter worked by. */
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
 * What was signed in every finished visit, and letters and sheets of those that can be worked out, one after the other, in workers.
 * A visit that cannot be, and every one that was not begun when `stop` came, is told in a sentence instead. Letters are in that language. Nothing is written.
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
      const { subject, horseName, day } = visit;
      tell({ number: at + 1, of: visits.length, horse: horseName });
      const entries = await practice.store.entriesOf(subject);
      const papers: MadePaper[] = [];
      try {
        stop.throwIfAborted();
        await unlessStopped(papersOf(practice.draftOf(entries), subject, language, hands, papers), stop);
      } catch (error) {
        without.push(
          `${horseName}, ${day}: no papers. ${stop.aborted ? "They were not waited for." : saysOf(error)}`,
        );
      }
      if (papers.length > 0) made.set(subject, { ends: endsOf(entries).join(), papers });
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

/** The papers of one visit, each added to `papers` as it is made: what was signed needs no answer. */
async function papersOf(
  draft: VisitDraft,
  subject: string,
  language: string,
  hands: Hands,
  papers: MadePaper[],
): Promise<void> {
  papers.push(...(await agreementOf(draft, subject, hands.press)));
  const read = readCaseValue(draft.file);
  if (!read.ok) {
    const [first] = read.problems;
    throw new Error(`${first?.where}: read ${first?.read}, allowed: ${first?.allowed}.`);
  }
  const text = `${JSON.stringify(read.file, undefined, 2)}\n`;
  for (const horse of read.survey.horses.keys()) {
    const answer = await answered(text, horse, hands);
    for (const kind of KINDS) {
      const content = await hands.press.print(kind, text, answer, {}, language);
      // The page of a copy is in English alone.
      const name = `${EN_PAPER[kind].name}, horse ${horse + 1}`;
      if (content) papers.push({ name, path: `papers/${subject}-horse-${horse + 1}-${kind}.pdf`, content });
    }
  }
}

/** What was signed, word for word as it was, whatever was said after it; none where nothing was signed, or who signed was erased. */
async function agreementOf(
  { ofVisit }: VisitDraft,
  subject: string,
  press: Remote<Press>,
): Promise<readonly MadePaper[]> {
  const [text, signed] = [ofVisit.get(OF_VISIT.agreedText), signatureIn(ofVisit.get(OF_VISIT.signature))];
  if (typeof text !== "string" || signed === undefined) return [];
  const content = await press.agreement(text, signed.over, signed, signed.language);
  return [{ name: "Agreement, signed", path: `papers/${subject}-agreement.pdf`, content }];
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
