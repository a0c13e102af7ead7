import { useState, useSyncExternalStore } from "react";
import { useWords } from "../catalogue/use-words.ts";
import { OF_VISIT } from "../records.ts";
import { Agreement } from "./agreement.tsx";
import type { OpenVisit } from "./open-visit.ts";

/** Longest text of one of these fields. Working limit, no source. */
const LONGEST = 2000;
const WEEKS_MOST = 104;

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

/** Kept when the field is left, and when the page is hidden. */
function TextPlace({ visit, at, label }: { visit: OpenVisit; at: string; label: string }) {
  const said = useSaid(visit, at);
  const [typed, setTyped] = useState<string>();
  const leave = () => {
    if (typed === undefined || typed === (said ?? "")) return;
    void visit.say([typed === "" ? { at } : { at, value: typed }]).then(() => setTyped(undefined));
  };
  return (
    <label>
      {label}
      <textarea
        rows={2}
        maxLength={LONGEST}
        value={typed ?? (typeof said === "string" ? said : "")}
        onChange={({ target }) => setTyped(target.value)}
        onBlur={leave}
      />
    </label>
  );
}

function WeeksPlace({ visit }: { visit: OpenVisit }) {
  const { visit: words } = useWords();
  const said = useSaid(visit, OF_VISIT.nextInWeeks);
  return (
    <label>
      {words.nextInWeeks}
      <input
        type="number"
        min={1}
        max={WEEKS_MOST}
        defaultValue={typeof said === "number" ? said : ""}
        onBlur={({ target }) => {
          const weeks = Number(target.value);
          const isWeeks = Number.isInteger(weeks) && weeks >= 1 && weeks <= WEEKS_MOST;
          if (isWeeks && weeks !== said) void visit.say([{ at: OF_VISIT.nextInWeeks, value: weeks }]);
        }}
      />
    </label>
  );
}
