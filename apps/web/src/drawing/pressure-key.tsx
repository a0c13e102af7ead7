import { useWords } from "../catalogue/use-words.ts";
import { FAR_OVER_KPA, LEVELS_KPA } from "../road.ts";

/** Width of one step on the key. */
const STEP = 48;

/** The one ramp, the same on screen and sheet, with its figures. */
export function PressureKey() {
  const { bench: words } = useWords();
  return (
    <svg
      className="pressure-key"
      viewBox={`-6 0 ${STEP * LEVELS_KPA.length + 44} 36`}
      role="img"
      aria-label={words.ramp(LEVELS_KPA.join(", "), FAR_OVER_KPA)}
    >
      {LEVELS_KPA.map((kPa, index) => (
        <g key={kPa}>
          <path d={`M${index * STEP} 2h${STEP}v14h${-STEP}z`} className={`sepia-${index + 1}`} />
          {kPa >= FAR_OVER_KPA ? (
            <path d={`M${index * STEP} 2h${STEP}v14h${-STEP}z`} fill="url(#cross-hatch)" />
          ) : null}
          <path d={`M${index * STEP} 2h${STEP}v14h${-STEP}z`} className="pen-1" />
          <text x={index * STEP} y={32} textAnchor="middle">
            {kPa}
          </text>
        </g>
      ))}
      <text x={STEP * LEVELS_KPA.length + 8} y={15}>
        kPa
      </text>
    </svg>
  );
}
