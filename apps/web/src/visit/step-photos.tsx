import { useState, useSyncExternalStore } from "react";
import { useWords } from "../catalogue/use-words.ts";
import { Camera } from "../photo/camera.tsx";
import type { Encoded } from "../photo/encode.ts";
import { PhotoStrip } from "../photo/photo-strip.tsx";
import { photoPlace, photosOf } from "../records.ts";
import { type Question, sha256Hex } from "../road.ts";
import type { OpenVisit } from "./open-visit.ts";
import type { Step } from "./steps.ts";

interface Given {
  readonly visit: OpenVisit;
  readonly step: Extract<Step, { is: "asked" }>;
  /** The question that is being taken: a photo shows what it asks about. */
  readonly question: Question | undefined;
}

/** The key of the camera, and the photos that were taken at this step. */
export function StepPhotos({ visit, step, question }: Given) {
  const { photo: words } = useWords();
  const [at, setAt] = useState<Question>();
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const askedOf = (of: string) => step.questions.find(({ path }) => path === of);
  const photos = photosOf(draft.ofVisit).filter(({ of }) => askedOf(of) !== undefined);
  const keep = ({ type, content }: Encoded) => {
    const photo = { hash: sha256Hex(content), type, bytes: content.length, content };
    return visit.keepPhoto(photo, at?.path ?? "");
  };
  return (
    <>
      <button type="button" disabled={question === undefined} onClick={() => setAt(question)}>
        {words.add}
      </button>
      {at ? <Camera shows={at.asks} onTake={keep} onClose={() => setAt(undefined)} /> : null}
      <PhotoStrip
        photos={photos}
        store={visit.practice.store}
        shows={({ of }) => askedOf(of)?.asks ?? ""}
        onErase={(photo) => void visit.erasePhoto(photo)}
        onWithdraw={({ hash }) => void visit.say([{ at: photoPlace(hash) }])}
      />
    </>
  );
}
