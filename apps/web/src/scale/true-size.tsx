import { useLayoutEffect, useRef, useState } from "react";
import { useWords } from "../catalogue/use-words.ts";
import { straight } from "../drawing/path.ts";
import { clipped, type ScreenPart, type ScreenScale, screenParts } from "../road.ts";

type Place = readonly [number, number];

/** One line of a drawing: [x to the off side, y down], mm. It is told apart by its dash and its name, never by colour. */
export interface Series {
  readonly id: string;
  readonly name: string;
  readonly runs: readonly (readonly Place[])[];
  readonly pen: "pen-1" | "pen-2";
  readonly dash?: string;
}

interface Given {
  readonly what: string;
  readonly series: readonly Series[];
  /** Both halves of what must be seen, each from the centre plane outward: [y to the off side, z up], mm. */
  readonly extent: Parameters<typeof screenParts>[0];
  readonly scale: ScreenScale;
}

/** Room that the words beside a drawing and the bar take of the window's height, CSS pixels. */
const BESIDE_PX = 190;

/** Lines at true size: whole where they go on the screen, else part by part, each named. Near is left in every language. */
export function TrueSize({ what, series, extent, scale }: Given) {
  const { scale: words } = useWords();
  const { ref, widthPx, heightPx } = useRoom();
  const [at, setAt] = useState(0);
  const { pxPerMm } = scale;
  const parts = screenParts(extent, {
    widthMm: widthPx / pxPerMm,
    heightMm: (heightPx - BESIDE_PX) / pxPerMm,
  });
  const part = parts[Math.min(at, parts.length - 1)];
  const now = part ? parts.indexOf(part) : 0;
  return (
    <figure className="true-size" ref={ref}>
      {part === undefined ? (
        <p className="problem">{words.tooSmall}</p>
      ) : (
        <>
          <p className="part-name" role="status">
            <strong>{words.halves[part.half]}</strong>
            {parts.length > 1 ? `, ${partWords(words, part, now, parts.length)}` : ""}
          </p>
          <div className="true-size-room" dir="ltr">
            <Ends part={part} pxPerMm={pxPerMm} />
            <Drawn what={what} series={series} part={part} pxPerMm={pxPerMm} />
          </div>
          <Bar roomPx={widthPx} pxPerMm={pxPerMm} />
        </>
      )}
      {parts.length > 1 ? (
        <div className="part-keys">
          <button type="button" disabled={now === 0} onClick={() => setAt(now - 1)}>
            {words.partBefore}
          </button>
          <button type="button" disabled={now === parts.length - 1} onClick={() => setAt(now + 1)}>
            {words.partNext}
          </button>
        </div>
      ) : null}
      <Key series={series} />
    </figure>
  );
}

type Words = ReturnType<typeof useWords>["scale"];

function partWords(words: Words, { across, down }: ScreenPart, now: number, count: number): string {
  return [
    words.part(String(now + 1), String(count)),
    ...(down.of > 1 ? [words.down(String(down.at), String(down.of))] : []),
    ...(across.of > 1 ? [words.across(String(across.at), String(across.of))] : []),
  ].join("; ");
}

function useRoom() {
  const ref = useRef<HTMLElement>(null);
  const [size, setSize] = useState({ widthPx: 0, heightPx: 0 });
  useLayoutEffect(() => {
    const box = ref.current;
    if (box === null) return;
    const look = () => setSize({ widthPx: box.clientWidth, heightPx: innerHeight });
    look();
    const watch = new ResizeObserver(look);
    watch.observe(box);
    addEventListener("resize", look);
    return () => {
      watch.disconnect();
      removeEventListener("resize", look);
    };
  }, []);
  return { ref, ...size };
}

/** Which side is which, in words at both ends. */
function Ends({ part: { half, window }, pxPerMm }: { part: ScreenPart; pxPerMm: number }) {
  const { scale: words } = useWords();
  const { near, off, middle } = words.ends;
  return (
    <p className="part-ends" style={{ maxWidth: `max(20rem, ${(window.right - window.left) * pxPerMm}px)` }}>
      <span>{half === "off" ? middle : near}</span>
      <span>{words.seen}</span>
      <span>{half === "near" ? middle : off}</span>
    </p>
  );
}

