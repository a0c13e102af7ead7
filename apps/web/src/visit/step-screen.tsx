import { lazy, Suspense, useEffect, useLayoutEffect, useRef, useState, useSyncExternalStore } from "react";
import { useTrade, useWords } from "../catalogue/use-words.ts";
import { NotKept } from "../records.ts";
import { aboutPath, drawingAgain, type Problem, type Question } from "../road.ts";
import { useUnits } from "../units/units.ts";
import { Dock, stays, toQuestion } from "./dock.tsx";
import type { OpenVisit } from "./open-visit.ts";
import { calledWords, saidWords } from "./said-words.ts";
import { StepPhotos } from "./step-photos.tsx";
import { askedNow, lineUnit, type Step, saidAt } from "./steps.ts";
import { keepTyping, typedBefore } from "./typing.ts";
import { hasZones, ZoneMap } from "./zone-map.tsx";

const StepDrawing = lazy(() => import("./step-drawing.tsx"));
/** Steps whose readings move what is drawn: back, head and how far one lies over the other. */
const DRAWN = /\.traces\[\d+\]\.points$|^saddle\.head\.spreadTips$|\.(laidOn|girthed)\.clearanceTop$/;

interface Given {
  readonly visit: OpenVisit;
  readonly step: Extract<Step, { is: "asked" }>;
  /** Where the step after this one is. */
  readonly next: string;
}

/** The questions of a step as a list, and the one that is being taken in the dock at the thumb. */
export function StepScreen({ visit, step, next }: Given) {
  const words = useWords().visit;
  const { draft, before } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const asked = askedNow(step, draft);
  const [path, setPath] = useState(
    () => asked.find((one) => saidAt(draft, one) === undefined)?.path ?? asked[0]?.path,
  );
  const units = useUnits();
  const [typed, setTyped] = useState("");
  const [again, setAgain] = useState(false);
  const [problem, setProblem] = useState<Problem>();
  const [aloud, setAloud] = useState(false);
  const screen = useRef<HTMLDivElement>(null);
  const wasAloud = useRef(aloud);
  // What is called out is typed next; and the list that comes back would scroll its key out of sight.
  useLayoutEffect(() => {
    if (wasAloud.current !== aloud) toQuestion(screen.current?.querySelector<HTMLElement>(".dock") ?? null);
    wasAloud.current = aloud;
  }, [aloud]);
  const at = asked.findIndex((one) => one.path === path);
  const question = asked[at];
  const once = question && drawingAgain(question, draft.file);
  const taken = again && once ? once : question;
  // Behind a tracing lies that of the visit before, and behind one that is drawn again the first.
  const behind = taken === once ? draft : before;

  // Read from the disk, it comes when it comes: a hand that was quicker is not thrown back to it.
  const hasBegun = useRef(false);
  useEffect(() => {
    void typedBefore(visit).then((before) => {
      const place = before?.path.replace(/repeats\[\d+\]$/, "points");
      if (hasBegun.current || before === undefined || !step.questions.some((one) => one.path === place))
        return;
      setPath(place);
      setAgain(place !== before.path);
      setTyped(before.typed);
    });
  }, [visit, step]);

  const type = (text: string) => {
    hasBegun.current = true;
    setTyped(text);
    if (taken) keepTyping(visit, taken.path, text);
  };
  const goTo = (to: string | undefined) => {
    hasBegun.current = true;
    setPath(to);
    setAgain(false);
    setTyped("");
    setProblem(undefined);
    keepTyping(visit, "", "");
  };
  const goOn = () => {
    // What was just entered may ask for more: a tracing for its own questions, and for the next one.
    const now = askedNow(step, visit.shown.get().draft);
    const later = now[now.findIndex((one) => one.path === path) + 1];
    if (later) goTo(later.path);
    else location.hash = next;
  };
  const enter = async (text: string) => {
    if (!taken) return;
    if (text.trim() === "") return goOn();
    try {
      const refused = await visit.answer(taken.path, text, units);
      if (refused) setProblem(refused);
      // After a drawing the spread of all is looked at, and one more may be drawn.
      else if (again) goTo(path);
      else goOn();
    } catch (error) {
      // What could not be kept stays in its field; the line at the top says why.
      if (!(error instanceof NotKept)) throw error;
    }
  };
  return (
    <div ref={screen} className={aloud ? "step aloud" : "step"}>
      <div className="step-keys">
        <button type="button" aria-pressed={aloud} onClick={() => setAloud(!aloud)}>
          {aloud ? words.callOutEnd : words.callOut}
        </button>
        <button type="button" onClick={() => void visit.undo()}>
          {words.undo}
        </button>
        <StepPhotos visit={visit} step={step} question={question} />
      </div>
      {aloud ? (
        <Heard question={asked[at - 1]} visit={visit} />
      ) : (
        <div className="step-read">
          {hasZones(asked) ? <ZoneMap asked={asked} path={path} draft={draft} onGo={goTo} /> : null}
          {step.questions.some((one) => DRAWN.test(one.path)) ? (
            <Suspense fallback={null}>
              <StepDrawing draft={draft} before={before} />
            </Suspense>
          ) : null}
          <QuestionList asked={asked} path={path} visit={visit} onGo={goTo} />
        </div>
      )}
      {question && taken ? (
        <Dock
          key={taken.path}
          file={draft.file}
          question={taken}
          said={saidAt(draft, taken)}
          before={behind && saidAt(behind, question)}
          beforeUnit={behind && lineUnit(behind, question)}
          typed={typed}
          problem={problem}
          onType={type}
          onEnter={(text) => void enter(text)}
          onClear={() => void visit.clear(question.path)}
          onDrawAgain={once && !again ? () => setAgain(true) : undefined}
        />
      ) : null}
    </div>
  );
}

