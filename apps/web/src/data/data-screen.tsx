import { useEffect, useState } from "react";
import { handOut, today } from "../case/open-save.ts";
import { useWords } from "../catalogue/use-words.ts";
import { SavedLine } from "../home/saved-line.tsx";
import type { Practice } from "../practice/practice.ts";
import { bringRecords, recordsText } from "./copy.ts";
import { People } from "./people.tsx";

interface Room {
  readonly counts: { readonly entries: number; readonly photos: number };
  readonly persisted: boolean;
  readonly usedMB: number;
  readonly mostMB: number;
}

const BYTES_A_MB = 1e6;

async function lookAround(practice: Practice): Promise<Room> {
  const { usage = 0, quota = 0 } = await navigator.storage.estimate();
  return {
    counts: await practice.store.count(),
    persisted: await navigator.storage.persisted(),
    usedMB: Math.ceil(usage / BYTES_A_MB),
    mostMB: Math.floor(quota / BYTES_A_MB),
  };
}

/** What lies on this device, and the way out of it and into it. */
export function DataScreen({ practice }: { practice: Practice }) {
  const { data, visit } = useWords();
  const [room, setRoom] = useState<Room>();
  const [said, setSaid] = useState("");
  useEffect(() => void lookAround(practice).then(setRoom), [practice]);
  const copyOut = () =>
    practice.inTurn(async () => {
      handOut(`treewright-${today()}.jsonl`, await recordsText(practice.store), "application/jsonl");
      await practice.copied();
    });
  const bringIn = async (file: File | undefined) => {
    if (!file) return;
    const brought = await bringRecords(practice, await file.text());
    setSaid(
      brought.ok
        ? data.brought(brought.entries)
        : visit.refused(`${brought.where}: ${brought.read}`, brought.allowed),
    );
    setRoom(await lookAround(practice));
  };
  return (
    <main className="app-main">
      <a href="#/">{visit.back}</a>
      <h1>{data.title}</h1>
      <SavedLine practice={practice} />
      <p>{data.says}</p>
      {room ? (
        <>
          <p>
            {data.counts(room.counts.entries, room.counts.photos)} {data.space(room.usedMB, room.mostMB)}
          </p>
          <p>{room.persisted ? data.persisted : data.notPersisted}</p>
        </>
      ) : null}
      <div className="app-links">
        <button type="button" className="main" onClick={() => void copyOut()}>
          {data.exportAll}
        </button>
        <button
          type="button"
          onClick={() => void navigator.storage.persist().then(() => lookAround(practice).then(setRoom))}
        >
          {data.keep}
        </button>
        <label className="key">
          {data.importFile}
          <input
            className="only-heard"
            type="file"
            accept=".jsonl"
            onChange={({ target }) => void bringIn(target.files?.[0])}
          />
        </label>
      </div>
      <p role="status">{said}</p>
      <People practice={practice} />
    </main>
  );
}
