import { proxy } from "comlink";
import { openBench } from "../bench/open-bench.ts";
import { type Answer, CHANGE_MAX_MM, mayBeFitted } from "../road.ts";
import type { Desk, Held } from "./desk.ts";

/** Heads asked for at once: few enough that the next wish never waits long. */
const BATCH = 5;

/** Three workers: one answers, one draws half of its draws, one moves heads. What comes in for an older case is dropped. */
export class Solver {
  readonly #desk: Held<Desk>;
  readonly #answering = openBench();
  readonly #drawing = openBench();
  readonly #moving = openBench();
  #round = 0;
  #busy = false;
  #mayMove = false;

  constructor(desk: Held<Desk>) {
    this.#desk = desk;
  }

  /** A new case, horse or reading: everything is solved again. What stood there stays until the new answer is in. */
  begin(): void {
    this.#round += 1;
    this.#mayMove = false;
    this.#desk.change({ answering: true, failed: undefined });
    void this.#answer(this.#round);
  }

  /** Solves the heads that are still lacking, nearest to the one on the screen first. */
  wanted(): void {
    if (this.#mayMove && !this.#busy) void this.#move();
  }

  async #answer(round: number): Promise<void> {
    const { text, horse } = this.#desk.get();
    // What fails here fails in the answer too, and is told there.
    this.#drawing.getReady(text, horse).catch(() => undefined);
    try {
      await this.#answering.answer(
        text,
        horse,
        proxy((answer) => this.#take(round, answer)),
        proxy((settingId, from, to) => this.#drawing.draws(text, horse, settingId, from, to)),
      );
      if (round !== this.#round) return;
      this.#desk.change({ answering: false });
      this.wanted();
    } catch (error) {
      if (round === this.#round) this.#fail(error);
    }
  }

  /** On a horse flag no head is moved and none is shown. */
  #take(round: number, answer: Answer): void {
    if (round !== this.#round) return;
    const first = !this.#mayMove;
    this.#desk.change(first ? { answer, sweep: new Map() } : { answer });
    const { read, horse } = this.#desk.get();
    this.#mayMove = mayBeFitted(read.survey, horse);
    if (first) this.wanted();
  }

  #fail(error: unknown): void {
    this.#desk.change({ answer: undefined, sweep: new Map(), answering: false, failed: String(error) });
  }

  async #move(): Promise<void> {
    this.#busy = true;
    try {
      for (let wish = this.#lacking(); this.#mayMove && wish.length > 0; wish = this.#lacking()) {
        const round = this.#round;
        const { text, horse } = this.#desk.get();
        const points = await this.#moving.sweep(text, horse, wish);
        if (round !== this.#round) continue;
        const sweep = new Map(this.#desk.get().sweep);
        for (const [index, changeMm] of wish.entries()) sweep.set(changeMm, points[index]);
        this.#desk.change({ sweep });
      }
    } catch (error) {
      this.#fail(error);
    } finally {
      this.#busy = false;
    }
  }

  /** Today's head, then the one on the screen, then outward from it – those once the answer stands, which they would hold up. */
  #lacking(): number[] {
    const { changeMm, sweep, answering } = this.#desk.get();
    const all = [0, changeMm];
    const steps = answering ? 0 : 2 * CHANGE_MAX_MM;
    for (let step = 1; step <= steps; step += 1) {
      for (const way of [1, -1]) {
        const next = Math.round(changeMm) + way * step;
        if (Math.abs(next) <= CHANGE_MAX_MM) all.push(next);
      }
    }
    return [...new Set(all)].filter((one) => !sweep.has(one)).slice(0, sweep.size === 0 ? 2 : BATCH);
  }
}
