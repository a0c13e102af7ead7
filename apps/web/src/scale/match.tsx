import { type FormEvent, useEffect, useRef, useState } from "react";
import { useWords } from "../catalogue/use-words.ts";
import {
  CARD_MM,
  type CardSide,
  type Matched,
  readNumber,
  STEP_PX,
  screenScale,
  sideRangePx,
} from "../road.ts";
import { type Between, Stage, useStage } from "./stage.tsx";

const SIDES_IN_TURN: readonly CardSide[] = ["long", "short"];
/**
 * Where the lines stand before they are moved: at a scale that hardly any screen has, and not where the other side says
 * they should be, so that each side is read for itself. CSS pixels per mm; working figure, no source.
 */
const BEGIN_PX_PER_MM = 3;

/** Two lines to the long side of a card, then two others to its short side: px between them. What disagrees is refused. */
export function Match({ onMatched }: { onMatched: (longPx: number, shortPx: number) => void }) {
  const { scale: words } = useWords();
  const { ref, stage } = useStage();
  const [side, setSide] = useState<CardSide>("long");
  const [placed, setPlaced] = useState<{ readonly [S in CardSide]?: Between }>({});
  const [refused, setRefused] = useState<Matched>();
  const axis = side === "long" ? stage.longAxis : stage.longAxis === "up" ? "across" : "up";
  const roomPx = axis === "up" ? stage.heightPx : stage.widthPx;
  const between = placed[side] ?? centred(BEGIN_PX_PER_MM * CARD_MM[side], roomPx);
  const place = (next: Between) => setPlaced({ ...placed, [side]: next });
  const enter = () => {
    if (side === "long") {
      setPlaced({ ...placed, long: between });
      setRefused(undefined);
      return setSide("short");
    }
    const longPx = placed.long?.apartPx ?? 0;
    const matched = screenScale(longPx, between.apartPx);
    if (matched.ok) return onMatched(longPx, between.apartPx);
    setRefused(matched);
    setSide("long");
    setPlaced({});
  };
  return (
    <div className="match">
      {refused ? <Refused matched={refused} /> : null}
      <p className="measure">{(stage.longAxis === "up" ? words.layUp : words.layAcross)[side]}</p>
      <Stage
        ref={ref}
        axis={axis}
        roomPx={roomPx}
        between={between}
        shape={side === "long" ? CARD_MM.short / CARD_MM.long : CARD_MM.long / CARD_MM.short}
        onPlace={place}
      />
      <Keys
        key={side}
        side={side}
        axis={axis}
        roomPx={roomPx}
        between={between}
        onPlace={place}
        onEnter={enter}
      />
    </div>
  );
}

/** Two lines so far apart, in the middle of the stage. */
function centred(apartPx: number, roomPx: number): Between {
  const onStep = (px: number): number => Math.round(px / STEP_PX) * STEP_PX;
  return { fromPx: onStep((roomPx - apartPx) / 2), apartPx: onStep(apartPx) };
}

/** It comes into sight by itself: what was just pressed stands at the foot of the screen. */
function Refused({ matched }: { matched: Matched }) {
  const { scale: words } = useWords();
  const ref = useRef<HTMLDivElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each refusal anew
  useEffect(() => ref.current?.focus(), [matched]);
  if (matched.ok) return null;
  const { long, short, apart, allowed } = matched;
  return (
    <div className="problem" role="alert" tabIndex={-1} ref={ref}>
      {SIDES_IN_TURN.map((side) => {
        const { px, pxPerMm } = side === "long" ? long : short;
        return <p key={side}>{words.sideRead[side](px.toFixed(1), pxPerMm.toFixed(3))}</p>;
      })}
      <p>
        {matched.why === "sides-differ"
          ? words.apart((100 * apart).toFixed(1), (100 * allowed).toFixed(1))
          : words.noScreen}
      </p>
    </div>
  );
}

interface KeysGiven {
  readonly side: CardSide;
  readonly axis: "up" | "across";
  readonly roomPx: number;
  readonly between: Between;
  readonly onPlace: (next: Between) => void;
  readonly onEnter: () => void;
}

/** Each line a step to either way, the distance typed, and the end of this side. They stay at the thumb. */
function Keys({ side, axis, roomPx, between, onPlace, onEnter }: KeysGiven) {
  const { scale: words, visit } = useWords();
  const [typed, setTyped] = useState<string>();
  const [problem, setProblem] = useState("");
  const { fromPx, apartPx } = between;
  const names = axis === "up" ? (["upper", "lower"] as const) : (["left", "right"] as const);
  const ways = axis === "up" ? (["up", "down"] as const) : (["left", "right"] as const);
  const nudged = (line: 0 | 1, way: -1 | 1) => {
    const step = way * STEP_PX;
    setTyped(undefined);
    onPlace(
      line === 0 ? { fromPx: fromPx + step, apartPx: apartPx - step } : { fromPx, apartPx: apartPx + step },
    );
  };
  /** Takes what was typed; false where it is no side of a card on this stage. */
  const take = (): boolean => {
    if (typed === undefined) return true;
    const read = readNumber(typed);
    const { least, most } = sideRangePx(side);
    const longest = Math.min(most, roomPx);
    if (!read.ok || read.value < least || read.value > longest) {
      setProblem(visit.refused(`"${typed}"`, words.range(least.toFixed(1), longest.toFixed(1))));
      return false;
    }
    setProblem("");
    setTyped(undefined);
    onPlace({ ...centred(read.value, roomPx), apartPx: read.value });
    return true;
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    // What was typed and not yet looked at is shown first; a second press says that it fits.
    if (typed === undefined) onEnter();
    else take();
  };
  return (
    <form className="match-keys" onSubmit={submit}>
      <h3 aria-live="polite">{words.steps[side]}</h3>
      {problem === "" ? null : (
        <p className="problem" role="alert">
          {problem}
        </p>
      )}
      <div className="match-nudges" dir="ltr">
        {names.map((name, line) => (
          <fieldset key={name}>
            <legend>{words.lines[name]}</legend>
            {ways.map((way, at) => (
              <button
                type="button"
                key={way}
                aria-label={`${words.lines[name]}, ${words.ways[way]}`}
                onClick={() => nudged(line === 0 ? 0 : 1, at === 0 ? -1 : 1)}
              >
                {ARROWS[way]}
              </button>
            ))}
          </fieldset>
        ))}
      </div>
      <div className="match-ends">
        <label>
          {words.between}
          <input
            className="figure"
            inputMode="decimal"
            autoComplete="off"
            value={typed ?? apartPx.toFixed(1)}
            onChange={({ target }) => setTyped(target.value)}
            onBlur={take}
          />
        </label>
        <button type="submit" className="main">
          {words.lies[side]}
        </button>
      </div>
    </form>
  );
}

const ARROWS = { up: "▲", down: "▼", left: "◀", right: "▶" } as const;
