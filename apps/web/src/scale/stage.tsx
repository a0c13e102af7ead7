import {
  type CSSProperties,
  type KeyboardEvent,
  type PointerEvent,
  type RefObject,
  useLayoutEffect,
  useRef,
  useState,
} from "react";
import { useWords } from "../catalogue/use-words.ts";
import { STEP_PX } from "../road.ts";

/** Two lines: how far the first is from the stage's left or upper end, and the second from the first, CSS pixels. */
export interface Between {
  readonly fromPx: number;
  readonly apartPx: number;
}

export type Axis = "up" | "across";

interface StageSize {
  readonly widthPx: number;
  readonly heightPx: number;
  /** Along which way of the stage the card's long side goes. */
  readonly longAxis: Axis;
}

const LEAP_PX = 20;
/** How a key moves a line, CSS pixels: as the arrow points on the screen, whichever way a slider's figure would run. */
const STEPS_PX: ReadonlyMap<string, number> = new Map([
  ["ArrowLeft", -STEP_PX],
  ["ArrowUp", -STEP_PX],
  ["ArrowRight", STEP_PX],
  ["ArrowDown", STEP_PX],
  ["PageUp", -LEAP_PX],
  ["PageDown", LEAP_PX],
]);

/** The room that the card is laid in, as it is now. */
export function useStage(): { ref: RefObject<HTMLDivElement | null>; stage: StageSize } {
  const ref = useRef<HTMLDivElement>(null);
  const [{ widthPx, heightPx }, setSize] = useState({ widthPx: 340, heightPx: 600 });
  useLayoutEffect(() => {
    const box = ref.current;
    if (box === null) return;
    const look = () => setSize({ widthPx: box.clientWidth, heightPx: box.clientHeight });
    look();
    const watch = new ResizeObserver(look);
    watch.observe(box);
    return () => watch.disconnect();
  }, []);
  return { ref, stage: { widthPx, heightPx, longAxis: heightPx > widthPx ? "up" : "across" } };
}

interface Given {
  readonly ref: RefObject<HTMLDivElement | null>;
  readonly axis: Axis;
  readonly roomPx: number;
  readonly between: Between;
  /** The card's other side as a part of the one that is matched. */
  readonly shape: number;
  readonly onPlace: (next: Between) => void;
}

/** The place for the card, with the two lines. Left is left here in every language: a card lies on it. */
export function Stage({ ref, axis, roomPx, between, shape, onPlace }: Given) {
  const { scale: words } = useWords();
  const { fromPx, apartPx } = between;
  const endPx = fromPx + apartPx;
  const names = axis === "up" ? (["upper", "lower"] as const) : (["left", "right"] as const);
  return (
    <div className="stage" ref={ref} dir="ltr" data-axis={axis}>
      <div className="card-here" aria-hidden="true" style={cardAt(axis, between, shape)} />
      <Line
        name={words.lines[names[0]]}
        axis={axis}
        atPx={fromPx}
        leastPx={0}
        mostPx={endPx - STEP_PX}
        outward="before"
        onMove={(px) => onPlace({ fromPx: px, apartPx: endPx - px })}
      />
      <Line
        name={words.lines[names[1]]}
        axis={axis}
        atPx={endPx}
        leastPx={fromPx + STEP_PX}
        mostPx={roomPx}
        outward="after"
        onMove={(px) => onPlace({ fromPx, apartPx: px - fromPx })}
      />
    </div>
  );
}

/** Where the card would lie between the lines as they stand now. */
function cardAt(axis: Axis, { fromPx, apartPx }: Between, shape: number): CSSProperties {
  const aside = `calc(50% - ${(apartPx * shape) / 2}px)`;
  return axis === "up"
    ? { top: fromPx, height: apartPx, left: aside, right: aside }
    : { left: fromPx, width: apartPx, top: aside, bottom: aside };
}

interface LineGiven {
  readonly name: string;
  readonly axis: Axis;
  readonly atPx: number;
  readonly leastPx: number;
  readonly mostPx: number;
  /** On which side of the line it is taken hold of: the card lies on the other. */
  readonly outward: "before" | "after";
  readonly onMove: (px: number) => void;
}

/** One line: dragged, or moved by the arrow keys a step at a time. */
function Line({ name, axis, atPx, leastPx, mostPx, outward, onMove }: LineGiven) {
  const held = useRef<number>(undefined);
  const move = (px: number) =>
    onMove(Math.min(Math.max(Math.round(px / STEP_PX) * STEP_PX, leastPx), mostPx));
  const along = ({ clientX, clientY }: PointerEvent) => (axis === "up" ? clientY : clientX);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS_PX.get(event.key);
    if (step === undefined) return;
    event.preventDefault();
    move(atPx + step);
  };
  return (
    <div
      className={`match-line ${axis} ${outward}`}
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-orientation={axis === "up" ? "vertical" : "horizontal"}
      aria-valuemin={leastPx}
      aria-valuemax={mostPx}
      aria-valuenow={atPx}
      aria-valuetext={`${atPx.toFixed(1)} px`}
      style={axis === "up" ? { top: atPx } : { left: atPx }}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        held.current = along(event) - atPx;
      }}
      onPointerMove={(event) => {
        if (held.current !== undefined) move(along(event) - held.current);
      }}
      onPointerUp={() => {
        held.current = undefined;
      }}
      onPointerCancel={() => {
        held.current = undefined;
      }}
    />
  );
}
