import {
  committed,
  type Entry,
  ERASED,
  endsOf,
  type Held,
  isPersonal,
  STATED,
  type Statement,
  sealed,
  TAKEN_BACK,
} from "../records.ts";
import { type Machine, newId, newSalt } from "./machine.ts";

/** Who writes, on what. */
export interface Writer {
  readonly author: string;
  readonly device: string;
}

/** What was written: entries, and what the store of people is to hold. */
export interface Written {
  readonly entries: readonly Entry[];
  readonly people: readonly Held[];
}

/** Writes entries about one subject after those that are known of it. All of one call bear one moment. */
export class Pen {
  constructor(
    private readonly machine: Machine,
    private readonly writer: Writer,
  ) {}

  /** held: what the store of people holds already; the same name in the same field is the same person, so that it is erased everywhere. */
  state(
    subject: string,
    known: readonly Entry[],
    statements: readonly Statement[],
    held: readonly Held[],
  ): Written {
    const people: Held[] = [];
    const bodies = statements.map(({ at, value, person }): Entry["body"] => {
      if (value === undefined) return { at };
      // Nothing is nobody's name.
      if (typeof value !== "string" || value === "" || !isPersonal(at)) return { at, value: plain(value) };
      const field = at.slice(at.lastIndexOf(".") + 1);
      const before = [...held, ...people].find(
        (one) => one.field === field && one.value === value && (person ?? one.person) === one.person,
      );
      const one = before ?? {
        person: person ?? newId(this.machine),
        field,
        salt: newSalt(this.machine),
        value,
      };
      if (before === undefined) people.push(one);
      return { at, value: committed(one) };
    });
    return { entries: this.write(subject, known, STATED, bodies), people };
  }

  takeBack(subject: string, known: readonly Entry[], of: readonly Entry[], why: string): readonly Entry[] {
    return this.write(subject, known, TAKEN_BACK, [{ of: of.map(({ hash }) => hash), why }]);
  }

  /** That fields of a person were erased: what remains of them, in the person's own graph. */
  erased(person: string, known: readonly Entry[], fields: readonly string[]): readonly Entry[] {
    return this.write(person, known, ERASED, [{ person, fields: [...fields] }]);
  }

  private write(subject: string, known: readonly Entry[], kind: string, bodies: readonly Entry["body"][]) {
    const saidAt = new Date(this.machine.now()).toISOString();
    let after = [...endsOf(known)];
    return bodies.map((body) => {
      const { author, device } = this.writer;
      const { zone } = this.machine;
      const id = newId(this.machine);
      const entry = sealed({ id, subject, kind, version: 1, author, device, saidAt, zone, after, body });
      after = [entry.hash];
      return entry;
    });
  }
}

/** A value out of a case, as the JSON that it is. */
const plain = (value: unknown): NonNullable<Entry["body"][string]> => JSON.parse(JSON.stringify(value));
