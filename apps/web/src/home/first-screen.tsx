import { type FormEvent, useEffect, useMemo, useState, useSyncExternalStore } from "react";
import { useArrival } from "../arrival.ts";
import { today } from "../case/open-save.ts";
import { chooseLanguage } from "../catalogue/chosen.ts";
import { EN } from "../catalogue/en.ts";
import { RefusalWords } from "../catalogue/refusal.tsx";
import { LANGUAGES, useWords } from "../catalogue/use-words.ts";
import { Looks } from "../look/looks.tsx";
import { takeNewVersion, useOffline } from "../offline.ts";
import type { ListedVisit } from "../practice/card.ts";
import type { Practice } from "../practice/practice.ts";
import { type Problem, refusedName } from "../road.ts";
import { horseAddress, visitAddress } from "../route.ts";
import { laidBy } from "../taken-in/laid-by.ts";
import { UnitChoice } from "../units/unit-choice.tsx";
import { finderOf } from "./find.ts";
import { SavedLine } from "./saved-line.tsx";

interface Given {
  readonly practice: Practice;
  readonly language: string;
  readonly onLanguage: (tag: string) => void;
}

/** The next horse, what is unfinished, and every visit by a few letters. */
export function FirstScreen({ practice, language, onLanguage }: Given) {
  const { first, data, help, note, horse } = useWords();
  const { visits } = useSyncExternalStore(practice.shown.listen, practice.shown.get);
  const title = useArrival("first");
  const [sought, setSought] = useState("");
  const people = practice.names();
  const find = useMemo(() => finderOf(visits, people), [visits, people]);
  const found = find(sought);
  const unfinished = found.filter(({ finished }) => !finished);
  const before = found.filter(({ finished }) => finished);
  return (
    <>
      <header className="page-head">
        <h1 ref={title} tabIndex={-1}>
          Treewright
        </h1>
        <Languages language={language} onLanguage={onLanguage} />
        <UnitChoice />
        <Looks />
      </header>
      <main className="app-main">
        <SavedLine practice={practice} remind />
        <OfflineLine />
        <TakenInLine />
        {visits.some(({ invented }) => invented) ? <p className="demo">{first.demo}</p> : null}
        {note === "" ? null : <p>{note}</p>}
        {unfinished.slice(0, MOST_AS_NEXT).map((visit) => (
          <VisitRow key={visit.subject} visit={visit} isNext before={practice.visitBefore(visit)} />
        ))}
        <BeginVisit practice={practice} />
        <section aria-labelledby="before">
          <h2 id="before">{first.before}</h2>
          <label className="find">
            {first.find}
            <input type="search" value={sought} onChange={(event) => setSought(event.target.value)} />
          </label>
          <p className="only-heard" role="status">
            {first.found(found.length)}
          </p>
          {visits.length === 0 ? <p>{first.nothingYet}</p> : null}
          <ul className="visit-list">
            {unfinished.slice(MOST_AS_NEXT, MOST_SHOWN).map((visit) => (
              <li key={visit.subject}>
                <VisitRow visit={visit} before={undefined} />
              </li>
            ))}
            {before.slice(0, MOST_SHOWN).map((visit) => (
              <li key={visit.subject}>
                <VisitRow visit={visit} before={undefined} />
                <a className="key horse-key" href={horseAddress(visit.horse)}>
                  {horse.of(visit.horseName)}
                </a>
              </li>
            ))}
          </ul>
        </section>
        <nav className="app-links">
          <a className="key" href="#/data">
            {data.title}
          </a>
          <a className="key" href="#/help">
            {help.title}
          </a>
          <a className="key" href="owner.html">
            {first.owner}
          </a>
          <a className="key" href="bench.html" hrefLang="en">
            {first.caseFile}
          </a>
        </nav>
      </main>
    </>
  );
}

