import { useRef, useState } from "react";
import { useWords } from "../catalogue/use-words.ts";
import type { Practice } from "../practice/practice.ts";
import type { Held } from "../records.ts";

/** Names that lie on this device, each with the key that erases it. Asked twice: it is the one thing here that cannot be undone. */
export function People({ practice }: { practice: Practice }) {
  const { data } = useWords();
  const [names, setNames] = useState(practice.names());
  const [said, setSaid] = useState("");
  const [chosen, setChosen] = useState<Held>();
  const sure = useRef<HTMLDialogElement>(null);
  const ask = (one: Held) => {
    setChosen(one);
    sure.current?.showModal();
  };
  const erase = async () => {
    sure.current?.close();
    if (!chosen) return;
    await practice.erase(chosen.person);
    setNames(practice.names());
    setSaid(data.erasedNow);
  };
  return (
    <section aria-labelledby="people">
      <h2 id="people">{data.people}</h2>
      <p>{data.peopleSays}</p>
      <p role="status">{said}</p>
      <ul className="visit-list">
        {names.map((one) => (
          <li key={one.salt} className="person">
            <span>{one.value}</span>
            <button type="button" aria-label={data.erase(one.value)} onClick={() => ask(one)}>
              {data.eraseYes}
            </button>
          </li>
        ))}
      </ul>
      <dialog ref={sure} aria-labelledby="sure">
        <p id="sure">{data.eraseSure(chosen?.value ?? "")}</p>
        <p className="app-links">
          <button type="button" className="main" onClick={() => sure.current?.close()}>
            {data.eraseNo}
          </button>
          <button type="button" onClick={() => void erase()}>
            {data.eraseYes}
          </button>
        </p>
      </dialog>
    </section>
  );
}
