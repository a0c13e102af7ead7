import { useCallback, useEffect, useState } from "react";
import { useArrival } from "../arrival.ts";
import { useWords } from "../catalogue/use-words.ts";
import { SavedLine } from "../home/saved-line.tsx";
import type { Practice } from "../practice/practice.ts";
import { type LaidBy, laidBy, letGo } from "./laid-by.ts";
import { OneFile } from "./one-file.tsx";
import { OnePhoto } from "./one-photo.tsx";

/** What another app handed over, one after the other: where it belongs is said here, and only then is it let go. */
export default function TakenInScreen({ practice, kept }: { practice: Practice; kept: boolean }) {
  const { takenIn: words, visit } = useWords();
  const title = useArrival("taken-in");
  const [waiting, setWaiting] = useState<readonly LaidBy[]>();
  const look = useCallback(() => void laidBy().then(setWaiting), []);
  useEffect(look, [look]);
  const done = async (one: LaidBy) => {
    await letGo(one);
    look();
  };
  return (
    <main className="app-main">
      <a href="#/">{visit.back}</a>
      <h1 ref={title} tabIndex={-1}>
        {words.title}
      </h1>
      <SavedLine practice={practice} />
      {kept ? null : (
        <p className="problem" role="alert">
          {words.notLaidBy}
        </p>
      )}
      <p role="status">{waiting === undefined ? words.looking : words.waits(waiting.length)}</p>
      {waiting?.map((one) => {
        const Shown = one.file.type.startsWith("image/") ? OnePhoto : OneFile;
        return (
          <section key={one.address} className="data-part" aria-label={one.file.name}>
            <h2>{one.file.name}</h2>
            <Shown practice={practice} file={one.file} onKept={() => done(one)} />
            <button type="button" onClick={() => void done(one)}>
              {words.letGo}
            </button>
          </section>
        );
      })}
    </main>
  );
}
