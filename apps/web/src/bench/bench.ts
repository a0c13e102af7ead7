import { expose } from "comlink";
import { type Answer, answersOf, readCase, SEED, type Survey, type SweepPoint, sweepPoint } from "../road.ts";
import { figuresOf } from "./figures-of.ts";

/** Lets a newer request in between two batches of draws. */
const breathe = () => new Promise<void>((done) => setTimeout(done, 0));

let known: { text: string; survey: Survey } | undefined;
let newest = 0;

function surveyOf(text: string): Survey {
  if (known?.text === text) return known.survey;
  const read = readCase(text);
  if (!read.ok) throw new Error("a case that was not accepted cannot be answered");
  known = { text, survey: read.survey };
  return read.survey;
}

const bench = {
  /** The mean answer first, then with more and more draws. Stops by itself when a newer request has come in. */
  async answer(text: string, horse: number, tell: (answer: Answer) => void): Promise<void> {
    newest += 1;
    const mine = newest;
    for (const answer of answersOf(surveyOf(text), horse, SEED)) {
      if (mine !== newest) return;
      tell(answer);
      await breathe();
    }
  },
  /** Fingerprints of every figure, to hold one engine against another. */
  figures: figuresOf,
  /** Heads moved by these changes of spread, each with the whole tree and its fit. */
  sweep(text: string, horse: number, changesMm: readonly number[]): SweepPoint[] {
    const survey = surveyOf(text);
    return changesMm.map((changeMm) => sweepPoint(survey, horse, changeMm));
  },
};

export type Bench = typeof bench;

expose(bench);
