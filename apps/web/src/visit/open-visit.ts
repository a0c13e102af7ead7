import { Held as Holder } from "../desk/desk.ts";
import type { ListedVisit } from "../practice/card.ts";
import { newId } from "../practice/machine.ts";
import { jsonIn } from "../practice/noted.ts";
import type { Practice } from "../practice/practice.ts";
import {
  answerAsStatements,
  citing,
  clearingStatements,
  counting,
  type Entry,
  erasedPhotoOf,
  GRAPH_KINDS,
  graphOf,
  type KeptPhoto,
  merged,
  OF_VISIT,
  type Photo,
  photosOf,
  type Signature,
  STATED,
  type Statement,
  type VisitDraft,
} from "../records.ts";
import { type Problem, sha256Hex, type UnitsChosen, withUnitBeside } from "../road.ts";

/** What the screens of one visit show. */
export interface VisitShown {
  readonly entries: readonly Entry[];
  readonly draft: VisitDraft;
  /** The visit of the same horse before this one. */
  readonly before: VisitDraft | undefined;
}

/** What the app says by itself once the answers are worked out: a hand has nothing to take back there. */
const BY_ITSELF: readonly unknown[] = [
  OF_VISIT.horseAnswer,
  OF_VISIT.saddleAnswer,
  OF_VISIT.workAnswer,
  OF_VISIT.nextReading,
];

/** One visit that lies open: what was said of it, and the only hand that says more. */
export class OpenVisit {
  readonly shown: Holder<VisitShown>;
  private constructor(
    readonly practice: Practice,
    readonly subject: string,
    entries: readonly Entry[],
    before: VisitDraft | undefined,
  ) {
    this.shown = new Holder({ entries, draft: practice.draftOf(entries), before });
  }

  static async open(practice: Practice, subject: string): Promise<OpenVisit | undefined> {
    const entries = await practice.store.entriesOf(subject);
    if (entries.length === 0) return undefined;
    const line = practice.shown.get().visits.find((one) => one.subject === subject);
    const last = line && practice.visitBefore(line);
    const before = last && practice.draftOf(await practice.store.entriesOf(last.subject));
    const opened = new OpenVisit(practice, subject, entries, before);
    await opened.takePhotoOnItsWay();
    return opened;
  }

  /** Takes what was typed at a question, a bare number in the unit beside it; what is refused is returned, and nothing was kept. */
  answer(path: string, typed: string, units: UnitsChosen): Promise<Problem | undefined> {
    return this.practice.inTurn(async () => {
      const { file } = this.shown.get().draft;
      const answered = answerAsStatements(file, path, withUnitBeside(file, path, typed, units));
      if (!answered.ok) {
        this.practice.actions.add("refused", path);
        return answered.problem;
      }
      await this.write(answered.statements);
      return undefined;
    });
  }

  say(statements: readonly Statement[]): Promise<void> {
    return this.practice.inTurn(() => this.write(statements));
  }

  /**
   * Keeps a photo and then says what it shows. What was on its way is noted first: where the page is killed between the two, the
   * photo is safe, and is cited when the visit is opened again.
   */
  keepPhoto(photo: KeptPhoto, of: string): Promise<void> {
    return this.practice.inTurn(async () => {
      const cites = citing(photo, of);
      await this.practice.keepPhoto(photo, () => this.noteOnItsWay(JSON.stringify(cites)));
      await this.write([cites]);
      await this.noteOnItsWay("");
    });
  }

  /** Takes a photo from this device for good. */
  erasePhoto(photo: Photo): Promise<void> {
    return this.practice.inTurn(async () => {
      const { entries } = this.shown.get();
      this.show(entries, await this.practice.erasePhoto(this.subject, entries, photo));
    });
  }

  private noteOnItsWay(text: string): Promise<void> {
    return this.practice.store.note(`photo on its way ${this.subject}`, text);
  }

  private async takePhotoOnItsWay(): Promise<void> {
    const noted = await this.practice.store.noted(`photo on its way ${this.subject}`);
    if (!noted) return;
    const { at, value } = (jsonIn(noted) ?? {}) as Partial<Statement>;
    const [photo] = at === undefined ? [] : photosOf(new Map([[at, value]]));
    const isCited = at !== undefined && this.shown.get().draft.ofVisit.has(at);
    if (photo && !isCited && (await this.practice.store.photo(photo.hash)))
      await this.say([citing(photo, photo.of)]);
    await this.noteOnItsWay("");
  }

  private async write(statements: readonly Statement[]): Promise<void> {
    if (statements.length === 0) return;
    const { entries } = this.shown.get();
    this.show(entries, await this.practice.say(this.subject, entries, statements));
    for (const { at, value } of statements)
      this.practice.actions.add(value === undefined ? "cleared" : "entered", at);
  }

  /** Signs the text as it is shown now. What was signed is the signer's own: erased with the name of who signed. */
  sign(signature: Omit<Signature, "over">, text: string): Promise<void> {
    const person =
      this.practice.names().find(({ field, value }) => field === "owner" && value === signature.by)?.person ??
      newId(this.practice.machine);
    const over = sha256Hex(new TextEncoder().encode(text));
    return this.say([
      { at: OF_VISIT.agreedText, value: text, person },
      { at: OF_VISIT.signature, value: JSON.stringify({ over, ...signature }), person },
    ]);
  }

  clear(path: string): Promise<void> {
    return this.say(clearingStatements(this.shown.get().draft.file, path));
  }

  /**
   * What undo would take back: the last that was said, with what was said at the same moment; never that the visit was begun, nor what
   * was said of a photo that is erased: no undo brings it back.
   */
  last(): readonly Entry[] {
    const graph = graphOf(this.shown.get().entries);
    const counts = counting(graph, GRAPH_KINDS);
    const gone = graph.entries.flatMap(({ body }) => (erasedPhotoOf(body) ? [body.at] : []));
    const standing = graph.entries.filter(
      ({ kind, body }, at) =>
        counts[at] && kind === STATED && !BY_ITSELF.includes(body.at) && !gone.includes(body.at),
    );
    const last = standing.at(-1);
    const together = standing.filter((one) => one.saidAt === last?.saidAt && one.device === last.device);
    return together.some(({ body }) => body.at === OF_VISIT.begun) ? [] : together;
  }

  undo(): Promise<void> {
    return this.practice.inTurn(async () => {
      const of = this.last();
      if (of.length === 0) return;
      const { entries } = this.shown.get();
      this.show(entries, await this.practice.takeBack(this.subject, entries, of, "undo"));
    });
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
    // Entries are only ever added. Nothing new, nothing to show: else two tabs would tell each other for ever.
    if (entries.length === this.shown.get().entries.length) return;
    this.shown.change({ entries, draft: this.practice.draftOf(entries) });
  }
}
