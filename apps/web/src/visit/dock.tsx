import { type FormEvent, type RefObject, useLayoutEffect, useRef } from "react";
import { useTrade, useWords } from "../catalogue/use-words.ts";
import { type CaseFile, nameOf, type Problem, type Question, USUAL_UNITS, unitBeside } from "../road.ts";
import { shownRange } from "../units/shown.ts";
import { useUnits } from "../units/units.ts";
import { NumberKeys, otherUnits } from "./number-keys.tsx";
import { DrawnAgainTold, ReadAgain } from "./read-again.tsx";
import { saidWords } from "./said-words.ts";
import { pairsIn, TraceTyped } from "./trace-typed.tsx";

interface Given {
  /** The case as it stands. */
  readonly file: CaseFile;
  readonly question: Question;
  readonly said: unknown;
  /** What stood here at the visit before; behind a tracing that is drawn again, its first drawing. */
  readonly before: unknown;
  /** The unit of its points, where it was a line. */
  readonly beforeUnit: string | undefined;
  readonly typed: string;
  readonly problem: Problem | undefined;
  readonly onType: (typed: string) => void;
  readonly onEnter: (typed: string) => void;
  readonly onClear: () => void;
  /** Draws a tracing once more; undefined where there is nothing to draw again. */
  readonly onDrawAgain: (() => void) | undefined;
}

/** The one decision that is being taken, with its keys where the thumb is. */
export function Dock(given: Given) {
  const { file, question, said, before, typed, problem, onClear, onDrawAgain } = given;
  const words = useWords().visit;
  const hint = useHint(question);
  const dock = useRef<HTMLElement>(null);
  usePlace(dock);
  const clear = () => {
    // This key goes with what it clears: the focus goes to the question first.
    toQuestion(dock.current);
    onClear();
  };
  const trade = useTrade();
  return (
    <section ref={dock} className="dock" data-at={question.path} aria-label={question.asks}>
      <div className="dock-asks">
        <p>
          <strong>{question.asks}</strong>{" "}
          {question.words || typed !== "" ? null : <span className="quiet">{hint}</span>}
        </p>
        {said === undefined ? null : (
          <p>
            <span className="figure">{saidWords(said, question, trade)}</span>{" "}
            <button type="button" className="small" onClick={clear}>
              {words.clear}
            </button>
            {onDrawAgain ? (
              <button type="button" className="small" onClick={onDrawAgain}>
                {words.drawAgain}
              </button>
            ) : null}
          </p>
        )}
        {question.kind === "points" ? <DrawnAgainTold file={file} question={question} /> : null}
        {before === undefined || question.path.includes(".repeats[") ? null : (
          <p>
            {words.lastTime}: <span className="figure">{saidWords(before, question, trade)}</span>
          </p>
        )}
        {problem ? (
          <p className="problem" role="alert">
            {words.refused(trade.said(problem.read), trade.said(problem.allowed))}
          </p>
        ) : null}
      </div>
      {question.words ? <Choices {...given} choices={question.words} /> : <Typed {...given} />}
    </section>
  );
}

/**
 * The question gets the focus, and where it stays at the window's lower edge the page is told how high it is, so that nothing is
 * scrolled beneath it. In a window too low for that it does not stay, and is brought into sight.
 */
function usePlace(dock: RefObject<HTMLElement | null>): void {
  useLayoutEffect(() => {
    const one = dock.current;
    if (!one) return;
    const root = document.documentElement.style;
    const tell = () => root.setProperty("--dock-high", `${one.offsetHeight}px`);
    const changes = new ResizeObserver(tell);
    changes.observe(one);
    tell();
    toQuestion(one);
    return () => {
      changes.disconnect();
      root.removeProperty("--dock-high");
    };
  }, [dock]);
}

/** Whether it stays in sight by itself: in a low window it takes its turn on the page. */
export const stays = (dock: Element | null): boolean =>
  dock !== null && getComputedStyle(dock).position === "sticky";

/** To the field, or to the choices and to none of them: Enter pressed twice must not answer the next question. */
export function toQuestion(dock: HTMLElement | null): void {
  if (!dock) return;
  if (!stays(dock)) dock.scrollIntoView({ block: "start" });
  const field = dock.querySelector<HTMLElement>("#taken, .choices");
  field?.focus({ preventScroll: true });
  if (!stays(dock)) field?.scrollIntoView({ block: "nearest" });
}

