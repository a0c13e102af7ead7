import { expose } from "comlink";
import {
  type Answer,
  answersShared,
  type DrawTable,
  drawsElsewhere,
  joined,
  type MovedHeads,
  movedHeads,
  type OtherHand,
  type Road,
  readCase,
  roadOf,
  SEED,
  type Survey,
  type SweepPoint,
} from "../road.ts";
import { figuresOf } from "./figures-of.ts";

/** Lets a newer request in between two batches of draws. */
const breathe = () => new Promise<void>((done) => setTimeout(done, 0));

let known: { text: string; survey: Survey } | undefined;
let heads: { text: string; horse: number; moved: MovedHeads } | undefined;
let roads: { text: string; horse: number; road: Road } | undefined;
let newest = 0;
let newestDraws = 0;

function surveyOf(text: string): Survey {
  if (known?.text === text) return known.survey;
  const read = readCase(text);
  if (!read.ok) throw new Error("a case that was not accepted cannot be answered");
  known = { text, survey: read.survey };
  return read.survey;
}

function headsOf(text: string, horse: number): MovedHeads {
  if (heads?.text !== text || heads.horse !== horse)
    heads = { text, horse, moved: movedHeads(surveyOf(text), horse, SEED) };
  return heads.moved;
}

function roadFor(text: string, horse: number): Road {
  if (roads?.text !== text || roads.horse !== horse)
    roads = { text, horse, road: roadOf(surveyOf(text), horse, SEED) };
  return roads.road;
}

const bench = {
  /**
   * The mean answer first, then with more and more draws, half of them by another hand. Stops by itself when a newer
   * request has come in.
   */
  async answer(
    text: string,
    horse: number,
    tell: (answer: Answer) => void,
    otherHand: OtherHand,
  ): Promise<void> {
    newest += 1;
    const mine = newest;
    for await (const answer of answersShared(surveyOf(text), horse, otherHand)) {
      if (mine !== newest) return;
      tell(answer);
      await breathe();
    }
  },
  /** Goes the road of an answer that is worked out elsewhere, so as to stand ready when its draws are asked for. */
  getReady(text: string, horse: number): void {
    roadFor(text, horse);
  },
  /** Half of the draws of an answer that is worked out elsewhere. Refused when a newer request has come in: nobody waits for it then. */
  async draws(
    text: string,
    horse: number,
    settingId: string | undefined,
    from: number,
    to: number,
  ): Promise<DrawTable> {
    newestDraws += 1;
    const mine = newestDraws;
    const slices: DrawTable[] = [];
    for (const slice of drawsElsewhere(roadFor(text, horse), SEED, settingId, from, to)) {
      slices.push(slice);
      await breathe();
      if (mine !== newestDraws) throw new Error("these draws are no longer wanted");
    }
    return joined(slices);
  },
  /** Heads moved by these changes of spread, each with the whole tree and its fit. */
  sweep(text: string, horse: number, changesMm: readonly number[]): (SweepPoint | undefined)[] {
    return changesMm.map((changeMm) => headsOf(text, horse).at(changeMm));
  },
  /** Fingerprints of every figure, to hold one engine against another. */
  figures: figuresOf,
};

export type Bench = typeof bench;

expose(bench);
