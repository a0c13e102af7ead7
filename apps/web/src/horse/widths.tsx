import { useWords } from "../catalogue/use-words.ts";
import { type BackWidth, WIDTH_DEPTHS_MM, widthChange } from "../road.ts";
import type { HorseVisit } from "./horse-visits.ts";

interface Point extends BackWidth {
  readonly day: string;
  /** Id of its visit: two may be of one day. */
  readonly visit: string;
}

const WIDE = 320;
const HIGH = 120;
const MARGIN = 16;
const DAY_MS = 86_400_000;

/** The widths of a back over time, each with its doubt at true scale, and the same figures as a table. */
export function Widths({ visits }: { visits: readonly HorseVisit[] }) {
  const { horse: words } = useWords();
  const all = visits.flatMap(({ line, back }) =>
    (back?.widths ?? []).map((one): Point => ({ ...one, day: line.day, visit: line.subject })),
  );
  if (all.length === 0) return <p>{words.noTrace}</p>;
  return (
    <section aria-labelledby="widths">
      <h2 id="widths">{words.widths}</h2>
      {WIDTH_DEPTHS_MM.map((depthMm) => {
        const points = all.filter((one) => one.depthMm === depthMm).reverse();
        return points.length === 0 ? null : <AtDepth key={depthMm} depthMm={depthMm} points={points} />;
      })}
    </section>
  );
}

function AtDepth({ depthMm, points }: { depthMm: number; points: readonly Point[] }) {
  const { horse: words } = useWords();
  const [before, now] = points.slice(-2);
  const change = before && now ? widthChange(before, now) : undefined;
  return (
    <figure className="widths">
      <figcaption>{words.atDepth(depthMm)}</figcaption>
      {points.length > 1 ? <Chart points={points} /> : null}
      <table>
        <tbody>
          {points.map((one) => (
            <tr key={one.visit}>
              <th scope="row" className="figure">
                {one.day}
              </th>
              <td className="figure">{words.width(Math.round(one.widthMm), Math.round(one.uMm))}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {change ? <p>{words.changed[change.is](Math.abs(Math.round(change.byMm)))}</p> : null}
    </figure>
  );
}

function Chart({ points }: { points: readonly Point[] }) {
  const days = points.map(({ day }) => Date.parse(day) / DAY_MS);
  const [first, last] = [Math.min(...days), Math.max(...days)];
  const lowest = Math.min(...points.map(({ widthMm, uMm }) => widthMm - uMm));
  const highest = Math.max(...points.map(({ widthMm, uMm }) => widthMm + uMm));
  const x = (at: number) =>
    MARGIN + ((WIDE - 2 * MARGIN) * ((days[at] ?? first) - first)) / Math.max(1, last - first);
  const y = (mm: number) => HIGH - MARGIN - ((HIGH - 2 * MARGIN) * (mm - lowest)) / (highest - lowest);
  return (
    <svg viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
      <polyline
        className="thin"
        points={points.map(({ widthMm }, at) => `${x(at)},${y(widthMm)}`).join(" ")}
      />
      {points.map(({ visit, widthMm, uMm }, at) => (
        <g key={visit}>
          <line x1={x(at)} x2={x(at)} y1={y(widthMm - uMm)} y2={y(widthMm + uMm)} />
          <line x1={x(at) - 5} x2={x(at) + 5} y1={y(widthMm - uMm)} y2={y(widthMm - uMm)} />
          <line x1={x(at) - 5} x2={x(at) + 5} y1={y(widthMm + uMm)} y2={y(widthMm + uMm)} />
          <circle cx={x(at)} cy={y(widthMm)} r={3.5} />
        </g>
      ))}
    </svg>
  );
}
