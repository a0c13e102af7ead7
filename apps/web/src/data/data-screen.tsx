import { useCallback, useEffect, useState } from "react";
import { useArrival } from "../arrival.ts";
import { useWords } from "../catalogue/use-words.ts";
import { SavedLine } from "../home/saved-line.tsx";
import type { Practice } from "../practice/practice.ts";
import { roomForPhoto } from "../practice/room.ts";
import { BringIn } from "./bring-in.tsx";
import { CopyOut } from "./copy-out.tsx";
import { People } from "./people.tsx";
import { TableIn } from "./table-in.tsx";

interface Room {
  readonly counts: { readonly entries: number; readonly photos: number };
  readonly persisted: boolean;
  readonly usedMB: number;
  readonly mostMB: number;
  /** A photo would still be kept. */
  readonly takesPhotos: boolean;
}

const BYTES_A_MB = 1e6;

async function lookAround(practice: Practice): Promise<Room> {
  const { usage = 0, quota = 0 } = await navigator.storage.estimate();
  return {
    counts: await practice.store.count(),
    persisted: await navigator.storage.persisted(),
    usedMB: Math.ceil(usage / BYTES_A_MB),
    mostMB: Math.floor(quota / BYTES_A_MB),
    takesPhotos: (await roomForPhoto(BYTES_A_MB)) === undefined,
  };
}

/** What lies on this device, and the way out of it and into it. */
export default function DataScreen({ practice }: { practice: Practice }) {
  const { data, visit, copy } = useWords();
  const title = useArrival("data");
  const [room, setRoom] = useState<Room>();
  const look = useCallback(() => void lookAround(practice).then(setRoom), [practice]);
  useEffect(look, [look]);
  return (
    <main className="app-main">
      <a href="#/">{visit.back}</a>
      <h1 ref={title} tabIndex={-1}>
        {data.title}
      </h1>
      <SavedLine practice={practice} />
      <p>{data.says}</p>
      <CopyOut practice={practice} onDone={look} />
      <BringIn practice={practice} onDone={look} />
      <TableIn practice={practice} onDone={look} />
      <section className="data-part" aria-labelledby="room">
        <h2 id="room">{copy.room}</h2>
        {room ? (
          <>
            <p>
              {data.counts(room.counts.entries, room.counts.photos)} {data.space(room.usedMB, room.mostMB)}
            </p>
            {room.takesPhotos ? null : <p className="problem">{copy.photosRefused}</p>}
            <p>{room.persisted ? data.persisted : data.notPersisted}</p>
          </>
        ) : null}
        <p className="app-links">
          <button type="button" onClick={() => void navigator.storage.persist().then(look)}>
            {data.keep}
          </button>
        </p>
      </section>
      <People practice={practice} />
    </main>
  );
}
