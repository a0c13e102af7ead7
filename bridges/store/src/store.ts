import type { Entry } from "@treewright/core/records/entry.ts";
import type { Held } from "@treewright/core/records/personal.ts";
import type { Photo } from "@treewright/core/records/records-file.ts";

/** By what a subject is found without reading its entries: made from them, never the only place of anything. */
export interface Card {
  readonly subject: string;
  /** What kind of subject it is, in the caller's words. */
  readonly sort: string;
  /** Sorts the cards of one sort. */
  readonly rank: string;
  readonly line: Readonly<Record<string, unknown>>;
}

/** What is kept together or not at all. */
export interface Batch {
  readonly entries: readonly Entry[];
  readonly people?: readonly Held[];
  readonly cards?: readonly Card[];
}

export interface KeptPhoto extends Photo {
  readonly content: Uint8Array;
}

/** Why something was not kept. Nothing of it was. */
export class NotKept extends Error {
  constructor(
    readonly why: "full" | "newer" | "closed" | "other",
    says: string,
  ) {
    super(says);
  }
}

/**
 * Where entries, people and photos lie. One contract (`evidence/store`) holds for every way of keeping them. Nothing is ever
 * changed in place but cards and notes, and nothing is taken away but what is erased: of a person, or a photo.
 */
export interface Store {
  /** All or nothing, on the disk when it resolves. What is already here is kept once. Throws `NotKept`. */
  keep(batch: Batch): Promise<void>;
  /** The entries of one subject, in no order. */
  entriesOf(subject: string): Promise<readonly Entry[]>;
  /** Every entry in pieces, in the order of their hashes: so that nobody needs them all in memory. */
  everyEntry(): AsyncGenerator<readonly Entry[]>;
  cards(sort: string): Promise<readonly Card[]>;
  people(): Promise<readonly Held[]>;
  /** Takes these fields of one person from the store, and keeps the batch that says so, in one. */
  erase(person: string, fields: readonly string[], batch: Batch): Promise<void>;
  /** On the disk and read back before it resolves. Throws `NotKept`. */
  keepPhoto(photo: KeptPhoto): Promise<void>;
  /** Takes the bytes of one photo from the store, and keeps the batch that says so, in one. */
  erasePhoto(hash: string, batch: Batch): Promise<void>;
  photo(hash: string): Promise<KeptPhoto | undefined>;
  photos(): Promise<readonly Photo[]>;
  /** What only this device needs to know, such as when it was last copied. */
  note(name: string, value: string): Promise<void>;
  noted(name: string): Promise<string | undefined>;
  /** How many there are, without reading them. */
  count(): Promise<{ readonly entries: number; readonly photos: number }>;
  close(): void;
}
