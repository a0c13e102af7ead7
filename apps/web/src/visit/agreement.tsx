import { type FormEvent, useState, useSyncExternalStore } from "react";
import { useTongue } from "../catalogue/tongue-of.ts";
import { useLanguage, useWords } from "../catalogue/use-words.ts";
import {
  agreementText,
  OF_VISIT,
  SIGNATURE_LIMITS,
  SIGNS_AS,
  type Signature,
  signatureIn,
  type VisitDraft,
} from "../records.ts";
import { sha256Hex, type Tongue } from "../road.ts";
import { AgreementPaper } from "./agreement-paper.tsx";
import type { OpenVisit } from "./open-visit.ts";
import { SignatureField, SignatureShown } from "./signature-field.tsx";

/** The first digits of a fingerprint: enough to compare by eye. */
const DIGITS_SHOWN = 12;

/**
 * The text that is agreed, in full, and the signature over it. What changes after it was signed has to be signed anew; a change of the
 * screen's language does not change what was signed.
 */
export function Agreement({ visit }: { visit: OpenVisit }) {
  const { words, tag } = useLanguage();
  const { draft } = useSyncExternalStore(visit.shown.listen, visit.shown.get);
  const signed = signatureIn(draft.ofVisit.get(OF_VISIT.signature));
  const own = useTongue(tag);
  const then = useTongue(signed?.language ?? tag);
  return (
    <section className="agreement" aria-labelledby="agreement">
      <h2 id="agreement">{words.agreement.title}</h2>
      {own && then ? <Agreed visit={visit} draft={draft} signed={signed} own={own} then={then} /> : null}
    </section>
  );
}

interface AgreedGiven {
  readonly visit: OpenVisit;
  readonly draft: VisitDraft;
  readonly signed: Signature | undefined;
  /** The language of the screen, and that of what was signed. */
  readonly own: Tongue;
  readonly then: Tongue;
}

function Agreed({ visit, draft, signed, own, then }: AgreedGiven) {
  const { agreement: words } = useWords();
  const holds = signed?.over === fingerprintOf(agreementText(draft, then));
  const tongue = holds ? then : own;
  const text = agreementText(draft, tongue);
  const fingerprint = fingerprintOf(text);
  return (
    <>
      <div className="agreed-text" lang={tongue.tag}>
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
      {holds ? null : (
        <Sign onSign={(signature) => visit.sign({ ...signature, language: tongue.tag }, text)} />
      )}
      <AgreementPaper
        text={text}
        fingerprint={fingerprint}
        signed={holds ? signed : undefined}
        language={tongue.tag}
      />
    </>
  );
}

const fingerprintOf = (text: string): string => sha256Hex(new TextEncoder().encode(text));

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
function Sign({ onSign }: { onSign: (signature: Omit<Signature, "over" | "language">) => Promise<void> }) {
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
