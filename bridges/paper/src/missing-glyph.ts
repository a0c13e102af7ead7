/** A character that none of the fonts of its face has. Paper with a hole in it is not printed. */
export class MissingGlyph extends Error {
  readonly character: string;
  readonly face: string;
  /** The words in which it stands. */
  readonly words: string;
  /** Where it stands: page from 1 and name of the part; undefined while words are only measured. */
  readonly where: { readonly page: number; readonly part: string } | undefined;

  constructor(
    character: string,
    face: string,
    words: string,
    where?: { readonly page: number; readonly part: string },
  ) {
    const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0");
    const place = where ? ` (page ${where.page}, ${where.part})` : "";
    super(`the font for ${face} has no sign for "${character}" (U+${code}) in "${words}"${place}`);
    this.name = "MissingGlyph";
    this.character = character;
    this.face = face;
    this.words = words;
    this.where = where;
  }
}