/** What was just taken, said back in words for the one who called it. */
function Heard({ question, visit }: { question: Question | undefined; visit: OpenVisit }) {
  const words = useWords().visit;
  const trade = useTrade();
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const said = question && saidAt(draft, question);
  return (
    <p className="heard" role="status">
      {question && said !== undefined
        ? words.heard(calledWords(said, question, trade), aboutPath(question.path, trade.said))
        : ""}
    </p>
  );
}

interface Listed {
  readonly asked: readonly Question[];
  readonly path: string | undefined;
  readonly visit: OpenVisit;
  readonly onGo: (path: string) => void;
}

function QuestionList({ asked, path, visit, onGo }: Listed) {
  const words = useWords().visit;
  const trade = useTrade();
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const current = useRef<HTMLButtonElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the row that is taken comes into sight when another is taken
  useLayoutEffect(() => {
    // Where the question itself is brought into sight, its row does not pull the page away from it.
    if (stays(document.querySelector(".dock"))) current.current?.scrollIntoView({ block: "center" });
  }, [path]);
  const differ = new Set(draft.differ.map((one) => one.at));
  const erased = new Set(draft.erased);
  return (
    <ol className="questions">
      {asked.map((one) => {
        const said = saidAt(draft, one);
        return (
          <li key={one.path}>
            <button
              type="button"
              data-at={one.path}
              data-said={said === undefined ? "no" : "yes"}
              ref={one.path === path ? current : undefined}
              aria-current={one.path === path ? "true" : undefined}
              onClick={() => onGo(one.path)}
            >
              <span>{one.asks}</span>
              <span className={said === undefined ? "quiet" : "figure"}>
                {erased.has(one.path)
                  ? words.erased
                  : said === undefined
                    ? words.open
                    : saidWords(said, one, trade)}
              </span>
              {differ.has(one.path) ? <span className="stop-word">{words.differ}</span> : null}
            </button>
          </li>
        );
      })}
    </ol>
  );
}
