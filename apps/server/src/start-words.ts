import { parseArgs } from "node:util";

/** A name by which phones of this network find this machine: `round.local`, `desk.example`. */
const NAME = /^[a-z0-9]([a-z0-9-]*[a-z0-9])?(\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)+$/;

export interface StartWords {
  readonly name: string | undefined;
  readonly fresh: boolean;
}

/** `npm start -- --name NAME --fresh`. Ends with a sentence where a word is not known. */
export function readWords(words: readonly string[]): StartWords {
  const { values } = parseArgs({
    args: [...words],
    options: { name: { type: "string" }, fresh: { type: "boolean" } },
    strict: true,
  });
  const name = values.name?.toLowerCase();
  if (name !== undefined && !NAME.test(name))
    throw new Error(`--name: read "${values.name}"; allowed is a name with a dot, such as round.local`);
  return { name, fresh: values.fresh ?? false };
}
