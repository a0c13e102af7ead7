import { useSyncExternalStore } from "react";
import { useWords } from "../catalogue/use-words.ts";
import type { Practice } from "../practice/practice.ts";

const DAY_MS = 86_400_000;

/** Always there: what is saved here, what is not yet copied elsewhere, and how old the last copy is. */
export function SavedLine({ practice }: { practice: Practice }) {
  const { saved } = useWords();
  const { copiedAt, notCopied, trouble } = useSyncExternalStore(practice.shown.listen, practice.shown.get);
  if (trouble)
    return (
      <p className="saved-here problem" role="alert">
        {saved[trouble]}
      </p>
    );
  const days =
    copiedAt === undefined ? undefined : Math.floor((practice.machine.now() - Date.parse(copiedAt)) / DAY_MS);
  return (
    <p className="saved-here">
      {saved.here} {saved.notCopied(notCopied)}{" "}
      {days === undefined ? saved.never : saved.copied(days < 1 ? saved.today : saved.daysAgo(days))}
    </p>
  );
}
