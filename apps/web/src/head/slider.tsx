import { useEffect, useState } from "react";
import { useWords } from "../catalogue/use-words.ts";
import { CHANGE_MAX_MM } from "../road.ts";
import { shownMm } from "../units/shown.ts";
import { useUnits } from "../units/units.ts";
import { SteelRule, signed } from "./rule.tsx";

const held = (mm: number) => Math.min(CHANGE_MAX_MM, Math.max(-CHANGE_MAX_MM, mm));

interface Props {
  readonly todayMm: number;
  readonly changeMm: number;
  /** The change that the work answer names; undefined where it names none. */
  readonly answeredMm: number | undefined;
  readonly onChange: (changeMm: number) => void;
}

/** Moves the head: by the slider, by a key, or typed. */
export function HeadSlider({ todayMm, changeMm, answeredMm, onChange }: Props) {
  const units = useUnits();
  const { bench: words } = useWords();
  const move = (mm: number) => onChange(held(mm));
  // The slider steps by whole millimetres; a typed half stays where it was put.
  const digits = Number.isInteger(changeMm) ? 0 : 1;
  return (
    <div className="head-slider">
      <p className="head-figures">
        <span className="over">{words.spread}</span>
        <span className="figure large">
          {todayMm.toFixed(0)} <Arrow />
          <span className="only-heard">{words.to}</span> {(todayMm + changeMm).toFixed(digits)}{" "}
          <span className="unit">mm</span>
        </span>
        {units.length === "mm" ? null : (
          <span className="figure">
            {shownMm(todayMm, 1, units)} <Arrow /> <span className="only-heard">{words.to}</span>{" "}
            {shownMm(todayMm + changeMm, 1, units)}
          </span>
        )}
      </p>
      <div className="rule-and-thumb">
        <input
          type="range"
          min={-CHANGE_MAX_MM}
          max={CHANGE_MAX_MM}
          step={digits === 0 ? 1 : "any"}
          value={changeMm}
          aria-label={words.change}
          aria-valuetext={words.changeSays(signed(changeMm, digits), (todayMm + changeMm).toFixed(digits))}
          onChange={(event) => move(Number(event.target.value))}
        />
        <SteelRule mostMm={CHANGE_MAX_MM} />
      </div>
      <div className="nudges">
        <button type="button" onClick={() => move(changeMm - 1)} aria-label={words.closeOne}>
          <span className="figure" aria-hidden="true">
            −1
          </span>{" "}
          {words.close}
        </button>
        <TypedChange changeMm={changeMm} onChange={move} />
        <button type="button" onClick={() => move(changeMm + 1)} aria-label={words.openOne}>
          {words.open}{" "}
          <span className="figure" aria-hidden="true">
            +1
          </span>
        </button>
        <button type="button" onClick={() => move(0)} disabled={changeMm === 0}>
          {words.asToday}
        </button>
        {answeredMm === undefined ? null : (
          <button type="button" onClick={() => move(answeredMm)} disabled={changeMm === answeredMm}>
            {words.asAnswered} <span className="figure">{signed(answeredMm)}</span>
          </button>
        )}
      </div>
    </div>
  );
}

/** A typed change is taken at Enter or on leaving; point and comma both do. */
function TypedChange({ changeMm, onChange }: { changeMm: number; onChange: (mm: number) => void }) {
  const { bench: words } = useWords();
  const [typed, setTyped] = useState(signed(changeMm, changeMm % 1 === 0 ? 0 : 1));
  useEffect(() => setTyped(signed(changeMm, changeMm % 1 === 0 ? 0 : 1)), [changeMm]);
  const take = () => {
    const mm = Number(typed.trim().replace("\u2212", "-").replace(",", "."));
    if (typed.trim() !== "" && Number.isFinite(mm)) onChange(mm);
    else setTyped(signed(changeMm));
  };
  return (
    <label className="typed-change">
      <span>{words.changeMm}</span>
      <input
        className="figure"
        inputMode="text"
        autoComplete="off"
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === "Enter") take();
        }}
      />
    </label>
  );
}

function Arrow() {
  return (
    <svg viewBox="0 0 28 20" width="28" height="20" aria-hidden="true">
      <path d="M1 10h24M17 3l8 7-8 7" className="pen-2" />
    </svg>
  );
}
