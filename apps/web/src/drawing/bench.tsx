import { State } from "../answers/state.tsx";
import { useLanguage, useTrade, useWords } from "../catalogue/use-words.ts";
import type { Desk } from "../desk/desk.ts";
import type { Hand } from "../desk/hand.ts";
import { Follows } from "../head/follows.tsx";
import { HeadSlider } from "../head/slider.tsx";
import { ReadingLinks } from "../readings/link.tsx";
import { mayBeFitted, type Rest, refusalSays, type SweepPoint } from "../road.ts";
import { useUnits } from "../units/units.ts";
import { Pressure } from "./pressure.tsx";
import { PressureKey } from "./pressure-key.tsx";
import { Section } from "./section.tsx";
import { followedBy, type SectionView, sectionView } from "./view.ts";

/** The drawing and the head that moves it. On a horse flag it says why nothing is drawn. */
export function Bench({ desk, hand }: { desk: Desk; hand: Hand }) {
  const { answer, sweep, changeMm, station } = desk;
  const units = useUnits();
  const language = useLanguage();
  const { bench: words } = language.words;
  if (answer === undefined) return null;
  if (!mayBeFitted(desk.read.survey, desk.horse)) return <Shut />;
  const { setting } = answer.answers;
  const today = sweep.get(0);
  const now = sweep.get(changeMm) ?? today;
  if (!sweep.has(0)) return <div className="bench waiting" />;
  if (today === undefined || now === undefined) return <Lacking paths={answer.lacking} />;
  const drawn = sectionView(now, station, units);
  return (
    <section className="bench" aria-label={words.drawing}>
      <figure className="section-figure">
        <figcaption>
          <h3>{words.section(words.stations[station])}</h3>
        </figcaption>
        {drawn ? (
          <Section drawn={drawn} today={changeMm === 0 ? undefined : sectionView(today, station, units)} />
        ) : (
          <Lacking paths={answer.lacking} />
        )}
        {drawn ? <Legend drawn={drawn} moved={changeMm !== 0} /> : null}
      </figure>
      <figure className="pressure-figure">
        <figcaption>
          <h3>{words.pressure}</h3>
        </figcaption>
        <Pressed now={now} desk={desk} />
      </figure>
      <div className="head-column">
        <HeadSlider
          todayMm={today.spreadMm}
          changeMm={changeMm}
          answeredMm={setting?.changeMm || undefined}
          onChange={(mm) => hand.moveHead(mm)}
        />
        <Follows rows={followedBy(today, now, station, units, language)} />
      </div>
    </section>
  );
}

/** What the lines of the section mean. */
function Legend({ drawn, moved }: { drawn: SectionView; moved: boolean }) {
  const { bench: words } = useWords();
  const states: Readonly<Record<string, string>> = words.states;
  const said = [
    words.dotted,
    ...(drawn.panel.near.length > 0 ? [words.degrees] : []),
    ...(drawn.clearance ? [words.stands(states[drawn.clearance.state] ?? drawn.clearance.state)] : []),
    ...(moved ? [words.dashed] : []),
  ];
  return <p className="quiet">{said.join(" ")}</p>;
}

function Pressed({ now, desk }: { now: SweepPoint; desk: Desk }) {
  const { rest } = now.fit;
  const { bench: words } = useWords();
  const trade = useTrade();
  if (rest === undefined) return <Lacking paths={desk.answer?.lacking ?? []} />;
  if (!rest.ok)
    return (
      <p className="refusal">
        {trade.said(refusalSays(rest.why))} {words.noRest}
      </p>
    );
  return (
    <>
      <Pressure rest={rest} stations={now.stationsMm} station={desk.station} />
      <PressureKey />
      <Thirds rest={rest} />
    </>
  );
}

/** The same figures as a table, one tap away. */
function Thirds({ rest }: { rest: Rest }) {
  const { bench: words } = useWords();
  return (
    <details>
      <summary>{words.figures}</summary>
      <table className="thirds">
        <thead>
          <tr>
            <th scope="col">{words.third}</th>
            <th scope="col">{words.side}</th>
            <th scope="col">{words.mean}</th>
            <th scope="col">{words.most}</th>
            <th scope="col">{words.share}</th>
          </tr>
        </thead>
        <tbody>
          {rest.thirds.map((one) => (
            <tr key={one.third + one.side}>
              <th scope="row">{words.thirds[one.third]}</th>
              <td>{words.sides[one.side]}</td>
              <td className="figure">{one.meanKPa.toFixed(1)}</td>
              <td className="figure">{one.maxKPa.toFixed(1)}</td>
              <td className="figure">{Math.round(100 * one.share)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">{words.comparing}</p>
    </details>
  );
}

function Shut() {
  const { bench: words } = useWords();
  return (
    <section className="bench shut" aria-label={words.drawing}>
      <h3>{words.shut}</h3>
      <p>{words.shutSays}</p>
    </section>
  );
}

function Lacking({ paths }: { paths: readonly string[] }) {
  const { bench: words } = useWords();
  return (
    <div className="lacking">
      <p>
        <State outcome="cannot-tell" />
        {paths.length > 0 ? words.lacking : "."}
      </p>
      <ReadingLinks paths={paths} />
    </div>
  );
}
