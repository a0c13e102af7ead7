import { memo } from "react";
import { useWords } from "../catalogue/use-words.ts";
import {
  FAR_OVER_KPA,
  LEVELS_KPA,
  type PressureField,
  type Rest,
  type Side,
  STATIONS,
  type Station,
} from "../road.ts";
import { contours, type Net, type Point, rimmed } from "./contours.ts";
import { labelsOn } from "./labels.ts";
import { straight } from "./path.ts";
import { usePixel } from "./unit.ts";

/** One half of the field as a net; paper's y is the horse's x, so that the head is at the top and near is left. */
function netOf(field: PressureField, side: Side): Net {
  const from = side === "near" ? 0 : field.nx * field.nv;
  const index = (i: number, j: number) => from + i * field.nv + j;
  return {
    nx: field.nx,
    nv: field.nv,
    at: (i, j) => [field.yMm[index(i, j)] ?? 0, field.xMm[index(i, j)] ?? 0],
    value: (i, j) => field.kPa[index(i, j)] ?? 0,
  };
}

function edgeOf(net: Net): Point[] {
  const edge: Point[] = [];
  for (let i = 0; i < net.nx; i += 1) edge.push(net.at(i, 0));
  for (let j = 1; j < net.nv; j += 1) edge.push(net.at(net.nx - 1, j));
  for (let i = net.nx - 2; i >= 0; i -= 1) edge.push(net.at(i, net.nv - 1));
  for (let j = net.nv - 2; j > 0; j -= 1) edge.push(net.at(0, j));
  return edge;
}

function HalfField({ net }: { net: Net }) {
  const field = rimmed(net);
  const loops = LEVELS_KPA.map((kPa) => ({ kPa, loops: contours(field, kPa) }));
  const paths = loops.map(({ kPa, loops }) => ({
    kPa,
    d: loops.map((loop) => straight(loop, true)).join(""),
  }));
  const over = contours(field, FAR_OVER_KPA)
    .map((loop) => straight(loop, true))
    .join("");
  const edge = edgeOf(net);
  return (
    <g>
      {paths.map(({ kPa, d }, index) => (
        <path key={kPa} d={d} className={`sepia-${index + 1}`} />
      ))}
      <path d={over} fill="url(#cross-hatch)" />
      {paths.map(({ kPa, d }) => (
        <path key={kPa} d={d} className="pen-1" />
      ))}
      <path d={straight(edge, true)} className="pen-2" />
      {labelsOn(loops, edge).map(({ at, words }) => (
        <text
          key={`${at[0]} ${at[1]}`}
          x={at[0]}
          y={at[1]}
          className="on-line"
          textAnchor="middle"
          dominantBaseline="central"
        >
          {words}
        </text>
      ))}
    </g>
  );
}

/** Lines of equal pressure under both halves, seen from above, head at the top. Always the same ramp. */
export const Pressure = memo(function Pressure({
  rest,
  stations,
  station,
}: {
  rest: Rest;
  stations: { readonly [S in Station]: number } | undefined;
  station: Station;
}) {
  const { field } = rest;
  const { bench: words } = useWords();
  const long = Math.max(...field.xMm);
  const wide = Math.max(...field.yMm) + 20;
  const { ref, pixel } = usePixel(2 * wide);
  const top = -36 * pixel;
  return (
    <svg
      ref={ref}
      className="drawing"
      viewBox={`${-wide} ${top} ${2 * wide} ${long + 12 - top}`}
      style={{ "--pixel": pixel } as React.CSSProperties}
      role="img"
      aria-label={words.pressureSays}
    >
      <path d={`M0 ${top + 20 * pixel}V${long + 10}`} className="pen-1" strokeDasharray="14 4 2 4" />
      <text x={-wide} y={top + 16 * pixel} className="side-word">
        {words.sides.near}
      </text>
      <text x={wide} y={top + 16 * pixel} className="side-word" textAnchor="end">
        {words.sides.off}
      </text>
      <HalfField net={netOf(field, "near")} />
      <HalfField net={netOf(field, "off")} />
      {(stations ? STATIONS : []).map((one) => (
        <g key={one}>
          <path
            d={`M${-wide + 2} ${stations?.[one]}h14M${wide - 2} ${stations?.[one]}h-14`}
            className={one === station ? "pen-3" : "pen-1"}
          />
          {one === station ? (
            <text
              x={0}
              y={stations?.[one]}
              className="on-line"
              textAnchor="middle"
              dominantBaseline="central"
            >
              {words.stations[one]}
            </text>
          ) : null}
        </g>
      ))}
    </svg>
  );
});
