import { escaped } from "../../engine/drawing/svg.ts";

/** Signs that turn the direction of what follows (Unicode, UAX 9): a name needs none, and one could make a line read backwards. */
const TURNS = /[\u202a-\u202e\u2066-\u2069]/g;

/**
 * What somebody typed, as a piece of HTML that can be nothing but text: escaped, its direction kept to itself, and a sign that turns
 * it told instead of obeyed.
 */
export function said(text: string): string {
  const told = text.replace(TURNS, (sign) => `[U+${sign.charCodeAt(0).toString(16).toUpperCase()}]`);
  return `<bdi>${escaped(told)}</bdi>`;
}

/** Words of the program itself. */
export const words = escaped;
