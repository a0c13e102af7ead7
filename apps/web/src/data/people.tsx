import { useRef, useState } from "react";
import { useWords } from "../catalogue/use-words.ts";
import { plain } from "../home/find.ts";
import type { Practice } from "../practice/practice.ts";
import { grouped, type Held, signatureIn } from "../records.ts";

interface Named {
  readonly name: string;
  /** All that bear it: an owner who rides was told as owner and as rider. */
  readonly persons: readonly string[];
}

/** Whom the store of people knows, each name once and by the alphabet; who only signed is known by that. */
function named(held: readonly Held[]): readonly Named[] {
  const each = [...grouped(held, ({ person }) => person)].map(([person, own]) => {
    const signed = own.map(({ value }) => signatureIn(value)).find((one) => one !== undefined);
    const told = own.find(({ field }) => field !== "text" && field !== "signature");
    return { person, name: told?.value ?? signed?.by ?? own[0]?.value ?? "" };
  });
  const inOrder = new Intl.Collator();
  return [...grouped(each, ({ name }) => name)]
    .map(([name, all]) => ({ name, persons: all.map(({ person }) => person) }))
    .sort((a, b) => inOrder.compare(a.name, b.name));
}

/** Names that stand below one another at once; the others are found by letters. Working value: some screens of a phone. */
const MOST_SHOWN = 50;

/** Names that lie on this device, each with the key that erases it. Asked twice: it is the one thing here that cannot be undone. */
export function People({ practice }: { practice: Practice }) {
  const { data } = useWords();
  const [names, setNames] = useState(() => named(practice.names()));
  const [sought, setSought] = useState("");
  const [said, setSaid] = useState("");
  const [chosen, setChosen] = useState<Named>();
  const sure = useRef<HTMLDialogElement>(null);
  const ask = (one: Named) => {
    setChosen(one);
    sure.current?.showModal();
  };
  const erase = async () => {
    sure.current?.close();
    if (!chosen) return;
    for (const person of chosen.persons) await practice.erase(person);
    setNames(named(practice.names()));
    setSaid(data.erasedNow);
  };
  const found = names.filter(({ name }) => plain(name).includes(plain(sought)));
  return (
    <section className="data-part" aria-labelledby="people">
      <h2 id="people">{data.people}</h2>
      <p>{data.peopleSays}</p>
      <p role="status">{said}</p>
      {names.length > MOST_SHOWN ? (
        <label className="find">
          {data.findPerson}
          <input type="search" value={sought} onChange={(event) => setSought(event.target.value)} />
        </label>
      ) : null}
      {found.length > MOST_SHOWN ? <p>{data.morePeople(MOST_SHOWN, found.length)}</p> : null}
      <ul className="visit-list">
        {found.slice(0, MOST_SHOWN).map((one) => (
          <li key={one.name} className="person">
            <span>{one.name}</span>
            <button type="button" aria-label={data.erase(one.name)} onClick={() => ask(one)}>
              {data.eraseYes}
            </button>
          </li>
        ))}
      </ul>
      <dialog ref={sure} aria-labelledby="sure">
        <p id="sure">{data.eraseSure(chosen?.name ?? "")}</p>
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
