import { Held as Holder } from "../desk/desk.ts";
import type { ListedVisit, Practice } from "../practice/practice.ts";
import {
  answerAsStatements,
  counting,
  type Entry,
  GRAPH_KINDS,
  graphOf,
  merged,
  type Statement,
  standingOf,
  type VisitDraft,
  visitDraft,
} from "../records.ts";
import type { Problem } from "../road.ts";

/** What the screens of one visit show. */
export interface VisitShown {
  readonly entries: readonly Entry[];
  readonly draft: VisitDraft;
}

/** One visit that lies open: what was said of it, and the only hand that says more. */
export class OpenVisit {
  readonly shown: Holder<VisitShown>;

  private constructor(
    readonly practice: Practice,
    readonly subject: string,
    entries: readonly Entry[],
  ) {
    this.shown = new Holder({ entries, draft: this.draftOf(entries) });
  }

  static async open(practice: Practice, subject: string): Promise<OpenVisit | undefined> {
    const entries = await practice.store.entriesOf(subject);
    return entries.length === 0 ? undefined : new OpenVisit(practice, subject, entries);
  }

  /** Takes what was typed at a question; what is refused is returned, and nothing was kept. */
  async answer(path: string, typed: string): Promise<Problem | undefined> {
    const answered = answerAsStatements(this.shown.get().draft.file, path, typed);
    if (!answered.ok) return answered.problem;
    await this.say(answered.statements);
    return undefined;
  }

  async say(statements: readonly Statement[]): Promise<void> {
    if (statements.length === 0) return;
    const { entries } = this.shown.get();
    this.show(entries, await this.practice.say(this.subject, entries, statements));
  }

  clear(path: string): Promise<void> {
    return this.say([{ at: path }]);
  }

  /** What undo would take back: the last that this device said, with what it said at the same moment. */
  last(): readonly Entry[] {
    const graph = graphOf(this.shown.get().entries);
    const counts = counting(graph, GRAPH_KINDS);
    const standing = graph.entries.filter((entry, at) => counts[at] && entry.kind === "stated");
    const last = standing.at(-1);
    return standing.filter((one) => one.saidAt === last?.saidAt && one.device === last.device);
  }

  async undo(): Promise<void> {
    const of = this.last();
    if (of.length === 0) return;
    const { entries } = this.shown.get();
    this.show(entries, await this.practice.takeBack(this.subject, entries, of, "undo"));
  }

  /** Another tab may have written. */
  async heard(): Promise<void> {
    this.show(this.shown.get().entries, await this.practice.store.entriesOf(this.subject));
  }

  line(): ListedVisit | undefined {
    return this.practice.shown.get().visits.find(({ subject }) => subject === this.subject);
  }

  private show(known: readonly Entry[], more: readonly Entry[]): void {
    const entries = merged(known, more);
    this.shown.change({ entries, draft: this.draftOf(entries) });
  }

  private draftOf(entries: readonly Entry[]): VisitDraft {
    const day = new Date(this.practice.machine.now()).toISOString().slice(0, 10);
    return visitDraft(standingOf(entries, GRAPH_KINDS), this.practice.reveal, day);
  }
}
