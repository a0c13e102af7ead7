import { proxy } from "comlink";
import { useEffect, useRef, useState } from "react";
import { handOut, today } from "../case/open-save.ts";
import { useLanguage } from "../catalogue/use-words.ts";
import { DATA_BASE } from "../practice/machine.ts";
import type { Practice } from "../practice/practice.ts";
import { besideThePage } from "./beside.ts";
import { makePapers } from "./make-papers.ts";
import type { Papers } from "./pack.ts";

const NO_PAPERS: Papers = { made: new Map(), without: [] };

/**
 * One key that copies everything. Papers are made first and hold nothing up; then what is on its way to the disk is waited for, and
 * the copy is made of what is there; what is read meanwhile is written after it. Leaving the screen ends it, and nothing was copied.
 */
export function CopyOut({ practice, onDone }: { practice: Practice; onDone: () => void }) {
  const { words, tag } = useLanguage();
  const { copy } = words;
  const [withPapers, setWithPapers] = useState(true);
  const [said, setSaid] = useState("");
  const [busy, setBusy] = useState(false);
  const stop = useRef<AbortController>(null);
  const here = useRef(new AbortController());
  useEffect(() => {
    here.current = new AbortController();
    return () => {
      here.current.abort();
      stop.current?.abort();
    };
  }, []);
  const papers = async () => {
    if (!withPapers) return NO_PAPERS;
    stop.current = new AbortController();
    return makePapers(
      practice,
      tag,
      (work) => setSaid(copy.making(work.number, work.of, work.horse)),
      stop.current.signal,
    );
  };
  const copyOut = async () => {
    setBusy(true);
    try {
      const made = await papers();
      const { signal } = here.current;
      if (signal.aborted) return;
      setSaid(copy.packing(0, practice.shown.get().visits.length));
      const bytes = await practice.inTurn(async () => {
        const now = new Date(practice.machine.now());
        const tell = proxy((visits: number, of: number) => setSaid(copy.packing(visits, of)));
        const pack = await besideThePage(
          (copying) => copying.copy(DATA_BASE, made, now.getTime(), tell),
          signal,
        );
        handOut(`treewright-${today(now)}.zip`, pack, "application/zip");
        await practice.copied();
        return pack.size;
      });
      setSaid(copy.done(Math.ceil(bytes / 1000), made.made.size, made.without.length));
      onDone();
    } catch (error) {
      setSaid(copy.failed(error instanceof Error ? error.message : String(error)));
    } finally {
      stop.current = null;
      setBusy(false);
    }
  };
  return (
    <section className="data-part" aria-labelledby="copy">
      <h2 id="copy">{copy.title}</h2>
      <p>{copy.says}</p>
      <label className="tick">
        <input
          type="checkbox"
          checked={withPapers}
          disabled={busy}
          onChange={({ target }) => setWithPapers(target.checked)}
        />
        <span>{copy.withPapers}</span>
      </label>
      <p className="app-links">
        <button type="button" className="main" disabled={busy} onClick={() => void copyOut()}>
          {copy.all}
        </button>
        {busy && withPapers ? (
          <button type="button" onClick={() => stop.current?.abort()}>
            {copy.goOn}
          </button>
        ) : null}
      </p>
      <p role="status" className="copy-said">
        {said}
      </p>
    </section>
  );
}
