import { type FormEvent, useState, useSyncExternalStore } from "react";
import { useWords } from "../catalogue/use-words.ts";
import {
  agreementText,
  OF_VISIT,
  SIGNATURE_LIMITS,
  SIGNS_AS,
  type Signature,
  signatureIn,
} from "../records.ts";
import { sha256Hex } from "../road.ts";
import { AgreementPaper } from "./agreement-paper.tsx";
import type { OpenVisit } from "./open-visit.ts";
import { SignatureField, SignatureShown } from "./signature-field.tsx";

/** The first digits of a fingerprint: enough to compare by eye. */
const DIGITS_SHOWN = 12;

/** The text that is agreed, in full, and the signature over it. What changes after it was signed has to be signed anew. */
export function Agreement({ visit }: { visit: OpenVisit }) {
  const { agreement: words } = useWords();
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const text = agreementText(draft);
  const fingerprint = sha256Hex(new TextEncoder().encode(text));
  const signed = signatureIn(draft.ofVisit.get(OF_VISIT.signature));
  const holds = signed?.over === fingerprint;
  return (
    <section className="agreement" aria-labelledby="agreement">
      <h2 id="agreement">{words.title}</h2>
      <div className="agreed-text" lang="en">
        {text.split("\n").map((line) => (
          <p key={line}>{line}</p>
        ))}
      </div>
      <p>
        {words.mark} <span className="figure">{fingerprint.slice(0, DIGITS_SHOWN)}</span>
      </p>
      {signed && holds ? <Signed signed={signed} /> : null}
      {signed && !holds ? (
        <p className="problem" role="alert">
          {words.changed}
        </p>
      ) : null}
      {holds ? null : <Sign onSign={(signature) => visit.sign(signature, text)} />}
      <AgreementPaper text={text} fingerprint={fingerprint} signed={holds ? signed : undefined} />
    </section>
  );
}

function Signed({ signed }: { signed: Signature }) {
  const { agreement: words } = useWords();
  return (
    <div className="signed">
      <p role="status">
        <strong>{words.signedBy(signed.by, words.as[signed.as])}</strong>
      </p>
      <SignatureShown strokes={signed.strokes} />
    </div>
  );
}

/** A name, for whom, and a signature drawn by a finger; the name alone is enough for who cannot draw. */
function Sign({ onSign }: { onSign: (signature: Omit<Signature, "over">) => Promise<void> }) {
  const { agreement: words } = useWords();
  const [by, setBy] = useState("");
  const [as, setAs] = useState<Signature["as"]>("owner");
  const [strokes, setStrokes] = useState<Signature["strokes"]>([]);
  const sign = (event: FormEvent) => {
    event.preventDefault();
    if (by.trim() !== "") void onSign({ by: by.trim(), as, strokes });
  };
  return (
    <form className="sign" onSubmit={sign}>
      <label>
        {words.by}
        <input
          value={by}
          maxLength={SIGNATURE_LIMITS.nameLetters}
          required
          autoComplete="off"
          onChange={({ target }) => setBy(target.value)}
        />
      </label>
      <label>
        {words.signsAs}
        <select
          value={as}
          onChange={({ target }) => setAs(SIGNS_AS.find((one) => one === target.value) ?? "owner")}
        >
          {SIGNS_AS.map((one) => (
            <option key={one} value={one}>
              {words.as[one]}
            </option>
          ))}
        </select>
      </label>
      <SignatureField strokes={strokes} onDraw={setStrokes} />
      <p>{words.nameIsEnough}</p>
      <button type="submit" className="main">
        {words.sign}
      </button>
    </form>
  );
}
