import { useEffect, useRef, useState } from "react";
import { SendOn } from "../case/send-on.tsx";
import { useWords } from "../catalogue/use-words.ts";
import type { CitedPhoto, Store } from "../records.ts";

interface Given {
  readonly photos: readonly CitedPhoto[];
  readonly store: Store;
  /** What a photo shows, in words. */
  readonly shows: (photo: CitedPhoto) => string;
  readonly onWithdraw: (photo: CitedPhoto) => void;
  readonly onErase: (photo: CitedPhoto) => void;
}

/** The photos of a step; one is opened by its key, and can be withdrawn or erased there. */
export function PhotoStrip({ photos, store, shows, onWithdraw, onErase }: Given) {
  const { photo: words } = useWords();
  const [open, setOpen] = useState<string>();
  if (photos.length === 0) return null;
  const opened = photos.find(({ hash }) => hash === open);
  return (
    <section className="photos" aria-label={words.title}>
      <ul>
        {photos.map((one, at) => (
          <li key={one.hash}>
            <button
              type="button"
              className="photo-key"
              aria-expanded={one.hash === open}
              onClick={() => setOpen(one.hash === open ? undefined : one.hash)}
            >
              <Picture photo={one} store={store} says={words.nth(at + 1, shows(one))} />
            </button>
          </li>
        ))}
      </ul>
      {opened ? (
        <figure>
          <Picture photo={opened} store={store} says={words.of(shows(opened))} />
          <figcaption>
            {shows(opened)}{" "}
            <button type="button" onClick={() => onWithdraw(opened)}>
              {words.withdraw}
            </button>{" "}
            <ErasePhoto key={`erase ${opened.hash}`} onErase={() => onErase(opened)} />
            <SendPhoto key={opened.hash} photo={opened} store={store} />
          </figcaption>
        </figure>
      ) : null}
    </section>
  );
}

/** Asked twice: a photo that was erased cannot be brought back. */
function ErasePhoto({ onErase }: { onErase: () => void }) {
  const { photo: words, data } = useWords();
  const sure = useRef<HTMLDialogElement>(null);
  return (
    <>
      <button type="button" onClick={() => sure.current?.showModal()}>
        {words.erase}
      </button>
      <dialog ref={sure} aria-labelledby="sure-photo">
        <p id="sure-photo">{words.eraseSure}</p>
        <p className="app-links">
          <button type="button" className="main" onClick={() => sure.current?.close()}>
            {data.eraseNo}
          </button>
          <button type="button" onClick={onErase}>
            {data.eraseYes}
          </button>
        </p>
      </dialog>
    </>
  );
}

function SendPhoto({ photo, store }: { photo: CitedPhoto; store: Store }) {
  const { photo: words } = useWords();
  const [files, setFiles] = useState<readonly File[]>([]);
  useEffect(() => {
    let isOver = false;
    void store.photo(photo.hash).then((kept) => {
      if (isOver || kept === undefined) return;
      const ending = kept.type.replace("image/", "").replace("jpeg", "jpg");
      setFiles([new File([new Uint8Array(kept.content)], `photo.${ending}`, { type: kept.type })]);
    });
    return () => {
      isOver = true;
    };
  }, [photo.hash, store]);
  return <SendOn what={words.photo} files={files} />;
}

/** A photo out of the store. One that is not there (a browser cleared it, or it was not copied along) is said in words. */
function Picture({ photo, store, says }: { photo: CitedPhoto; store: Store; says: string }) {
  const { photo: words } = useWords();
  const [address, setAddress] = useState<string | "missing">();
  useEffect(() => {
    let made: string | undefined;
    let isOver = false;
    void store.photo(photo.hash).then((kept) => {
      if (isOver) return;
      if (kept === undefined) return setAddress("missing");
      made = URL.createObjectURL(new Blob([new Uint8Array(kept.content)], { type: kept.type }));
      setAddress(made);
    });
    return () => {
      isOver = true;
      if (made) URL.revokeObjectURL(made);
    };
  }, [photo.hash, store]);
  if (address === "missing") return <span>{words.missing}</span>;
  return address === undefined ? <span>{words.waiting}</span> : <img src={address} alt={says} />;
}
