/** A case file of some version, before its schema has been checked. */
export type RawCase = { readonly [name: string]: unknown };

export interface Migration {
  readonly from: number;
  readonly to: number;
  readonly change: (file: RawCase) => RawCase;
}

const isGroup = (value: unknown): value is RawCase =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/**
 * Version 1 knew one horse (`horse`) and kept the warranty beside the saddle's name (`saddle.warranty`).
 * Version 2 keeps one to eight horses, and the warranty with the rest of the saddle's standing.
 */
function oneToTwo(file: RawCase): RawCase {
  const { horse, saddle, ...rest } = file;
  const horses = horse === undefined ? {} : { horses: [horse] };
  return { ...rest, ...horses, saddle: isGroup(saddle) ? warrantyMoved(saddle) : saddle };
}

function warrantyMoved({ warranty, ...saddle }: RawCase): RawCase {
  if (warranty === undefined) return saddle;
  const standing = isGroup(saddle.standing) ? saddle.standing : {};
  return { ...saddle, standing: { ...standing, inWarranty: warranty } };
}

/**
 * Version 2 knew springs only as the head's metal (`saddle.build.metal`), so a tree with plates and springs could not be
 * told. Version 3 asks for springs by themselves; what metal the head of such an old file has is not known. And whether
 * inserts are locked home, asked with the plates before, is asked with the inserts.
 */
function twoToThree(file: RawCase): RawCase {
  return isGroup(file.saddle) ? { ...file, saddle: insertsHome(springsByThemselves(file.saddle)) } : file;
}

function springsByThemselves(saddle: RawCase): RawCase {
  if (!isGroup(saddle.build) || saddle.build.metal !== "springs") return saddle;
  return { ...saddle, build: { ...saddle.build, metal: "unknown", springs: "along-rails" } };
}

function insertsHome(saddle: RawCase): RawCase {
  if (!isGroup(saddle.build) || saddle.build.exchange !== "insert" || !isGroup(saddle.looked)) return saddle;
  const { plateHome, ...looked } = saddle.looked;
  return plateHome === undefined ? saddle : { ...saddle, looked, inserts: { lockHome: plateHome } };
}

/** Every step from the oldest version to the current one. `checkChain` proves that none is missing. */
export const MIGRATIONS: readonly Migration[] = [
  { from: 1, to: 2, change: oneToTwo },
  { from: 2, to: 3, change: twoToThree },
];

/** The first gap or fork of a chain of migrations that should end at `current`, in words; undefined when there is none. */
export function faultInChain(chain: readonly Migration[], current: number): string | undefined {
  const wrong = chain.find(
    (step, at) => step.to !== step.from + 1 || (at > 0 && step.from !== chain[at - 1]?.to),
  );
  if (wrong) return `the step from ${wrong.from} to ${wrong.to} does not follow the one before it`;
  const last = chain[chain.length - 1]?.to;
  return last === current ? undefined : `the last step ends at ${last}, the current version is ${current}`;
}

export const oldestRead = (chain: readonly Migration[], current: number): number => chain[0]?.from ?? current;

export function migrate(file: RawCase, version: number): RawCase {
  const changed = MIGRATIONS.filter((step) => step.from >= version).reduce(
    (at, step) => step.change(at),
    file,
  );
  const current = MIGRATIONS[MIGRATIONS.length - 1]?.to ?? version;
  return { ...changed, version: current };
}