/** What is ready without signal; and a new version, which is taken here and never within a visit. */
function OfflineLine() {
  const { offline } = useWords();
  const { state, newVersion } = useOffline();
  return (
    <p>
      {offline[state]}{" "}
      {newVersion ? (
        <button type="button" onClick={() => takeNewVersion(newVersion)}>
          {offline.take}
        </button>
      ) : null}
    </p>
  );
}

/** What another app handed over, and nobody has yet said where it belongs. */
function TakenInLine() {
  const { takenIn } = useWords();
  const [count, setCount] = useState(0);
  useEffect(() => {
    laidBy().then(
      (waiting) => setCount(waiting.length),
      () => setCount(0),
    );
  }, []);
  return count === 0 ? null : (
    <p>
      <a className="key" href="#/taken-in">
        {takenIn.go(count)}
      </a>
    </p>
  );
}

/** Visits that are shown large; a table brought in may begin hundreds. */
const MOST_AS_NEXT = 5;

/** Rows shown at once; a few letters find the others. */
const MOST_SHOWN = 60;

function VisitRow({
  visit,
  before,
  isNext,
}: {
  visit: ListedVisit;
  before: ListedVisit | undefined;
  isNext?: boolean;
}) {
  const { first } = useWords();
  const flagged = visit.horseAnswer.startsWith("vet") ? first.flagged : "";
  // The invented practice speaks English; what a fitter types is in whatever language that is.
  const lang = visit.invented ? "en" : undefined;
  return (
    <a className={isNext ? "visit-row next" : "visit-row"} href={visitAddress(visit.subject)}>
      <strong lang={lang}>{visit.horseName}</strong>
      <span>
        <span lang={lang}>{[visit.yard, visit.saddleName].filter((part) => part !== "").join(", ")}</span>
        {visit.invented ? ` (${first.invented})` : ""}
      </span>
      <span className="figure">{visit.day}</span>
      {visit.minutes === undefined ? null : <span>{first.minutes(visit.minutes)}</span>}
      {flagged === "" ? null : <span className="stop-word">{flagged}</span>}
      {isNext && before?.done ? (
        <span>
          {first.lastTime}: <span lang={lang}>{before.done}</span>
        </span>
      ) : null}
      {visit.done === "" ? null : <span lang={lang}>{visit.done}</span>}
      {isNext ? <span className="key main">{first.goOn}</span> : null}
    </a>
  );
}

function BeginVisit({ practice }: { practice: Practice }) {
  const { first } = useWords();
  const [name, setName] = useState("");
  const [problem, setProblem] = useState<Problem>();
  const begin = async (event: FormEvent) => {
    event.preventDefault();
    const refused = name.trim() === "" ? undefined : refusedName(name.trim());
    setProblem(refused);
    if (refused) return;
    const subject = await practice.begin([
      { at: "visit.date", value: today() },
      { at: "horses[0].name", value: name.trim() || first.horse },
      // An empty case calls its saddle so in English already.
      ...(first.saddle === EN.first.saddle ? [] : [{ at: "saddle.name", value: first.saddle }]),
    ]);
    practice.actions.add("began", "visit");
    location.hash = visitAddress(subject, 0);
  };
  return (
    <form className="begin" onSubmit={(event) => void begin(event)}>
      <label>
        {first.horseName}
        <input value={name} onChange={(event) => setName(event.target.value)} />
      </label>
      <button type="submit">{first.begin}</button>
      {problem ? (
        <p className="problem" role="alert">
          <RefusalWords read={problem.read} allowed={problem.allowed} />
        </p>
      ) : null}
    </form>
  );
}

function Languages({ language, onLanguage }: { language: string; onLanguage: (tag: string) => void }) {
  const { first } = useWords();
  return (
    <select
      className="languages"
      aria-label={first.language}
      value={language}
      onChange={({ target }) => {
        chooseLanguage(target.value);
        onLanguage(target.value);
      }}
    >
      {Object.entries(LANGUAGES).map(([tag, { name }]) => (
        <option key={tag} value={tag} lang={tag.startsWith("x-") ? undefined : tag}>
          {name}
        </option>
      ))}
    </select>
  );
}
