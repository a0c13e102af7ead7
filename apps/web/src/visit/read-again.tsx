import { useMemo } from "react";
import { useWords } from "../catalogue/use-words.ts";
import {
  type CaseFile,
  drawnAgain,
  type Question,
  readingOf,
  repeatedReading,
  show,
  unitCalled,
  withUnitBeside,
} from "../road.ts";
import { shownMm } from "../units/shown.ts";
import { useUnits } from "../units/units.ts";

/** A mean of readings is shown to this in the usual unit: finer than any rule or protractor of a yard tells (assumption). */
const MEAN_TO = 0.5;

interface Given {
  readonly file: CaseFile;
  readonly question: Question;
}

/** Readings of one thing that are parted by ";": how many, their mean, and between which two they all lie. */
export function ReadAgain({ file, question: { path }, typed }: Given & { typed: string }) {
  const { visit: words } = useWords();
  const units = useUnits();
  const found = useMemo(
    () => repeatedReading(path, readingOf(withUnitBeside(file, path, typed, units))),
    [file, path, typed, units],
  );
  if (found === undefined) return null;
  const { kind, count, mean, least, most } = found;
  const unit = unitCalled(kind === "length" || kind === "mass" ? units[kind] : "", kind);
  const [average, lo, hi] = [mean, least, most].map((one) => show(one, kind, unit, MEAN_TO));
  return <p role="status">{words.readAgain(count, average ?? "", lo ?? "", hi ?? "")}</p>;
}

/** How often a tracing was drawn, and how far its drawings stray from one another. */
export function DrawnAgainTold({ file, question: { path } }: Given) {
  const { visit: words } = useWords();
  const units = useUnits();
  const found = useMemo(() => drawnAgain(file, path.replace(/\.(points|repeats\[\d+\])$/, "")), [file, path]);
  if (found === undefined) return null;
  return (
    <p role="status" className={typeof found === "string" ? "problem" : undefined}>
      {typeof found === "string"
        ? words.drawnApart
        : words.drawnAgain(found.drawings, shownMm(found.spreadMm, found.spreadMm / 4, units))}
    </p>
  );
}
