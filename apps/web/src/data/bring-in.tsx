import { proxy } from "comlink";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { FileKey } from "../case/file-key.tsx";
import { RefusalWords } from "../catalogue/refusal.tsx";
import { useWords } from "../catalogue/use-words.ts";
import { DATA_BASE } from "../practice/machine.ts";
import type { Practice } from "../practice/practice.ts";
import { visitAddress } from "../route.ts";
import { beginFromCase } from "../taken-in/begin-from-case.ts";
import { besideThePage } from "./beside.ts";
import type { Brought } from "./bring.ts";
import { BRINGING } from "./bring-records.ts";

/** A copy of this app, or its file of records, into the store; and a case file as a visit of its own. */
export function BringIn({ practice, onDone }: { practice: Practice; onDone: () => void }) {
  const { copy, takenIn } = useWords();
  const [said, setSaid] = useState<ReactNode>("");
  const here = useRef(new AbortController());
  useEffect(() => {
    here.current = new AbortController();
    // What was broken off is told, until it is brought in again.
    void practice.store.noted(BRINGING).then((noted) => noted && setSaid(copy.brokenOff));
    return () => here.current.abort();
  }, [practice, copy]);
  const bringIn = async (file: File) => {
    setSaid(copy.reading);
    const tell = proxy((part: "looked-at" | "kept" | "listed", number: number, of: number) =>
      setSaid(copy.bringing[part](number, of)),
    );
    try {
      const brought = await practice.inTurn(() =>
        besideThePage<Brought>((copying) => copying.bring(DATA_BASE, file, tell), here.current.signal),
      );
      await practice.heardOfFile();
      setSaid(
        brought.ok ? (
          copy.brought(brought.entries, brought.photos, brought.photosNotBeside)
        ) : (
          <RefusalWords {...brought} />
        ),
      );
    } catch (error) {
      setSaid(copy.failed(error instanceof Error ? error.message : String(error)));
    }
    onDone();
  };
  const begin = async (file: File) => {
    const begun = await beginFromCase(practice, file);
    if (begun.ok) location.hash = visitAddress(begun.subject);
    else setSaid(begun.refusals.slice(0, 1).map((one) => <RefusalWords key={one.where} {...one} />));
  };
  return (
    <section className="data-part" aria-labelledby="bring">
      <h2 id="bring">{copy.bringTitle}</h2>
      <p>{copy.bringSays}</p>
      <p className="app-links">
        <FileKey label={copy.bringFile} accept=".zip,.jsonl" onFile={(file) => void bringIn(file)} />
      </p>
      <p>{takenIn.caseSays}</p>
      <p className="app-links">
        <FileKey
          label={takenIn.caseFile}
          accept=".json,.txt,application/json"
          onFile={(file) => void begin(file)}
        />
      </p>
      <p role="status">{said}</p>
    </section>
  );
}
