import type { SectionDrawn, Side } from "../road.ts";
import { SIDES } from "../road.ts";
import { STATION_WORDS } from "../words.ts";
import { Angle, Across } from "./dimension.tsx";
import type { Point } from "./contours.ts";
import { smooth, straight } from "./path.ts";

/** How far below its outline the back is drawn as cut, mm. */
const CUT_MM = 34;
const MARGIN = 16;

const up = ([y, z]: Point): Point => [y, -z];

/** One section seen from behind at true proportions: the horse near, the tree over it, near side left. */
export function Section({ drawn, today }: { drawn: SectionDrawn; today: SectionDrawn | undefined }) {
  const back = drawn.back.map(up);
  const everything = [...back, ...drawn.head.map(up), ...SIDES.flatMap((side) => drawn.panel[side].map(up))];
  const left = Math.min(...everything.map(([y]) => y)) - MARGIN;
  const right = Math.max(...everything.map(([y]) => y)) + MARGIN;
  const top = Math.min(...everything.map(([, z]) => z)) - 34;
  const foot = Math.max(...back.map(([, z]) => z)) + CUT_MM;
  return (
    <svg
      className="drawing"
      viewBox={`${left} ${top} ${right - left} ${foot - top + 26}`}
      role="img"
      aria-label={`Section at the ${STATION_WORDS[drawn.station].toLowerCase()} station seen from behind, near side on the left; its figures stand in the table below`}
    >
      <Cut back={back} foot={foot} />
      <path d={smooth(back)} className="pen-3" />
      {drawn.band.map((edge) => (
        <path key={edge[0]?.join(" ")} d={smooth(edge.map(up))} className="pen-1" strokeDasharray="3 3" />
      ))}
      {today === undefined || today === drawn ? null : <Ghost drawn={today} />}
      {SIDES.map((side) => (
        <path key={side} d={straight(drawn.panel[side].map(up), true)} className="panel-cut pen-2" />
      ))}
      {drawn.head.length > 0 ? <path d={straight(drawn.head.map(up), true)} className="tree-cut pen-3" /> : null}
      {SIDES.map((side) => (
        <Gap key={side} drawn={drawn} side={side} />
      ))}
      {drawn.spread ? <Across {...drawn.spread} /> : null}
      <text x={left + 4} y={foot + 20} className="side-word">
        near (left)
      </text>
      <text x={right - 4} y={foot + 20} className="side-word" textAnchor="end">
        off (right)
      </text>
    </svg>
  );
}

/** The cut surface of the horse, hatched, open below with a dashed break line. */
function Cut({ back, foot }: { back: readonly Point[]; foot: number }) {
  const first = back[0] ?? [0, 0];
  const last = back.at(-1) ?? [0, 0];
  const under = back.map(([y, z]): Point => [y, Math.min(z + CUT_MM, foot)]).reverse();
  return (
    <>
      <path d={straight([...back, ...under], true)} fill="url(#hatch)" />
      <path d={straight([first, [first[0], first[1] + CUT_MM]])} className="pen-1" />
      <path d={straight([last, [last[0], last[1] + CUT_MM]])} className="pen-1" />
      <path d={smooth(under)} className="pen-1" strokeDasharray="10 4 2 4" />
    </>
  );
}

/** Today's outline under the moved one. */
function Ghost({ drawn }: { drawn: SectionDrawn }) {
  return (
    <g strokeDasharray="5 4">
      {SIDES.map((side) => (
        <path key={side} d={straight(drawn.panel[side].map(up), true)} className="pen-1" />
      ))}
      {drawn.head.length > 0 ? <path d={straight(drawn.head.map(up), true)} className="pen-1" /> : null}
    </g>
  );
}

/** The angle between panel and back on one side, with its figure. */
function Gap({ drawn, side }: { drawn: SectionDrawn; side: Side }) {
  const gap = drawn.gap[side];
  return gap === undefined ? null : <Angle at={up(gap.at)} words={gap.words} side={side} />;
}
