import type { Side } from "../road.ts";
import type { Point } from "./contours.ts";

export interface Span {
  /** From and to, along y at one height, mm. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly heightMm: number;
  /** Height of the dimension line itself, mm. */
  readonly lineMm: number;
  readonly words: string;
}

/** A length across with its figure on the line: thin lines, slanted ends. */
export function Across({ fromMm, toMm, heightMm, lineMm, words }: Span) {
  const z = -lineMm;
  return (
    <g className="dimension">
      <path d={`M${fromMm} ${-heightMm}V${z - 3}M${toMm} ${-heightMm}V${z - 3}M${fromMm} ${z}H${toMm}`} className="pen-1" />
      <path d={`M${fromMm - 2} ${z + 2}l4-4M${toMm - 2} ${z + 2}l4-4`} className="pen-2" />
      <text x={(fromMm + toMm) / 2} y={z} className="on-line" textAnchor="middle" dominantBaseline="central">
        {words}
      </text>
    </g>
  );
}

/** Words beside a place, led to it by a thin line. */
export function Angle({ at, words, side }: { at: Point; words: string; side: Side }) {
  const out = side === "near" ? -1 : 1;
  const [y, z] = at;
  return (
    <g className="dimension">
      <path d={`M${y} ${z}l${out * 16} -26h${out * 6}`} className="pen-1" />
      <circle cx={y} cy={z} r={1.6} className="dot" />
      <text x={y + out * 24} y={z - 26} className="figure-word" textAnchor={side === "near" ? "end" : "start"} dominantBaseline="central">
        {words}
      </text>
    </g>
  );
}
