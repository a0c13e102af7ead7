import { useWords } from "../catalogue/use-words.ts";
import { SIDES } from "../road.ts";
import type { Point } from "./contours.ts";
import { Across, Noted, Upright } from "./dimension.tsx";
import { smooth, straight } from "./path.ts";
import { usePixel } from "./unit.ts";
import type { SectionView } from "./view.ts";

/** How deep the back is drawn as cut below its outline, mm. */
const CUT_MM = 30;
const MARGIN_MM = 14;

const up = ([y, z]: Point): Point => [y, -z];

/** One section seen from behind at true proportions: the horse near, the tree over it, near side left. */
export function Section({ drawn, today }: { drawn: SectionView; today: SectionView | undefined }) {
  const back = drawn.back.map(up);
  const over = [...drawn.head.map(up), ...SIDES.flatMap((side) => drawn.panel[side].map(up))];
  const wide = Math.max(...[...back, ...over].map(([y]) => Math.abs(y))) + MARGIN_MM;
  const { ref, pixel } = usePixel(2 * wide);
  const highest = Math.min(...[...back, ...over].map(([, z]) => z));
  const top = highest - 56 * pixel;
  const foot = Math.max(...back.map(([, z]) => z), ...over.map(([, z]) => z)) + CUT_MM;
  const { bench: words } = useWords();
  const place = words.stations[drawn.station].toLowerCase();
  return (
    <svg
      ref={ref}
      className="drawing"
      viewBox={`${-wide} ${top} ${2 * wide} ${foot - top + 32 * pixel}`}
      style={{ "--pixel": pixel } as React.CSSProperties}
      role="img"
      aria-label={words.sectionSays(place)}
    >
      <path d={`M0 ${top + 8 * pixel}V${foot}`} className="pen-1" strokeDasharray="14 4 2 4" />
      <Cut back={back} />
      {drawn.band.map((edge) => (
        <path key={edge[0]?.join(" ")} d={smooth(edge.map(up))} className="pen-1" strokeDasharray="2 3" />
      ))}
      {today === undefined ? null : <Ghost drawn={today} />}
      {SIDES.filter((side) => drawn.panel[side].length > 0).map((side) => (
        <path key={side} d={straight(drawn.panel[side].map(up), true)} className="panel-cut pen-2" />
      ))}
      <path d={smooth(back)} className="pen-3" />
      {drawn.head.length > 0 ? <Tree outline={straight(drawn.head.map(up), true)} /> : null}
      {drawn.spread ? <Across {...drawn.spread} lineMm={-highest + 28 * pixel} pixel={pixel} /> : null}
      {drawn.clearance ? (
        <Upright toMm={drawn.clearance.mm} words={drawn.clearance.words} pixel={pixel} />
      ) : null}
      {SIDES.map((side) => {
        const gap = drawn.gap[side];
        return gap ? (
          <Noted key={side} at={up(gap.at)} words={gap.words} side={side} pixel={pixel} edgeMm={wide} />
        ) : null;
      })}
      <text x={-wide} y={foot + 24 * pixel} className="side-word">
        {words.sides.near}
      </text>
      <text x={wide} y={foot + 24 * pixel} className="side-word" textAnchor="end">
        {words.sides.off}
      </text>
    </svg>
  );
}

/** The cut surface of the horse, hatched, with a dashed break line below. */
function Cut({ back }: { back: readonly Point[] }) {
  const under = back.map(([y, z]): Point => [y, z + CUT_MM]).reverse();
  return (
    <>
      <path d={straight([...back, ...under], true)} fill="url(#hatch)" />
      <path d={smooth(under)} className="pen-1" strokeDasharray="10 4 2 4" />
    </>
  );
}

/** The head in its own thickness, over the panel. */
function Tree({ outline }: { outline: string }) {
  return (
    <>
      <path d={outline} className="tree-ground" />
      <path d={outline} className="tree-cut pen-2" />
    </>
  );
}

/** Today's outline under the moved one. */
function Ghost({ drawn }: { drawn: SectionView }) {
  return (
    <g strokeDasharray="5 4">
      {SIDES.filter((side) => drawn.panel[side].length > 0).map((side) => (
        <path key={side} d={straight(drawn.panel[side].map(up), true)} className="pen-1" />
      ))}
      {drawn.head.length > 0 ? <path d={straight(drawn.head.map(up), true)} className="pen-1" /> : null}
    </g>
  );
}
