import { useMemo } from "react";
import { handOut, today } from "../case/open-save.ts";
import { SendOn } from "../case/send-on.tsx";
import { useWords } from "../catalogue/use-words.ts";

/** The visit's readings as a case file: to keep, or for a colleague, who can take it in on another device. */
export function CaseOut({ text }: { text: string }) {
  const { caseOut: words } = useWords();
  const name = `visit-${today()}`;
  const files = useMemo(
    () => [
      new File([text], `${name}.json`, { type: "application/json" }),
      // Not every browser lets a page send JSON on; each lets it send plain text, and a case is read by what is in it.
      new File([text], `${name}.json.txt`, { type: "text/plain" }),
    ],
    [text, name],
  );
  return (
    <section className="data-part" aria-labelledby="case-out">
      <h2 id="case-out">{words.title}</h2>
      <p>{words.says}</p>
      <p className="app-links">
        <button type="button" onClick={() => handOut(`${name}.json`, text, "application/json")}>
          {words.keep}
        </button>
        <SendOn what={words.file} files={files} />
      </p>
    </section>
  );
}
