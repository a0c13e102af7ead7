import { useEffect, useRef, useState } from "react";
import { FileKey } from "../case/file-key.tsx";
import { RefusalWords } from "../catalogue/refusal.tsx";
import { useWords } from "../catalogue/use-words.ts";
import { roomForPhoto } from "../practice/room.ts";
import { type Encoded, encoded, type NoPhoto, photoOfFile } from "./encode.ts";

interface Given {
  /** What the photo is of, in words. */
  readonly shows: string;
  /** Resolves once the photo is safe and cited. */
  readonly onTake: (photo: Encoded) => Promise<void>;
  readonly onClose: () => void;
}

/** The camera in the page; where there is none, or it is not allowed, a file that was taken elsewhere. It stays open for the next photo. */
export function Camera({ shows, onTake, onClose }: Given) {
  const { photo: words } = useWords();
  const dialog = useRef<HTMLDialogElement>(null);
  const video = useRef<HTMLVideoElement>(null);
  const [isLive, setLive] = useState<boolean>();
  const [kept, setKept] = useState(0);
  const [refused, setRefused] = useState<NoPhoto>();
  useEffect(() => {
    dialog.current?.showModal();
    return liveIn(video, setLive);
  }, []);
  const take = async (photo: Promise<Encoded | NoPhoto>) => {
    const taken = await photo;
    if ("read" in taken) return setRefused(taken);
    const noRoom = await roomForPhoto(taken.content.length);
    if (noRoom) return setRefused(noRoom);
    setRefused(undefined);
    // What could not be kept is told by the line at the top, and is not counted here.
    await onTake(taken).then(
      () => setKept((count) => count + 1),
      () => onClose(),
    );
  };
  return (
    <dialog ref={dialog} className="camera" aria-labelledby="camera-shows" onClose={onClose}>
      <p id="camera-shows">
        <strong>{words.of(shows)}</strong>
      </p>
      <video ref={video} playsInline muted hidden={isLive !== true} aria-label={words.view} />
      {isLive === false ? <p>{words.noCamera}</p> : null}
      {refused ? (
        <p className="problem" role="alert">
          <RefusalWords read={refused.read} allowed={refused.allowed} />
        </p>
      ) : null}
      <p role="status">{kept === 0 ? words.noFaces : words.kept(kept)}</p>
      <div className="camera-keys">
        <button type="button" onClick={onClose}>
          {words.done}
        </button>
        <FileKey
          label={words.fromFile}
          accept="image/*"
          fromCamera
          onFile={(file) => void take(photoOfFile(file))}
        />
        {isLive ? (
          <button
            type="button"
            className="main"
            onClick={() => video.current && void take(encoded(video.current))}
          >
            {words.take}
          </button>
        ) : null}
      </div>
    </dialog>
  );
}

/** Lets the camera run in the picture until what is returned is called. */
function liveIn(
  video: { readonly current: HTMLVideoElement | null },
  onLive: (isLive: boolean) => void,
): () => void {
  let stream: MediaStream | undefined;
  let isOver = false;
  const stop = () => stream?.getTracks().forEach((track) => void track.stop());
  const start = async () => {
    stream = await navigator.mediaDevices.getUserMedia({
      video: { facingMode: "environment", width: { ideal: 2048 } },
    });
    if (isOver || !video.current) return stop();
    video.current.srcObject = stream;
    await video.current.play();
    onLive(true);
  };
  // No camera, none allowed, or a page that is not secure: a file still can be chosen.
  start().catch(() => onLive(false));
  return () => {
    isOver = true;
    stop();
  };
}
