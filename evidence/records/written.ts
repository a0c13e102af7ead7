import { type Entry, sealed } from "@treewright/core/records/entry.ts";
import { endsOf } from "@treewright/core/records/graph.ts";
import { ID_CHANCE_BYTES, uuidV7 } from "@treewright/core/records/id.ts";
import { STATED, TAKEN_BACK } from "@treewright/core/records/kinds.ts";

/** Ids from a number, so that a test's entries are the same in every run. */
export function idOf(n: number, unixMs = 1_900_000_000_000): string {
  const chance = new Uint8Array(ID_CHANCE_BYTES);
  new DataView(chance.buffer).setUint32(6, n);
  return uuidV7(unixMs, chance);
}

export const HORSE = idOf(1);
export const SADDLE = idOf(2);
const AUTHOR = idOf(3);

/** A device of its own clock that writes entries after what it has seen. */
export class Device {
  entries: readonly Entry[] = [];
  private count = 0;
  constructor(
    readonly number: number,
    readonly saidAt = "2031-04-12T09:00:00.000Z",
  ) {}

  write(kind: string, body: Entry["body"], subject = HORSE, version = 1): Entry {
    this.count += 1;
    const own = this.entries.filter((one) => one.subject === subject);
    const entry = sealed({
      id: idOf(this.number * 100_000 + this.count),
      subject,
      kind,
      version,
      author: AUTHOR,
      device: idOf(this.number + 50),
      saidAt: this.saidAt,
      zone: "Europe/London",
      after: [...endsOf(own)],
      body,
    });
    this.entries = [...this.entries, entry];
    return entry;
  }

  state(at: string, value: number | string, subject = HORSE): Entry {
    return this.write(STATED, { at, value }, subject);
  }

  clear(at: string): Entry {
    return this.write(STATED, { at });
  }

  takeBack(...of: readonly Entry[]): Entry {
    return this.write(TAKEN_BACK, { of: of.map(({ hash }) => hash), why: "slip" });
  }
}
