/** A line was longer than any may be. */
export class LineTooLong extends Error {
  constructor(
    readonly line: number,
    readonly most: number,
  ) {
    super(`line ${line} has more than ${most} letters`);
  }
}

/**
 * The lines of a text in UTF-8 that comes in pieces, without their ends; a text of nothing is one empty line. Throws `LineTooLong` where
 * one has more than `most` letters.
 */
export async function* linesIn(pieces: AsyncIterable<Uint8Array>, most: number): AsyncGenerator<string> {
  const decoder = new TextDecoder();
  let rest = "";
  let line = 0;
  for await (const piece of pieces) {
    const texts = (rest + decoder.decode(piece, { stream: true })).split("\n");
    rest = texts.pop() ?? "";
    for (const text of texts) {
      line += 1;
      if (text.length > most) throw new LineTooLong(line, most);
      yield text.endsWith("\r") ? text.slice(0, -1) : text;
    }
    if (rest.length > most) throw new LineTooLong(line + 1, most);
  }
  const last = rest + decoder.decode();
  if (last !== "" || line === 0) yield last;
}

/** A file's bytes as they are read. Some browsers have no loop over a stream. */
export async function* piecesOf(file: Blob): AsyncGenerator<Uint8Array> {
  const reader = file.stream().getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      yield value;
    }
  } finally {
    await reader.cancel();
  }
}
