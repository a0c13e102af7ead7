import { lazy, Suspense } from "react";
import { useTrade, useWords } from "../catalogue/use-words.ts";
import { aboutPath, fieldAt, readCaseValue, type Say } from "../road.ts";
import type { OpenVisit } from "./open-visit.ts";

const BenchOfVisit = lazy(() => import("./bench-of-visit.tsx"));

interface Given {
  readonly visit: OpenVisit;
  /** Where this step is. */
  readonly address: string;
  readonly trueSize: boolean;
}

/** The answers, the drawing and the paper, worked out from what was said so far. */
export function WhatToDo({ visit, address, trueSize }: Given) {
  const { visit: words } = useWords();
  const trade = useTrade();
  const { draft } = visit.shown.get();
  const read = readCaseValue(draft.file);
  if (!read.ok)
    return (
      <section className="problem">
        <p>{words.problems}</p>
        <ul>
          {read.problems.map(({ where, read: got, allowed }) => (
            <li key={where}>
              {whereWords(where, trade.said)}: {words.refused(trade.said(got), trade.said(allowed))}
            </li>
          ))}
        </ul>
      </section>
    );
  return (
    <Suspense fallback={<p>{words.waiting}</p>}>
      <BenchOfVisit
        text={`${JSON.stringify(read.file, undefined, 2)}\n`}
        visit={visit}
        address={address}
        trueSize={trueSize}
      />
    </Suspense>
  );
}

/** A refused place in the words of the language: core names it by its path, with English words behind it. */
function whereWords(where: string, say: Say): string {
  const path = where.replace(/ \(.*$/, "");
  return fieldAt(path) === undefined ? where : aboutPath(path, say);
}
