import { useEffect, useId, useState } from "react";
import type { Json } from "../case/put.ts";
import type { Problem } from "../road.ts";
import { linesOf, pointsOf } from "./typed.ts";

interface Props {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly points: unknown;
  readonly problem: Problem | undefined;
  readonly take: (points: Json, typed: string) => void;
}

/** Points typed or pasted as lines of two figures. They are taken together, by the key below them. */
export function Points({ id, label, hint, points, problem, take }: Props) {
  const told = useId();
  const stands = linesOf(points);
  const [typed, setTyped] = useState(stands);
  const [badLine, setBadLine] = useState("");
  useEffect(() => setTyped(stands), [stands]);
  const takeAll = () => {
    const read = pointsOf(typed);
    setBadLine(
      "line" in read
        ? `Line ${read.line}: read “${read.words}”. Allowed: two figures, parted by a space.`
        : "",
    );
    if ("points" in read) take(read.points, typed);
  };
  return (
    <div className="points">
      <label htmlFor={id}>{label}</label>
      <textarea
        id={id}
        data-reading={id}
        className="figure"
        rows={10}
        value={typed}
        spellCheck={false}
        aria-describedby={told}
        aria-invalid={badLine !== "" || problem !== undefined ? true : undefined}
        onChange={(event) => setTyped(event.target.value)}
      />
      <p
        id={told}
        className={badLine !== "" || problem ? "problem" : "quiet"}
        role={badLine !== "" || problem ? "alert" : undefined}
      >
        {badLine !== ""
          ? badLine
          : problem
            ? `Not taken: ${problem.where}, read “${problem.read}”. Allowed: ${problem.allowed}.`
            : hint}
      </p>
      <button type="button" onClick={takeAll} disabled={typed === stands}>
        Take these points
      </button>
    </div>
  );
}
