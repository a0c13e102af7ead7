import { memo, useEffect, useId, useState } from "react";
import type { Json, Path } from "../case/put.ts";
import type { Refused } from "../desk/desk.ts";
import { ABSENT, type FieldRecord, stepsOf } from "../road.ts";
import { choiceWords } from "./naming.ts";
import { fromFile, toFile } from "./typed.ts";

export interface FieldProps {
  readonly path: string;
  readonly label: string;
  readonly field: FieldRecord;
  /** What stands in the case file at this place, as typed. */
  readonly value: unknown;
  readonly refused: Refused | undefined;
  readonly take: (path: Path, value: Json, typed: string) => void;
  readonly clear: (path: Path) => void;
}

/** One line of the table: its name, what was read, and the sentence of what is not accepted. */
export const Field = memo(function Field(props: FieldProps) {
  const { path, label, field, refused } = props;
  const id = useId();
  const unit = field.unit ? field.unit : "";
  return (
    <div className={refused ? "reading refused" : "reading"}>
      <label htmlFor={path}>{label}</label>
      <div className="read-box">
        <Control {...props} errorId={`${id}-problem`} />
        {unit ? <span className="unit figure">{unit}</span> : null}
      </div>
      {refused ? (
        <p id={`${id}-problem`} className="problem" role="alert">
          Not taken: read “{refused.typed}”. Allowed: {refused.problem.allowed}.
        </p>
      ) : (
        <p id={`${id}-problem`} className="allowed quiet">
          {allowedWords(field)}
        </p>
      )}
    </div>
  );
});

function Control(props: FieldProps & { errorId: string }) {
  if (props.field.kind === "choice" || props.field.kind === "true-or-false") return <Choice {...props} />;
  if (props.field.kind === "whole-number") return <Grade {...props} />;
  return props.field.kind === "measured" ? <MeasuredBox {...props} /> : <Line {...props} />;
}

function Choice({ path, field, value, refused, take, errorId }: FieldProps & { errorId: string }) {
  const choices = field.words ?? ["true", "false"];
  const shown = refused?.typed ?? (value === undefined ? field.otherwise : String(value));
  return (
    <select
      id={path}
      data-reading={path}
      value={shown}
      aria-describedby={errorId}
      onChange={(event) => {
        const typed = event.target.value;
        take(stepsOf(path), field.kind === "true-or-false" ? typed === "true" : typed, typed);
      }}
    >
      {choices.includes(shown) ? null : <option value={shown}>not typed yet</option>}
      {choices.map((choice) => (
        <option key={choice} value={choice}>
          {choiceWords(choice)}
        </option>
      ))}
    </select>
  );
}

/** A whole number of few steps; without it, what it belongs to was not looked at. */
function Grade({ path, field, value, take, clear, errorId }: FieldProps & { errorId: string }) {
  const { lo = 0, hi = 0 } = field;
  return (
    <select
      id={path}
      data-reading={path}
      value={value === undefined ? "" : String(value)}
      aria-describedby={errorId}
      onChange={({ target }) =>
        target.value === ""
          ? clear(stepsOf(path).slice(0, -1))
          : take(stepsOf(path), Number(target.value), target.value)
      }
    >
      <option value="">not looked</option>
      {Array.from({ length: hi - lo + 1 }, (_, step) => lo + step).map((grade) => (
        <option key={grade}>{grade}</option>
      ))}
    </select>
  );
}

/** A figure, or the word for why there is none. */
function MeasuredBox(props: FieldProps & { errorId: string }) {
  const { path, value, label, take } = props;
  const absent = ABSENT.find((word) => word === value) ?? (value === undefined ? "not-looked" : undefined);
  return (
    <>
      <Line {...props} value={absent === undefined ? value : ""} figure />
      {absent === undefined ? null : (
        <select
          aria-label={`${label}: why it is missing`}
          value={absent}
          onChange={(event) => take(stepsOf(path), event.target.value, event.target.value)}
        >
          {ABSENT.map((word) => (
            <option key={word} value={word}>
              {choiceWords(word)}
            </option>
          ))}
        </select>
      )}
    </>
  );
}

/** Typed text is taken at Enter or on leaving. An emptied measure is "not looked", never zero. */
function Line({
  path,
  field,
  value,
  refused,
  take,
  errorId,
  figure,
}: FieldProps & { errorId: string; figure?: boolean }) {
  const stands = refused?.typed ?? fromFile(value);
  const [typed, setTyped] = useState(stands);
  useEffect(() => setTyped(stands), [stands]);
  const leave = () => {
    if (typed === stands) return;
    const kept: Json =
      field.kind === "words" || field.kind === "date"
        ? typed
        : toFile(typed.trim() === "" ? "not-looked" : typed);
    take(stepsOf(path), kept, typed);
  };
  return (
    <input
      id={path}
      data-reading={path}
      className={figure ? "figure" : undefined}
      value={typed}
      autoComplete="off"
      autoCapitalize="off"
      spellCheck={false}
      aria-invalid={refused ? true : undefined}
      aria-describedby={errorId}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={leave}
    />
  );
}

/** The allowed range under a field, where it has one. */
function allowedWords({ kind, lo, hi, unit, by }: FieldRecord): string {
  if (kind !== "measured" || lo === undefined || hi === undefined) return "";
  return `${lo} to ${hi}${unit ? ` ${unit}` : ""}${by ? `, ${choiceWords(by)}` : ""}`;
}
