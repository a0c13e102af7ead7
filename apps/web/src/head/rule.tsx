/** The steel rule under the slider: every mm a line, every fifth a longer one, every tenth with its figure. */
export function SteelRule({ mostMm }: { mostMm: number }) {
  const marks = Array.from({ length: 2 * mostMm + 1 }, (_, index) => index - mostMm);
  const long = (mm: number) => (mm % 10 === 0 ? 14 : mm % 5 === 0 ? 10 : 6);
  return (
    <svg className="steel-rule" viewBox={`${-mostMm * 10 - 10} 0 ${mostMm * 20 + 20} 34`} aria-hidden="true">
      {marks.map((mm) => (
        <path key={mm} d={`M${mm * 10} 0v${long(mm)}`} className={mm === 0 ? "pen-2" : "pen-1"} />
      ))}
      {marks
        .filter((mm) => mm % 10 === 0)
        .map((mm) => (
          <text key={mm} x={mm * 10} y={31} textAnchor="middle">
            {signed(mm)}
          </text>
        ))}
    </svg>
  );
}

/** +6, 0, -6 with a true minus. */
export function signed(mm: number, digits = 0): string {
  const words = Math.abs(mm).toFixed(digits);
  if (Number(words) === 0) return words;
  return mm > 0 ? `+${words}` : `\u2212${words}`;
}
