import { usePixel } from "../drawing/unit.ts";

/** The steel rule under the slider: every mm a line, every fifth a longer one, every tenth with its figure. */
export function SteelRule({ mostMm }: { mostMm: number }) {
  const { ref, pixel } = usePixel(2 * mostMm);
  const marks = Array.from({ length: 2 * mostMm + 1 }, (_, index) => index - mostMm);
  const long = (mm: number) => (mm % 10 === 0 ? 20 : mm % 5 === 0 ? 14 : 8) * pixel;
  return (
    <svg
      ref={ref}
      className="steel-rule"
      viewBox={`${-mostMm} 0 ${2 * mostMm} ${44 * pixel}`}
      style={{ "--pixel": pixel } as React.CSSProperties}
      aria-hidden="true"
    >
      {marks.map((mm) => (
        <path key={mm} d={`M${mm} 0v${long(mm)}`} className={mm === 0 ? "pen-2" : "pen-1"} />
      ))}
      {marks
        .filter((mm) => mm % 10 === 0)
        .map((mm) => (
          <text key={mm} x={mm} y={38 * pixel} textAnchor="middle">
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
