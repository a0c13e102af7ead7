import { type PointerEvent, useRef } from "react";
import { useWords } from "../catalogue/use-words.ts";
import { SIGNATURE_HIGH, SIGNATURE_LIMITS, type Signature } from "../records.ts";

type Strokes = Signature["strokes"];
/** Points lie this far apart at least, as part of the width: a finger at rest draws one. Working limit, no source. */
const APART = 0.002;
/** Points are kept to a thousandth of the width. */
const DIGITS = 3;

/** Where a finger or a pen draws a name. */
export function SignatureField({
  strokes,
  onDraw,
}: {
  strokes: Strokes;
  onDraw: (strokes: Strokes) => void;
}) {
  const { agreement: words } = useWords();
  const drawing = useRef(false);
  const at = ({ currentTarget, clientX, clientY }: PointerEvent<SVGSVGElement>): [number, number] => {
    const { left, top, width } = currentTarget.getBoundingClientRect();
    return [within((clientX - left) / width, 1), within((clientY - top) / width, SIGNATURE_HIGH)];
  };
  const begin = (event: PointerEvent<SVGSVGElement>) => {
    if (strokes.length >= SIGNATURE_LIMITS.strokes) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    drawing.current = true;
    onDraw([...strokes, [at(event)]]);
  };
  const draw = (event: PointerEvent<SVGSVGElement>) => {
    const stroke = strokes.at(-1);
    const last = stroke?.at(-1);
    if (
      !drawing.current ||
      stroke === undefined ||
      last === undefined ||
      stroke.length >= SIGNATURE_LIMITS.points
    )
      return;
    const point = at(event);
    if (Math.hypot(point[0] - last[0], point[1] - last[1]) < APART) return;
    onDraw([...strokes.slice(0, -1), [...stroke, point]]);
  };
  const end = () => {
    drawing.current = false;
  };
  return (
    <div className="signature-field">
      <svg
        role="img"
        aria-label={words.field}
        viewBox={`0 0 1 ${SIGNATURE_HIGH}`}
        onPointerDown={begin}
        onPointerMove={draw}
        onPointerUp={end}
        onPointerCancel={end}
      >
        <Lines strokes={strokes} />
      </svg>
      <button type="button" disabled={strokes.length === 0} onClick={() => onDraw([])}>
        {words.again}
      </button>
    </div>
  );
}

export function SignatureShown({ strokes }: { strokes: Strokes }) {
  const { agreement: words } = useWords();
  if (strokes.length === 0) return null;
  return (
    <svg className="signature-shown" role="img" aria-label={words.drawn} viewBox={`0 0 1 ${SIGNATURE_HIGH}`}>
      <Lines strokes={strokes} />
    </svg>
  );
}

function Lines({ strokes }: { strokes: Strokes }) {
  return strokes.map((stroke, nth) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: strokes are only ever added at the end
    <polyline key={nth} points={stroke.map(([x, y]) => `${x},${y}`).join(" ")} />
  ));
}

const within = (value: number, most: number): number =>
  Number(Math.min(most, Math.max(0, value)).toFixed(DIGITS));
