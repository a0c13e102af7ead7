/** What a note of this device holds; undefined where there is none, or where it is damaged: that costs the note, and never the screen. */
export function jsonIn(noted: string | undefined): unknown {
  try {
    return noted ? JSON.parse(noted) : undefined;
  } catch {
    return undefined;
  }
}
