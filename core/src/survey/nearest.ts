/** Words longer than this are not compared. */
const LONGEST = 40;

/** Fewest letters to add, drop or change from one word to the other. published: Levenshtein 1966. */
function letters(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const change = (row[j - 1] ?? 0) + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(change, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[to.length] ?? 0;
}

/** The known word nearest to a mistyped one, when near enough to be meant: less than half its letters differ. */
export function nearest(typed: string, known: readonly string[]): string | undefined {
  if (typed.length > LONGEST) return undefined;
  const lower = typed.toLowerCase();
  const ranked = known
    .map((word) => ({ word, apart: letters(lower, word.toLowerCase()) }))
    .sort((a, b) => a.apart - b.apart);
  const best = ranked[0];
  return best && best.apart * 2 < Math.max(typed.length, best.word.length) ? best.word : undefined;
}
