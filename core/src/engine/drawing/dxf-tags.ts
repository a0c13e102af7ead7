/** One group of a DXF file: its code, and its value as it is written. */
export type Tag = readonly [code: number, value: string | number];

/** A thousandth of a micrometre; no machine is finer. */
const FINEST = 1e6;

/** Groups as text: code and value on lines of their own. Throws RangeError for a number that is none. */
export function tagsAsText(tags: readonly Tag[]): string {
  return tags
    .map(([code, value]) => `${String(code).padStart(3)}\r\n${valueAsText(code, value)}\r\n`)
    .join("");
}

function valueAsText(code: number, value: string | number): string {
  if (typeof value === "string") return value;
  if (!Number.isFinite(value)) throw new RangeError(`a drawing holds a length that is no number: ${value}`);
  // Codes 60 to 99, 170 and up, and 280 are whole numbers; the others used here are lengths, with their point.
  if (Number.isInteger(value) && !(code >= 10 && code < 60)) return String(value);
  const rounded = Math.round(value * FINEST) / FINEST + 0;
  return Number.isInteger(rounded) ? `${rounded}.0` : String(rounded);
}

/** Handles are whole numbers in hexadecimal, each once in a file. */
export class Handles {
  private last = 0;

  next(): string {
    this.last += 1;
    return asHandle(this.last);
  }

  /** The first one that is free. */
  get free(): string {
    return asHandle(this.last + 1);
  }
}

const asHandle = (number: number): string => number.toString(16).toUpperCase();

/**
 * Words as a DXF file of this version holds them: plain ASCII, others by their number; a sign that would begin a code
 * (backslash, caret, two per cent) is written so that it is read as itself.
 */
export function dxfWords(said: string): string {
  let written = "";
  for (let i = 0; i < said.length; i++) {
    const code = said.charCodeAt(i);
    const sign = said[i] ?? "";
    if (code < 0x20) written += " ";
    else if (code > 0x7e || sign === "\\")
      written += `\\U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
    else if (sign === "^") written += "^ ";
    else written += sign === "%" && said[i + 1] === "%" ? "% " : sign;
  }
  return written;
}
