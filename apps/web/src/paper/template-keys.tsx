import { useWords } from "../catalogue/use-words.ts";
import { CUT_KINDS, type CutKind, type TemplateAsked } from "../road.ts";

const FACES = ["inside", "outside"] as const;
const AS_ASKED = "as-asked";

interface Props {
  readonly asked: TemplateAsked;
  readonly shut: boolean;
  readonly onAsk: (asked: TemplateAsked) => void;
  readonly onCut: (kind: CutKind) => void;
}

/** Which template is wanted, and the same for a machine that cuts. */
export function TemplateKeys({ asked, shut, onAsk, onCut }: Props) {
  const { face, made, cut } = useWords().paper.templateKeys;
  return (
    <>
      <label className="looks">
        <span>{face.label}</span>
        <select
          value={asked.face ?? AS_ASKED}
          onChange={({ target }) => onAsk({ ...asked, face: FACES.find((one) => one === target.value) })}
        >
          <option value={AS_ASKED}>{face.asAsked}</option>
          {FACES.map((one) => (
            <option key={one} value={one}>
              {face[one]}
            </option>
          ))}
        </select>
      </label>
      <label className="looks">
        <span>{made.label}</span>
        <select
          value={asked.byHalves ? "halves" : "whole"}
          onChange={({ target }) => onAsk({ ...asked, byHalves: target.value === "halves" })}
        >
          <option value="whole">{made.whole}</option>
          <option value="halves">{made.halves}</option>
        </select>
      </label>
      <p>{cut.says}</p>
      <div className="cut-keys">
        {CUT_KINDS.map((kind) => (
          <button type="button" key={kind} disabled={shut} onClick={() => onCut(kind)}>
            {cut.as(kind.toUpperCase())}
          </button>
        ))}
      </div>
    </>
  );
}
