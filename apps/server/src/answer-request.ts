import { typeOf } from "./headers.ts";
import type { Shelf } from "./shelf.ts";

export interface Given {
  readonly status: number;
  readonly type: string;
  readonly body: Buffer;
  /** A file whose name carries the hash of its content may be kept for good. */
  readonly keep: boolean;
}

const plain = (status: number, words: string): Given => ({
  status,
  type: "text/plain; charset=utf-8",
  body: Buffer.from(`${words}\n`),
  keep: false,
});

/** The path of a request line, decoded once; undefined when it cannot be read. */
export function pathOf(target: string): string | undefined {
  const end = target.search(/[?#]/);
  const raw = end < 0 ? target : target.slice(0, end);
  if (!raw.startsWith("/")) return undefined;
  try {
    return decodeURIComponent(raw).slice(1);
  } catch {
    return undefined;
  }
}

/** What lies under a path: the page, the invented cases under `examples/`, their list under `examples/`. */
export async function give(target: string, page: Shelf, examples: Shelf): Promise<Given> {
  const path = pathOf(target);
  if (path === undefined) return plain(400, "This address cannot be read.");
  if (path === "examples/") return listOf(await cases(examples));
  const wanted = path === "" ? "index.html" : path;
  const type = typeOf(wanted);
  const body = type === undefined ? undefined : await find(wanted, page, examples);
  if (type === undefined || body === undefined) return plain(404, "There is nothing at this address.");
  return { status: 200, type, body, keep: wanted.startsWith("assets/") };
}

const cases = async (examples: Shelf) => (await examples.names()).filter((name) => name.endsWith(".json"));

function listOf(names: string[]): Given {
  return {
    status: 200,
    type: "application/json; charset=utf-8",
    body: Buffer.from(JSON.stringify(names)),
    keep: false,
  };
}

function find(path: string, page: Shelf, examples: Shelf): Promise<Buffer | undefined> {
  if (!path.startsWith("examples/")) return page.take(path);
  return path.endsWith(".json") ? examples.take(path.slice("examples/".length)) : Promise.resolve(undefined);
}