interface DrawnGiven {
  readonly what: string;
  readonly series: readonly Series[];
  readonly part: ScreenPart;
  readonly pxPerMm: number;
}

/** One millimetre of the drawing is one of the screen: its box is laid out in pixels, never stretched to fit. */
function Drawn({ what, series, part: { window }, pxPerMm }: DrawnGiven) {
  const { scale: words } = useWords();
  const { left, right, top, bottom } = window;
  const [width, height] = [right - left, bottom - top];
  return (
    <svg
      className="drawing"
      viewBox={`${left} ${top} ${width} ${height}`}
      style={sized(width * pxPerMm, height * pxPerMm, pxPerMm)}
      role="img"
      aria-label={words.drawn(what)}
    >
      <path d={`M0 ${top}V${bottom}`} className="pen-1" strokeDasharray="14 4 2 4" />
      {series.map((one) => (
        <path
          key={one.id}
          data-series={one.id}
          d={one.runs.map((run) => straight(run)).join("")}
          className={one.pen}
          strokeDasharray={one.dash}
        />
      ))}
      {series.map((one, index) => {
        const at = labelAt(one, window, (index + 1) / (series.length + 1));
        return at ? (
          <text
            key={one.id}
            className="on-line"
            x={at[0]}
            y={at[1]}
            textAnchor={at[0] < (left + right) / 2 ? "start" : "end"}
          >
            {one.name}
          </text>
        ) : null;
      })}
    </svg>
  );
}

const sized = (widthPx: number, heightPx: number, pxPerMm: number) =>
  ({ width: `${widthPx}px`, height: `${heightPx}px`, "--pixel": 1 / pxPerMm }) as React.CSSProperties;

/** Where a line that is seen here crosses this part of its own height, so that names stand one under the other. */
function labelAt({ runs }: Series, window: ScreenPart["window"], part: number): Place | undefined {
  const seen = runs.flatMap((run) => clipped(run, window));
  const ys = seen.flat().map(([, y]) => y);
  const height = Math.min(...ys) + part * (Math.max(...ys) - Math.min(...ys));
  for (const run of seen)
    for (const [i, [x1, y1]] of run.slice(1).entries()) {
      const [x0, y0] = run[i] ?? [x1, y1];
      const t = (height - y0) / (y1 - y0);
      if (t >= 0 && t <= 1) return [x0 + t * (x1 - x0), height];
    }
  return undefined;
}

const BARS_MM = [100, 50] as const;
const MARK_MM = 10;

/** A bar of 100 mm, or of 50 where that is all there is room for, with a mark at each 10 mm. */
function Bar({ roomPx, pxPerMm }: { roomPx: number; pxPerMm: number }) {
  const { scale: words } = useWords();
  const mm = BARS_MM.find((one) => one * pxPerMm <= roomPx);
  if (mm === undefined) return null;
  const marks = Array.from(
    { length: mm / MARK_MM + 1 },
    (_, i) => `M${i * MARK_MM} ${i % 5 === 0 ? 0 : 2}V4`,
  );
  return (
    <div className="true-size-bar">
      <svg
        className="drawing"
        viewBox={`0 0 ${mm} 4.5`}
        style={sized(mm * pxPerMm, 4.5 * pxPerMm, pxPerMm)}
        role="img"
        aria-label={words.barSays(String(mm))}
      >
        <path data-series="bar" d={`M0 4H${mm}`} className="pen-2" />
        <path d={marks.join("")} className="pen-1" />
      </svg>
      <p>{words.barSays(String(mm))}</p>
    </div>
  );
}

/** Which dash is which. */
function Key({ series }: { series: readonly Series[] }) {
  return (
    <ul className="true-size-key">
      {series.map((one) => (
        <li key={one.id}>
          <svg viewBox="0 0 56 8" width="56" height="8" aria-hidden="true">
            <path d="M0 4H56" className={one.pen} strokeDasharray={one.dash} />
          </svg>{" "}
          {one.name}
        </li>
      ))}
    </ul>
  );
}
