import { type FormEvent, useEffect, useMemo, useState } from "react";
import { RefusalWords } from "../catalogue/refusal.tsx";
import { useLanguage } from "../catalogue/use-words.ts";
import { photoOfFile } from "../photo/encode.ts";
import type { ListedVisit } from "../practice/card.ts";
import type { Practice } from "../practice/practice.ts";
import { roomForPhoto } from "../practice/room.ts";
import { sha256Hex } from "../road.ts";
import { OpenVisit } from "../visit/open-visit.ts";
import { stepsFor } from "../visit/steps.ts";

interface Given {
  readonly practice: Practice;
  readonly file: File;
  /** Resolves once the file is let go. */
  readonly onKept: () => Promise<void>;
}

/** Visits that a photo may belong to: those that are not finished, and the last others. Working number, no source. */
const MOST_OFFERED = 30;

/** A photo that was handed over: which visit it belongs to, and what it shows. */
export function OnePhoto({ practice, file, onKept }: Given) {
  const language = useLanguage();
  const { takenIn: words, photo } = language.words;
  const [refused, setRefused] = useState<{ read: string; allowed: string }>();
  const offered = useMemo(() => offeredOf(practice.shown.get().visits), [practice]);
  const steps = useMemo(() => stepsFor(1, language), [language]);
  const keep = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const asked = new FormData(event.currentTarget);
    const taken = await photoOfFile(file);
    if ("read" in taken) return setRefused(taken);
    const noRoom = await roomForPhoto(taken.content.length);
    if (noRoom) return setRefused(noRoom);
    const visit = await OpenVisit.open(practice, String(asked.get("visit")));
    if (visit === undefined) return;
    const { type, content } = taken;
    const kept = { hash: sha256Hex(content), type, bytes: content.length, content };
    // What could not be kept is told by the line at the top, and the file stays where it was laid by.
    await visit.keepPhoto(kept, String(asked.get("of"))).then(onKept, () => undefined);
  };
  return (
    <form className="taken-photo" onSubmit={(event) => void keep(event)}>
      <Preview file={file} says={words.preview} />
      <label>
        <span>{words.whichVisit}</span>
        <select name="visit" required>
          {offered.map(({ subject, horseName, saddleName, day }) => (
            <option key={subject} value={subject}>
              {`${horseName}, ${saddleName}, ${day}`}
            </option>
          ))}
        </select>
      </label>
      <label>
        <span>{words.whatOf}</span>
        <select name="of" required defaultValue="">
          <option value="" disabled>
            {words.choose}
          </option>
          {steps.map((step) =>
            step.is === "asked" ? (
              <optgroup key={step.title} label={step.title}>
                {step.questions.map(({ path, asks }) => (
                  <option key={path} value={path}>
                    {asks}
                  </option>
                ))}
              </optgroup>
            ) : null,
          )}
        </select>
      </label>
      <p>{photo.noFaces}</p>
      <button type="submit" className="main" disabled={offered.length === 0}>
        {words.keepPhoto}
      </button>
      {refused ? (
        <p className="problem" role="alert">
          <RefusalWords read={refused.read} allowed={refused.allowed} />
        </p>
      ) : null}
    </form>
  );
}

function offeredOf(visits: readonly ListedVisit[]): readonly ListedVisit[] {
  const last = [...visits].reverse();
  return [...last.filter(({ finished }) => !finished), ...last.filter(({ finished }) => finished)].slice(
    0,
    MOST_OFFERED,
  );
}

function Preview({ file, says }: { file: File; says: string }) {
  const [address, setAddress] = useState("");
  useEffect(() => {
    const made = URL.createObjectURL(file);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [file]);
  return address === "" ? null : <img src={address} alt={says} />;
}
