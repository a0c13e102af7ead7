import { StateFigure } from "../answers/state.tsx";
import { useTrade, useWords } from "../catalogue/use-words.ts";
import type { Outcome, Station } from "../road.ts";
import { shownMm } from "../units/shown.ts";
import { useUnits } from "../units/units.ts";
import { smooth } from "./path.ts";
import { usePixel } from "./unit.ts";

export interface StationMark {
  readonly station: Station;
  readonly xMm: number;
  /** False where its distance was not read and it stands in its usual place. */
  readonly read: boolean;
  readonly outcome: Outcome | "not-read";
}

export interface BackLineView {
  /** The read midline, x behind the front station and z up, mm; empty where it was not taken. */
  readonly profile: readonly (readonly [number, number])[];
  readonly marks: readonly StationMark[];
  /** End of the panel behind the tree points, mm; undefined where it was not read. */
  readonly panelEndMm: number | undefined;
}

/** The part of the horse that is looked at, mm. */
const LEFT = -480;
const WIDTH = 1400;
const TOP = -150;
const HEIGHT = 280;

/** Neck and croup, for the eye only: nothing of them was measured, and they are drawn dashed. */
const NECK = [
  [-470, 96],
  [-330, 64],
  [-210, 26],
  [-110, 4],
] as const;
const CROUP = [
  [110, 16],
  [230, 30],
  [340, 20],
  [440, -22],
  [470, -60],
] as const;
const NO_PROFILE = [
  [0, 0],
  [110, -22],
  [230, -34],
  [340, -30],
  [440, -16],
] as const;

/** The horse's back from the near side, head to the left: the way in. A station shows its section. */
export function BackLine(props: {
  view: BackLineView;
  station: Station;
  onStation: (station: Station) => void;
}) {
  const { profile, marks, panelEndMm } = props.view;
  const { bench: words } = useWords();
  const trade = useTrade();
  const { ref, pixel } = usePixel(WIDTH, { heightMm: HEIGHT });
  const read = profile.length > 1 ? profile : NO_PROFILE;
  const units = useUnits();
  const first = read[0] ?? [0, 0];
  const last = read.at(-1) ?? [0, 0];
  const neck = [
    ...NECK.map(([x, z]) => [x + first[0], -(z + first[1])] as const),
    [first[0], -first[1]] as const,
  ];
  const croup = [
    [last[0], -last[1]] as const,
    ...CROUP.map(([x, z]) => [x + last[0], -(z + last[1])] as const),
  ];
  return (
    <nav className="back-line" aria-label={words.choose}>
      <svg
        ref={ref}
        viewBox={`${LEFT} ${TOP} ${WIDTH} ${HEIGHT}`}
        preserveAspectRatio="xMidYMid slice"
        style={{ "--pixel": pixel } as React.CSSProperties}
        aria-hidden="true"
      >
        <path d={smooth(neck)} className="pen-1" strokeDasharray="9 6" />
        <path d={smooth(croup)} className="pen-1" strokeDasharray="9 6" />
        <path
          d={smooth(read.map(([x, z]) => [x, -z]))}
          className="pen-3"
          strokeDasharray={profile.length > 1 ? undefined : "14 8"}
        />
        {panelEndMm === undefined ? null : <PanelLength endMm={panelEndMm} pixel={pixel} />}
        {marks.map((mark) => (
          <path
            key={mark.station}
            d={`M${mark.xMm} ${heightAt(read, mark.xMm) - 26}v52`}
            className={mark.station === props.station ? "pen-2" : "pen-1"}
          />
        ))}
      </svg>
      <div className="stations">
        {marks.map((mark) => (
          <button
            key={mark.station}
            type="button"
            aria-pressed={mark.station === props.station}
            style={{ "--along": String((mark.xMm - LEFT) / WIDTH) } as React.CSSProperties}
            onClick={() => props.onStation(mark.station)}
          >
            <span className="station-name">
              {words.stations[mark.station]} <StateFigure outcome={mark.outcome} />
              <span className="only-heard">{trade.choice(mark.outcome, "outcome")}</span>
            </span>
            <span className="figure">
              {mark.read ? shownMm(mark.xMm, 1, units) : trade.choice("not-read", "outcome")}
            </span>
          </button>
        ))}
      </div>
    </nav>
  );
}

/** How long the saddle bears, as a dimension over the back. */
function PanelLength({ endMm, pixel }: { endMm: number; pixel: number }) {
  const units = useUnits();
  const { bench: words } = useWords();
  const z = -58;
  const end = 5 * pixel;
  return (
    <g>
      <path d={`M0 ${z - 8}v40M${endMm} ${z - 8}v40M0 ${z}H${endMm}`} className="pen-1" />
      <path
        d={`M${-end} ${z + end}l${2 * end} ${-2 * end}M${endMm - end} ${z + end}l${2 * end} ${-2 * end}`}
        className="pen-2"
      />
      <text x={endMm / 2} y={z} textAnchor="middle" dominantBaseline="central" className="on-line">
        {words.panel(shownMm(endMm, 1, units))}
      </text>
    </g>
  );
}

function heightAt(profile: readonly (readonly [number, number])[], xMm: number): number {
  for (const [index, [x, z]] of profile.entries()) {
    const next = profile[index + 1];
    if (next && xMm >= x && xMm <= next[0]) return -(z + ((next[1] - z) * (xMm - x)) / (next[0] - x));
  }
  const end = profile[xMm < 0 ? 0 : profile.length - 1];
  return end ? -end[1] : 0;
}
