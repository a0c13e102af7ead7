import { useSyncExternalStore } from "react";
import { useWords } from "../catalogue/use-words.ts";
import { daysSince, waitsTooLong } from "../practice/old-copy.ts";
import type { Practice } from "../practice/practice.ts";

/**
 * Always there: what is saved here, what is not yet copied elsewhere, how old the last copy is, and whether that is too old.
 * `remind`: with the way to a copy, where the screen has no other.
 */
export function SavedLine({ practice, remind = false }: { practice: Practice; remind?: boolean }) {
  const { saved, copy } = useWords();
  const shown = useSyncExternalStore(practice.shown.listen, practice.shown.get);
  const { copiedAt, notCopied, trouble, waitsSince } = shown;
  if (trouble)
    return (
      <p className="saved-here problem" role="alert">
        {saved[trouble]}
      </p>
    );
  const now = practice.machine.now();
  const days = daysSince(copiedAt, now);
  const waits = notCopied > 0 ? waitsTooLong(waitsSince, now) : undefined;
  return (
    <>
      <p className="saved-here">
        {saved.here} {saved.notCopied(notCopied)}{" "}
        {days === undefined ? saved.never : saved.copied(days < 1 ? saved.today : saved.daysAgo(days))}
        {waits === undefined || remind ? null : ` ${copy.waits(waits)}`}
      </p>
      {waits !== undefined && remind ? (
        <p className="copy-old">
          <strong>{copy.waits(waits)}</strong> {copy.waitsWhy}
          <a className="key" href="#/data">
            {copy.goCopy}
          </a>
        </p>
      ) : null}
    </>
  );
}