function Choices({ question, choices, said, onEnter }: Given & { choices: readonly string[] }) {
  const words = useWords().visit;
  const trade = useTrade();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a grid in every engine
    <div className="choices" role="group" aria-label={question.asks} tabIndex={-1}>
      {choices.map((choice) => (
        <button type="button" key={choice} aria-pressed={said === choice} onClick={() => onEnter(choice)}>
          {trade.choice(choice, nameOf(question.path))}
        </button>
      ))}
      <button type="button" className="main" onClick={() => onEnter("")}>
        {words.next}
      </button>
    </div>
  );
}

/** What may be typed, in the unit that stands beside the field. */
function useHint({ path, kind, unit, range, hint }: Question): string {
  const units = useUnits();
  const { pairs } = useWords().units;
  const trade = useTrade();
  const beside = unitBeside(path, units);
  if (beside === undefined || beside === (unit ?? USUAL_UNITS.length)) return hint;
  if (kind === "points") return pairs;
  return range ? trade.said(shownRange(range, beside === units.mass ? "mass" : "length", units)) : hint;
}

const HAS_KEYS: readonly Question["kind"][] = ["measured", "whole-number"];
/** Reasons why a reading is missing that can be given with one key. */
const MISSING = ["unknown", "not-looked"] as const;

function Typed({ file, question, typed, before, beforeUnit, onType, onEnter }: Given) {
  const words = useWords().visit;
  const units = useUnits();
  const trade = useTrade();
  const beside = unitBeside(question.path, units) ?? question.unit;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    onEnter(typed);
  };
  const isPoints = question.kind === "points";
  // What was typed last stays in sight: several readings are longer than the field.
  const field = useRef<HTMLInputElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is scrolled with every sign
  useLayoutEffect(() => {
    if (field.current) field.current.scrollLeft = field.current.scrollWidth;
  }, [typed]);
  const hasKeys = isPoints || HAS_KEYS.includes(question.kind);
  return (
    <form className={hasKeys ? "typed with-keys" : "typed"} onSubmit={submit}>
      <div className="taken">
        <label className="only-heard" htmlFor="taken">
          {isPoints ? words.pairs : hasKeys ? words.asked : words.words}
        </label>
        {isPoints ? (
          <textarea
            id="taken"
            rows={2}
            inputMode="none"
            value={typed}
            enterKeyHint="next"
            onChange={({ target }) => onType(target.value)}
            onKeyDown={(event) => {
              // Enter goes to the next reading here as everywhere: points are parted by ";", not by lines.
              if (event.key !== "Enter" || event.shiftKey) return;
              event.preventDefault();
              onEnter(typed);
            }}
          />
        ) : (
          <input
            id="taken"
            ref={field}
            value={typed}
            type={question.kind === "date" ? "date" : "text"}
            // The keys below are larger than the phone's own; a keyboard or a calliper that types still does.
            inputMode={hasKeys ? "none" : "text"}
            autoComplete="off"
            enterKeyHint="next"
            onChange={({ target }) => onType(target.value)}
          />
        )}
        {beside ? <span className="unit">{trade.choice(beside, "unit")}</span> : null}
      </div>
      {isPoints ? (
        <TraceTyped typed={typed} beside={beside ?? ""} before={pairsIn(before, beforeUnit ?? "")} />
      ) : null}
      {question.kind === "measured" ? <ReadAgain file={file} question={question} typed={typed} /> : null}
      {hasKeys ? (
        <NumberKeys typed={typed} others={isPoints ? undefined : otherUnits(beside)} onType={onType} />
      ) : null}
      <div className={hasKeys ? "dock-ends" : ""}>
        {hasKeys && !isPoints && typed === ""
          ? MISSING.map((word) => (
              <button type="button" key={word} onClick={() => onEnter(word)}>
                {trade.choice(word)}
              </button>
            ))
          : null}
        {question.kind === "measured" && typed !== "" ? (
          <button type="button" onClick={() => onType(`${typed.replace(/[;\s]+$/, "")}; `)}>
            {words.readOnceMore}
          </button>
        ) : null}
        <button type="submit" className="main enter">
          {typed === "" ? words.next : words.enter}
        </button>
      </div>
    </form>
  );
}
