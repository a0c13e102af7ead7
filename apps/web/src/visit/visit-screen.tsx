import {
  type FocusEvent,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  useSyncExternalStore,
} from "react";
import { useArrival } from "../arrival.ts";
import { today } from "../case/open-save.ts";
import { useLanguage, useWords } from "../catalogue/use-words.ts";
import { SavedLine } from "../home/saved-line.tsx";
import type { Practice } from "../practice/practice.ts";
import { betweenTabs } from "../practice/tabs.ts";
import { horseAddress, visitAddress } from "../route.ts";
import { AgreedStep, HandOverStep } from "./end-steps.tsx";
import { OpenVisit } from "./open-visit.ts";
import { StepScreen } from "./step-screen.tsx";
import { countSaid, type Step, stepsFor } from "./steps.ts";
import { WhatToDo } from "./what-to-do.tsx";

/** One visit. It opens where it was left, and every step can be left and entered again. */
export function VisitScreen({
  practice,
  subject,
  step,
  trueSize,
}: {
  practice: Practice;
  subject: string;
  step: number;
  trueSize: boolean;
}) {
  const { visit: words } = useWords();
  const [visit, setVisit] = useState<OpenVisit | "none">();
  useEffect(() => {
    void OpenVisit.open(practice, subject).then((opened) => setVisit(opened ?? "none"));
  }, [practice, subject]);
  if (visit === undefined) return null;
  if (visit === "none")
    return (
      <main className="app-main">
        <p>{words.notThere}</p>
        <a href="#/">{words.back}</a>
      </main>
    );
  return <OpenedVisit visit={visit} at={step} trueSize={trueSize} />;
}

function OpenedVisit({ visit, at, trueSize }: { visit: OpenVisit; at: number; trueSize: boolean }) {
  const language = useLanguage();
  const catalogue = language.words;
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const title = useArrival(at);
  useEffect(() => {
    const tabs = betweenTabs(() => void visit.heard());
    // What another tab said between reading the visit and listening would be missed.
    void visit.heard();
    const stop = visit.shown.listen(() => tabs.tell());
    return () => {
      stop();
      tabs.close();
    };
  }, [visit]);
  const horses = draft.file.horses.length;
  const steps = useMemo(() => stepsFor(horses, language), [horses, language]);
  const step = steps[at] ?? steps[0];
  if (!step) return null;
  return (
    <>
      <a className="skip" href="#visit">
        {catalogue.skip}
      </a>
      <header className="visit-head">
        <a className="key" href="#/">
          {catalogue.visit.back}
        </a>
        <a className="key" href={horseAddress(visit.line()?.horse ?? visit.subject)}>
          {catalogue.horse.title}
        </a>
        <h1 ref={title} tabIndex={-1}>
          {draft.file.horses[0]?.name} <span className="quiet">{step.title}</span>
        </h1>
      </header>
      {trueSize ? null : <StepList steps={steps} at={steps.indexOf(step)} visit={visit} />}
      <main id="visit" className="app-main visit-main" tabIndex={-1}>
        <SavedLine practice={visit.practice} />
        {visit.line()?.finished && !trueSize ? <Finished visit={visit} /> : null}
        {step.is === "asked" ? (
          <StepScreen key={at} visit={visit} step={step} next={nextAddress(visit, at)} />
        ) : null}
        {step.is === "what-to-do" ? (
          <WhatToDo visit={visit} address={visitAddress(visit.subject, at)} trueSize={trueSize} />
        ) : null}
        {step.is === "agreed" ? <AgreedStep visit={visit} /> : null}
        {step.is === "hand-over" ? <HandOverStep visit={visit} /> : null}
      </main>
    </>
  );
}

function Finished({ visit }: { visit: OpenVisit }) {
  const { visit: words } = useWords();
  const begin = async () => {
    const next = await visit.practice.beginNext(visit.subject, today());
    visit.practice.actions.add("began", "visit");
    location.hash = visitAddress(next, 0);
  };
  return (
    <p className="app-links">
      {words.finished}
      <button type="button" onClick={() => void begin()}>
        {words.nextVisit}
      </button>
    </p>
  );
}

const nextAddress = (visit: OpenVisit, at: number): string => visitAddress(visit.subject, at + 1);

/** A browser lets the step that gets the focus lie half outside the row. */
const intoSight = ({ target }: FocusEvent<HTMLElement>): void =>
  target.scrollIntoView({ block: "nearest", inline: "nearest" });

/** The way through the visit: each step a link with how much of it was said. */
function StepList({ steps, at, visit }: { steps: readonly Step[]; at: number; visit: OpenVisit }) {
  const { visit: words } = useWords();
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const current = useRef<HTMLAnchorElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the step that is entered comes into sight
  useLayoutEffect(() => {
    current.current?.scrollIntoView({ block: "nearest", inline: "center" });
  }, [at]);
  return (
    <nav className="steps" aria-label={words.steps} onFocus={intoSight}>
      <ol>
        {steps.map((step, index) => (
          <li key={step.title}>
            <a
              ref={index === at ? current : undefined}
              href={visitAddress(visit.subject, index)}
              aria-current={index === at ? "step" : undefined}
            >
              <span>{step.title}</span>
              {step.is === "asked" ? (
                <span className="figure">{words.said(countSaid(step, draft), step.questions.length)}</span>
              ) : null}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
}
