import { CROSS_HATCH_KPA, LEVELS_KPA } from "./pressure.tsx";

/** The one ramp, always the same, with its figures. */
export function PressureKey() {
  const steps = [...LEVELS_KPA, CROSS_HATCH_KPA];
  return (
    <svg
      className="pressure-key"
      viewBox="-8 0 256 34"
      role="img"
      aria-label="Ramp of pressure: a tint from each of 5, 10, 15, 20 and 25 kilopascal, cross-hatched from 30"
    >
      {steps.map((kPa, index) => (
        <g key={kPa}>
          <path
            d={`M${index * 40} 2h40v14h-40z`}
            className={`sepia-${Math.min(index + 1, LEVELS_KPA.length)} pen-1 boxed`}
          />
          {kPa === CROSS_HATCH_KPA ? (
            <path d={`M${index * 40} 2h40v14h-40z`} fill="url(#cross-hatch)" />
          ) : null}
          <text x={index * 40} y={29} textAnchor="middle">
            {kPa}
          </text>
        </g>
      ))}
      <text x={240} y={29} textAnchor="end">
        kPa
      </text>
    </svg>
  );
}
