import { useState, useSyncExternalStore } from "react";
import { RefusalWords } from "../catalogue/refusal.tsx";
import { useWords } from "../catalogue/use-words.ts";
import { OF_VISIT, refusedOfVisit } from "../records.ts";
import type { Problem } from "../road.ts";
import { Agreement } from "./agreement.tsx";
import type { OpenVisit } from "./open-visit.ts";

/** What was agreed: what is done, its risks, the worse case, the limit. */
export function AgreedStep({ visit }: { visit: OpenVisit }) {
  const { visit: words } = useWords();
  return (
    <div className="end-step">
      <TextPlace visit={visit} at={OF_VISIT.agreedWork} label={words.work} />
      <TextPlace visit={visit} at={OF_VISIT.agreedRisks} label={words.risks} />
      <TextPlace visit={visit} at={OF_VISIT.agreedWorse} label={words.worse} />
      <TextPlace visit={visit} at={OF_VISIT.agreedLimit} label={words.limit} />
      <Agreement visit={visit} />
    </div>
  );
}

/** What was done, when to come back, and the end of the visit. */
export function HandOverStep({ visit }: { visit: OpenVisit }) {
  const { visit: words } = useWords();
  const finish = async () => {
    const now = new Date(visit.practice.machine.now()).toISOString();
    await visit.say([{ at: OF_VISIT.finished, value: now }]);
    location.hash = "#/";
  };
  return (
    <div className="end-step">
      <TextPlace visit={visit} at={OF_VISIT.done} label={words.done} />
      <WeeksPlace visit={visit} />
      <button type="button" className="main" onClick={() => void finish()}>
        {words.finish}
      </button>
    </div>
  );
}

function useSaid(visit: OpenVisit, at: string): unknown {
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  return draft.ofVisit.get(at);
}

/** Says it, or why it is not said: then what was typed stays in its field. */
function useSaying(visit: OpenVisit, at: string) {
  const [problem, setProblem] = useState<Problem>();
  const say = async (value: string | number): Promise<boolean> => {
    const refused = value === "" ? undefined : refusedOfVisit(at, value);
    setProblem(refused);
    if (refused) visit.practice.actions.add("refused", at);
    else await visit.say([value === "" ? { at } : { at, value }]);
    return refused === undefined;
  };
  return { problem, say };
}

function Refused({ problem }: { problem: Problem | undefined }) {
  if (!problem) return null;
  return (
    <span className="problem" role="alert">
      <RefusalWords read={problem.read} allowed={problem.allowed} />
    </span>
  );
}

/** Kept when the field is left, and when the page is hidden. */
function TextPlace({ visit, at, label }: { visit: OpenVisit; at: string; label: string }) {
  const said = useSaid(visit, at);
  const [typed, setTyped] = useState<string>();
  const { problem, say } = useSaying(visit, at);
  const leave = async () => {
    if (typed === undefined || typed === (said ?? "")) return;
    if (await say(typed)) setTyped(undefined);
  };
  return (
    <div>
      <label>
        {label}
        <textarea
          rows={2}
          value={typed ?? (typeof said === "string" ? said : "")}
          onChange={({ target }) => setTyped(target.value)}
          onBlur={() => void leave()}
        />
      </label>
      <Refused problem={problem} />
    </div>
  );
}

function WeeksPlace({ visit }: { visit: OpenVisit }) {
  const { visit: words } = useWords();
  const said = useSaid(visit, OF_VISIT.nextInWeeks);
  const { problem, say } = useSaying(visit, OF_VISIT.nextInWeeks);
  return (
    <div>
      <label>
        {words.nextInWeeks}
        <input
          inputMode="numeric"
          defaultValue={typeof said === "number" ? said : ""}
          onBlur={({ target }) => {
            const typed = target.value.trim();
            const weeks = /^\d+$/.test(typed) ? Number(typed) : typed;
            if (weeks !== (said ?? "")) void say(weeks);
          }}
        />
      </label>
      <Refused problem={problem} />
    </div>
  );
}
