import { useState } from "react";
import { useArrival } from "../arrival.ts";
import { handOut, today } from "../case/open-save.ts";
import { useWords } from "../catalogue/use-words.ts";
import type { Practice } from "../practice/practice.ts";
import { Access } from "./access.tsx";
import { problemText } from "./problem-file.ts";

/** What to do when something went wrong, and who can use the app. */
export function HelpScreen({ practice, language }: { practice: Practice; language: string }) {
  const { help, visit } = useWords();
  const title = useArrival("help");
  return (
    <main className="app-main words">
      <a href="#/">{visit.back}</a>
      <h1 ref={title} tabIndex={-1}>
        {help.title}
      </h1>
      <ProblemFile practice={practice} language={language} />
      <Access />
      <section aria-labelledby="others">
        <h2 id="others">{help.others.title}</h2>
        <p>{help.others.says}</p>
        <p className="app-links">
          <a className="key" href="notices.txt" hrefLang="en">
            {help.others.look}
          </a>
        </p>
      </section>
    </main>
  );
}

/** The file is shown whole before it can be saved, and what is saved is what was shown. */
function ProblemFile({ practice, language }: { practice: Practice; language: string }) {
  const words = useWords().help.problem;
  const [text, setText] = useState<string>();
  const [said, setSaid] = useState("");
  const make = async () => {
    setSaid("");
    setText(await problemText(practice, language));
  };
  const save = (shown: string) => {
    handOut(`treewright-problem-${today()}.json`, shown, "application/json");
    setSaid(words.saved);
  };
  return (
    <section aria-labelledby="problem">
      <h2 id="problem">{words.title}</h2>
      <p>{words.says}</p>
      <p>{words.without}</p>
      <p className="app-links">
        <button type="button" onClick={() => void make()}>
          {words.make}
        </button>
        {text === undefined ? null : (
          <button type="button" className="main" onClick={() => save(text)}>
            {words.save}
          </button>
        )}
      </p>
      <p role="status">{said}</p>
      {text === undefined ? null : (
        <figure>
          <figcaption>{words.whole}</figcaption>
          <pre className="whole-file">{text}</pre>
        </figure>
      )}
      <p>{words.tell}</p>
    </section>
  );
}
