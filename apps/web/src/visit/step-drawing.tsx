import { useMemo } from "react";
import { useWords } from "../catalogue/use-words.ts";
import type { VisitDraft } from "../records.ts";
import { frontTrace, headAsRead, isRead, readCaseValue, type Survey } from "../road.ts";
import { shownMm } from "../units/shown.ts";
import { useUnits } from "../units/units.ts";

type Place = readonly [number, number];

/** How much of a back is shown below its top where no head reaches further, mm. Working choice, no source. */
const SHOWN_MM = 120;
const MARGIN_MM = 12;
const BAR_MM = 50;

interface Given {
  readonly draft: VisitDraft;
  readonly before: VisitDraft | undefined;
}

/**
 * What was read so far, drawn: the back at the front station, the last one behind it, and the head over it at the clearance that was
 * read; by itself where none was. Only readings are in it: nothing is worked out here.
 */
export default function StepDrawing({ draft, before }: Given) {
  const { stepDrawing: words, bench } = useWords();
  const units = useUnits();
  const now = useMemo(() => drawn(draft), [draft]);
  const last = useMemo(() => before && drawn(before), [before]);
  const back = now?.back;
  const head = now?.head;
  if (back === undefined && head === undefined) return null;
  const over = back !== undefined && now?.clearanceMm !== undefined;
  const headAt = over ? raised(head, now.clearanceMm ?? 0) : back === undefined ? head : undefined;
  const lines = [
    ...(last?.back && back ? [{ name: "before", places: last.back }] : []),
    ...(back ? [{ name: "now", places: back }] : []),
    ...(headAt ? [{ name: "head", places: headAt }] : []),
  ];
  const depth = Math.max(SHOWN_MM, ...(headAt ?? []).map(([, z]) => -z)) + MARGIN_MM;
  const shown = lines.flatMap(({ places }) => places).filter(([, z]) => z > -depth);
  const half = Math.max(...shown.map(([y]) => Math.abs(y))) + MARGIN_MM;
  const top = Math.max(0, ...shown.map(([, z]) => z)) + MARGIN_MM;
  return (
    <figure className="step-drawing">
      <figcaption>{words.title}</figcaption>
      <svg viewBox={`${-half} ${-top} ${2 * half} ${top + depth}`} aria-hidden="true">
        <path d={`M0 ${-top}V${depth}`} className="middle" />
        {lines.map(({ name, places }) => (
          <polyline key={name} className={name} points={places.map(([y, z]) => `${y},${-z}`).join(" ")} />
        ))}
        <line x1={-BAR_MM / 2} x2={BAR_MM / 2} y1={depth - 4} y2={depth - 4} />
      </svg>
      <p className="sides" dir="ltr">
        <span>{bench.sides.near}</span> <span>{words.bar(BAR_MM)}</span> <span>{bench.sides.off}</span>
      </p>
      <p>
        {back ? words.back : ""} {last?.back && back ? words.last : ""}{" "}
        {headAt ? (over ? words.headOver(shownMm(now.clearanceMm ?? 0, 1, units)) : words.headAlone) : ""}{" "}
        {head && !headAt ? words.noClearance : ""}
      </p>
    </figure>
  );
}

interface Drawn {
  readonly back: readonly Place[] | undefined;
  readonly head: readonly Place[] | undefined;
  readonly clearanceMm: number | undefined;
}

function drawn({ file }: VisitDraft): Drawn | undefined {
  const read = readCaseValue(file);
  if (!read.ok) return undefined;
  const { survey } = read;
  const head = headAsRead(survey.saddle);
  return {
    back: frontTrace(survey, 0)?.outline,
    // One line from tip to tip.
    head: head && [...[...head.near].reverse(), ...head.off],
    clearanceMm: clearanceOf(survey),
  };
}

/** Girthed up without a rider, else as laid on. */
function clearanceOf({ horses: [horse] }: Survey): number | undefined {
  const read = [horse?.girthed.clearanceTop, horse?.laidOn.clearanceTop].find((one) => one && isRead(one));
  return read && isRead(read) ? read.value : undefined;
}

const raised = (head: readonly Place[] | undefined, byMm: number): readonly Place[] | undefined =>
  head?.map(([y, z]): Place => [y, z + byMm]);
