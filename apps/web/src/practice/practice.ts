import { Held as Holder } from "../desk/desk.ts";
import { Actions } from "../help/actions.ts";
import {
  type Batch,
  caseAsStatements,
  type Entry,
  erasing,
  GRAPH_KINDS,
  type Held,
  type KeptPhoto,
  LASTING,
  NotKept,
  OF_VISIT,
  type Photo,
  type Statement,
  type Store,
  standingOf,
  type VisitDraft,
  visitDraft,
} from "../records.ts";
import { cardOf, type ListedVisit, listed, VISIT, withVisit } from "./card.ts";
import { noteErased } from "./erased-photos.ts";
import { type Machine, newId } from "./machine.ts";
import { jsonIn } from "./noted.ts";
import { Pen, type Writer } from "./pen.ts";
import { revealFrom } from "./reveal.ts";

/** What every screen shows of the practice. */
export interface Shown {
  readonly visits: readonly ListedVisit[];
  /** Moment of the last copy elsewhere, in UTC; undefined where there was none. */
  readonly copiedAt: string | undefined;
  /** Visits that were written to since then. */
  readonly notCopied: number;
  /** Moment at which the first of them was written to, in UTC; undefined where that was not noted. */
  readonly waitsSince: string | undefined;
  /** Why the last thing could not be kept. */
  readonly trouble: "full" | "newer" | "closed" | "other" | undefined;
}

const COPIED = "copied-at";
const WRITTEN = "written-since-copy";
const WAITS = "waits-since";

/** One practice on one device: its store, its pen, and what all screens show of it. Commits first, and changes what is shown after. */
export class Practice {
  readonly shown: Holder<Shown>;
  readonly pen: Pen;
  private waiting: Promise<unknown> = Promise.resolve();

  private constructor(
    readonly store: Store,
    readonly machine: Machine,
    writer: Writer,
    readonly actions: Actions,
    private people: readonly Held[],
    shown: Shown,
  ) {
    this.pen = new Pen(machine, writer);
    this.shown = new Holder(shown);
  }

  static async open(store: Store, machine: Machine): Promise<Practice> {
    const writer = {
      author: await ownId(store, machine, "author"),
      device: await ownId(store, machine, "device"),
    };
    const people = await store.people();
    const visits = (await store.cards(VISIT)).map(listed);
    const copiedAt = await store.noted(COPIED);
    const written = await writtenSince(store);
    const waitsSince = (await store.noted(WAITS)) || (written.size > 0 ? copiedAt : undefined);
    const actions = await Actions.open(store, machine);
    return new Practice(store, machine, writer, actions, people, {
      visits,
      copiedAt,
      notCopied: written.size,
      waitsSince,
      trouble: undefined,
    });
  }

  readonly reveal = (value: unknown): string | undefined => revealFrom(() => this.people, value);

  /**
   * One after the other: two written at once would not have seen each other, and people would be asked to decide between them;
   * and a copy made meanwhile would miss what is on its way to the disk.
   */
  inTurn<Done>(act: () => Promise<Done>): Promise<Done> {
    const done = this.waiting.then(act);
    this.waiting = done.catch(() => undefined);
    return done;
  }

  /** Says these things of a visit, known and new, and keeps the visit's line beside them. All or nothing. */
  async say(
    subject: string,
    known: readonly Entry[],
    statements: readonly Statement[],
  ): Promise<readonly Entry[]> {
    const { entries, people } = this.pen.state(subject, known, statements, this.people);
    await this.keep(subject, [...known, ...entries], entries, people);
    return entries;
  }

  /** Keeps a photo; what is to be noted of it is noted before. Why it could not be kept stands in the line at the top. */
  async keepPhoto(photo: KeptPhoto, noteBefore: () => Promise<void>): Promise<void> {
    await this.orTrouble(async () => {
      await noteBefore();
      await this.store.keepPhoto(photo);
    });
  }

  /** Takes a photo from the store for good, and says so at its place. What is erased is not taken in again with an older copy. */
  async erasePhoto(subject: string, known: readonly Entry[], photo: Photo): Promise<readonly Entry[]> {
    const { entries } = this.pen.state(subject, known, [erasing(photo)], this.people);
    await noteErased(this.store, [photo.hash]);
    const into = (batch: Batch) => this.store.erasePhoto(photo.hash, batch);
    await this.keep(subject, [...known, ...entries], entries, [], into);
    this.actions.add("erased", "a photo");
    return entries;
  }

