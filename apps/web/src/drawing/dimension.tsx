import type { Side } from "../road.ts";
import type { Point } from "./contours.ts";

export interface Span {
  /** From and to, along y at one height, mm. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly heightMm: number;
  readonly words: string;
}

/** A length across with its figure on the line: thin lines, slanted ends. `lineMm`: height of the dimension line. */
export function Across({
  fromMm,
  toMm,
  heightMm,
  words,
  lineMm,
  pixel,
}: Span & { lineMm: number; pixel: number }) {
  const z = -lineMm;
  const end = 6 * pixel;
  return (
    <g>
      <path
        d={`M${fromMm} ${-heightMm - end}V${z - end}M${toMm} ${-heightMm - end}V${z - end}M${fromMm} ${z}H${toMm}`}
        className="pen-1"
      />
      <path
        d={`M${fromMm - end / 2} ${z + end / 2}l${end} ${-end}M${toMm - end / 2} ${z + end / 2}l${end} ${-end}`}
        className="pen-2"
      />
      <text x={(fromMm + toMm) / 2} y={z} className="on-line" textAnchor="middle" dominantBaseline="central">
        {words}
      </text>
    </g>
  );
}

/** Words at the drawing's edge, led to their place by a thin line. A figure's U stands under it: on a phone both in one line reach the head. */
export function Noted(props: { at: Point; words: string; side: Side; pixel: number; edgeMm: number }) {
  const { at, words, side, pixel, edgeMm } = props;
  const out = side === "near" ? -1 : 1;
  const [y, z] = at;
  const height = z - 72 * pixel;
  const [figure, u] = words.split(" ± ");
  const textAnchor = side === "near" ? "start" : "end";
  const line = { x: out * edgeMm, className: "figure-word", textAnchor } as const;
  return (
    <g>
      <path d={`M${y} ${z}L${out * (edgeMm - 44 * pixel)} ${height + 12 * pixel}`} className="pen-1" />
      <circle cx={y} cy={z} r={3 * pixel} className="dot" />
      <text {...line} y={height - (u ? 20 * pixel : 0)}>
        {figure}
      </text>
      {u ? (
        <text {...line} y={height}>
          ± {u}
        </text>
      ) : null}
    </g>
  );
}

/** A height over the top of the back, on the centre line, with its figure beside it. */
export function Upright({ toMm, words, pixel }: { toMm: number; words: string; pixel: number }) {
  const end = 6 * pixel;
  return (
    <g>
      <path d={`M0 0V${-toMm}`} className="pen-2" />
      <path
        d={`M${-end / 2} ${end / 2}l${end} ${-end}M${-end / 2} ${-toMm + end / 2}l${end} ${-end}`}
        className="pen-2"
      />
      <text x={0} y={-toMm / 2} className="on-line" textAnchor="middle" dominantBaseline="central">
        {words}
      </text>
    </g>
  );
}
