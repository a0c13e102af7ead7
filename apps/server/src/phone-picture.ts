/** What one step shows on a phone: where one is, the rows that are seen there, and the one to press. */
export interface PhoneStep {
  readonly where: string;
  readonly rows: readonly string[];
  /** Which row is pressed, counted from 0. */
  readonly press: number;
}

/** Sizes of the drawing, in its own units. */
const WIDE = 180;
const TOP = 44;
const ROW = 34;

const escaped = (words: string): string => words.replaceAll("&", "&amp;").replaceAll("<", "&lt;");

/** A step as a plain line drawing of a phone: the row to press is framed and has an arrow. No phone looks quite like it. says: it in words. */
export function phonePicture({ where, rows, press }: PhoneStep, says: string): string {
  const high = TOP + rows.length * ROW + 24;
  const drawn = rows.map((words, at) => {
    const y = TOP + at * ROW;
    const frame = at === press ? ' stroke-width="3"' : ' stroke-width="1" stroke-dasharray="2 3"';
    return `<rect x="14" y="${y + 3}" width="${WIDE - 28}" height="${ROW - 6}"${frame}/>
<text x="22" y="${y + 22}" fill="currentColor" stroke="none">${escaped(words)}</text>`;
  });
  const middle = TOP + press * ROW + ROW / 2;
  return `<svg width="${WIDE + 40}" viewBox="0 0 ${WIDE + 40} ${high}" role="img" aria-label="${escaped(says)}" fill="none" stroke="currentColor" font-family="sans-serif" font-size="13">
<rect x="2" y="2" width="${WIDE - 4}" height="${high - 4}" rx="18" stroke-width="2"/>
<text x="${WIDE / 2}" y="28" text-anchor="middle" fill="currentColor" stroke="none" font-weight="bold">${escaped(where)}</text>
${drawn.join("\n")}
<path d="M${WIDE + 36} ${middle}H${WIDE - 6}m9 -6l-9 6l9 6" stroke-width="2"/>
</svg>`;
}