  async takeBack(subject: string, known: readonly Entry[], of: readonly Entry[], why: string) {
    const entries = this.pen.takeBack(subject, known, of, why);
    await this.keep(subject, [...known, ...entries], entries, []);
    for (const { body } of of) this.actions.add("took back", String(body.at));
    return entries;
  }

  /** A new visit; its subject is returned once it is kept. */
  async begin(statements: readonly Statement[]): Promise<string> {
    const subject = newId(this.machine);
    const begun = { at: OF_VISIT.begun, value: new Date(this.machine.now()).toISOString() };
    await this.inTurn(() => this.say(subject, [], [begun, ...statements]));
    return subject;
  }

  /** The next visit of the horse of an earlier one: it begins with what hardly changes, brought over, and looked at again all the same. */
  async beginNext(last: string, day: string): Promise<string> {
    const { file, ofVisit } = this.draftOf(await this.store.entriesOf(last));
    const horse = ofVisit.get(OF_VISIT.horse) ?? last;
    const saddle = ofVisit.get(OF_VISIT.saddle) ?? last;
    return this.begin([
      ...caseAsStatements(file).filter(({ at }) => LASTING.test(at) || at === "invented"),
      { at: "visit.date", value: day },
      { at: OF_VISIT.horse, value: horse },
      { at: OF_VISIT.saddle, value: saddle },
      { at: OF_VISIT.last, value: last },
    ]);
  }

  draftOf(entries: readonly Entry[]): VisitDraft {
    const day = new Date(this.machine.now()).toISOString().slice(0, 10);
    return visitDraft(standingOf(entries, GRAPH_KINDS), this.reveal, day);
  }

  /** The visit that one was begun from. */
  visitBefore({ last }: ListedVisit): ListedVisit | undefined {
    return this.shown.get().visits.find(({ subject }) => subject === last);
  }

  /** Names that the store of people holds, each with whose it is. */
  names(): readonly Held[] {
    return this.people;
  }

  /** Takes everything of one person from the store. No entry changes; visits say that a name was erased. */
  async erase(person: string): Promise<void> {
    const fields = this.people.filter((one) => one.person === person).map(({ field }) => field);
    const entries = this.pen.erased(person, await this.store.entriesOf(person), fields);
    await this.store.erase(person, fields, { entries });
    this.actions.add("erased", "a person");
    await this.heard();
  }

  async copied(): Promise<void> {
    const copiedAt = new Date(this.machine.now()).toISOString();
    await this.store.note(COPIED, copiedAt);
    await this.store.note(WRITTEN, "[]");
    await this.store.note(WAITS, "");
    this.actions.add("copied", "everything");
    this.shown.change({ copiedAt, notCopied: 0, waitsSince: undefined });
  }

  /** Entries that came from elsewhere: another tab, or a file. */
  async heard(): Promise<void> {
    this.people = await this.store.people();
    this.shown.change({ visits: (await this.store.cards(VISIT)).map(listed) });
  }

  /** A file was brought in beside the page. */
  async heardOfFile(): Promise<void> {
    await this.heard();
    this.actions.add("brought in", "a file");
  }

  private async orTrouble(act: () => Promise<void>): Promise<void> {
    try {
      await act();
    } catch (error) {
      const trouble = error instanceof NotKept ? error.why : "other";
      this.actions.add("not kept", trouble);
      this.shown.change({ trouble });
      throw error;
    }
  }

  private async keep(
    subject: string,
    all: readonly Entry[],
    entries: readonly Entry[],
    people: readonly Held[],
    into = (batch: Batch) => this.store.keep(batch),
  ) {
    const everyone = [...this.people, ...people];
    const card = cardOf(subject, all, (value) => revealFrom(() => everyone, value), this.machine);
    await this.orTrouble(() => into({ entries, people, cards: [card] }));
    this.people = everyone;
    const written = (await writtenSince(this.store)).add(subject);
    await this.store.note(WRITTEN, JSON.stringify([...written]));
    const waitsSince = this.shown.get().waitsSince ?? new Date(this.machine.now()).toISOString();
    await this.store.note(WAITS, waitsSince);
    this.shown.change({
      visits: withVisit(this.shown.get().visits, listed(card)),
      notCopied: written.size,
      waitsSince,
      trouble: undefined,
    });
  }
}

async function ownId(store: Store, machine: Machine, name: string): Promise<string> {
  const before = await store.noted(name);
  if (before !== undefined) return before;
  const id = newId(machine);
  await store.note(name, id);
  return id;
}

async function writtenSince(store: Store): Promise<Set<string>> {
  const written = jsonIn(await store.noted(WRITTEN));
  return new Set(Array.isArray(written) ? written.map(String) : []);
}
