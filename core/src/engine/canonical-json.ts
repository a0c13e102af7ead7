/*
 * JSON data in its one canonical text. Published: RFC 8785 (2020): no spaces, keys sorted by UTF-16 code
 * units, numbers in ECMAScript's shortest form, strings escaped only where JSON demands it.
 */

/** Half of a surrogate pair without its other half: not a character, and refused by RFC 8785. */
const LONE_SURROGATE = /\p{Surrogate}/u;

/**
 * The canonical JSON text of `value`. A key whose value is undefined counts as absent. Throws a TypeError
 * that names the place for what JSON cannot hold: NaN, Infinity, undefined in a list, functions, dates and
 * other objects with a class, half a surrogate pair, an object inside itself.
 */
export function canonicalJson(value: unknown): string {
  return written(value, "", []);
}

function written(value: unknown, at: string, around: readonly object[]): string {
  if (value === null || typeof value === "boolean") return String(value);
  if (typeof value === "string") return writtenString(value, at);
  if (typeof value === "number" && Number.isFinite(value)) return JSON.stringify(value);
  if (typeof value !== "object") throw refusal(at, String(value));
  if (around.includes(value)) throw refusal(at, "an object inside itself");
  const inside = [...around, value];
  if (Array.isArray(value)) {
    return `[${Array.from(value, (item: unknown, i) => written(item, `${at}/${i}`, inside)).join(",")}]`;
  }
  return writtenObject(value, at, inside);
}

function writtenObject(value: object, at: string, inside: readonly object[]): string {
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) throw refusal(at, "an object with a class");
  const entries = Object.entries(value).filter(([, item]) => item !== undefined);
  entries.sort(([a], [b]) => (a < b ? -1 : 1));
  const parts = entries.map(
    ([key, item]: [string, unknown]) => `${writtenString(key, at)}:${written(item, `${at}/${key}`, inside)}`,
  );
  return `{${parts.join(",")}}`;
}

function writtenString(text: string, at: string): string {
  if (LONE_SURROGATE.test(text)) throw refusal(at, "half a surrogate pair");
  return JSON.stringify(text);
}

function refusal(at: string, read: string): TypeError {
  return new TypeError(`${at === "" ? "/" : at}: read ${read}, which JSON cannot hold`);
}
