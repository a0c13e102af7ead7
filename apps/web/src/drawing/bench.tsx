import { State } from "../answers/state.tsx";
import type { Desk } from "../desk/desk.ts";
import type { Hand } from "../desk/hand.ts";
import { Follows } from "../head/follows.tsx";
import { HeadSlider } from "../head/slider.tsx";
import { ReadingLinks } from "../readings/link.tsx";
import { mayBeFitted, type Rest, type SweepPoint } from "../road.ts";
import { useUnits } from "../units/units.ts";
import { SIDE_WORDS, STATION_WORDS, THIRD_WORDS } from "../words.ts";
import { Pressure } from "./pressure.tsx";
import { PressureKey } from "./pressure-key.tsx";
import { Section } from "./section.tsx";
import { followedBy, type SectionView, sectionView } from "./view.ts";

/** The drawing and the head that moves it. On a horse flag it says why nothing is drawn. */
export function Bench({ desk, hand }: { desk: Desk; hand: Hand }) {
  const { answer, sweep, changeMm, station } = desk;
  const units = useUnits();
  if (answer === undefined) return null;
  if (!mayBeFitted(desk.read.survey, desk.horse)) return <Shut />;
  const { setting } = answer.answers;
  const today = sweep.get(0);
  const now = sweep.get(changeMm) ?? today;
  if (!sweep.has(0)) return <div className="bench waiting" />;
  if (today === undefined || now === undefined) return <Lacking paths={answer.lacking} />;
  const drawn = sectionView(now, station, units);
  return (
    <section className="bench" aria-label="The drawing">
      <figure className="section-figure">
        <figcaption>
          <h3>{STATION_WORDS[station]} section, seen from behind</h3>
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
          <h3>Lines of pressure at rest, seen from above</h3>
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
        <Follows rows={followedBy(today, now, station, units)} />
      </div>
    </section>
  );
}

/** What the lines of the section mean. */
function Legend({ drawn, moved }: { drawn: SectionView; moved: boolean }) {
  const panel = drawn.panel.near.length > 0;
  return (
    <p className="quiet">
      Dotted: where the back may lie, 95 in 100.{" "}
      {panel
        ? "Degrees: tree or panel face less back face, positive where it is steeper; both are drawn unpressed. "
        : ""}
      {drawn.clearance ? `The head stands at its clearance as read ${drawn.clearance.state}. ` : ""}
      {moved ? "Dashed: today." : ""}
    </p>
  );
}

function Pressed({ now, desk }: { now: SweepPoint; desk: Desk }) {
  const { rest } = now.fit;
  if (rest === undefined) return <Lacking paths={desk.answer?.lacking ?? []} />;
  if (!rest.ok)
    return (
      <p className="refusal">
        No rest is found with this head: {rest.why.replaceAll("-", " ")}. No pressure is shown.
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
  return (
    <details>
      <summary>The same in figures</summary>
      <table className="thirds">
        <thead>
          <tr>
            <th scope="col">Third</th>
            <th scope="col">Side</th>
            <th scope="col">Mean kPa</th>
            <th scope="col">Most kPa</th>
            <th scope="col">Share %</th>
          </tr>
        </thead>
        <tbody>
          {rest.thirds.map((one) => (
            <tr key={one.third + one.side}>
              <th scope="row">{THIRD_WORDS[one.third]}</th>
              <td>{SIDE_WORDS[one.side]}</td>
              <td className="figure">{one.meanKPa.toFixed(1)}</td>
              <td className="figure">{one.maxKPa.toFixed(1)}</td>
              <td className="figure">{Math.round(100 * one.share)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">
        For comparing heads on this same back and load only. No figure here says that a saddle does no harm.
      </p>
    </details>
  );
}

function Shut() {
  return (
    <section className="bench shut" aria-label="The drawing">
      <h3>No fit is shown</h3>
      <p>
        Something was found on this horse that a vet must look at first. Until then no setting, no pressure
        and no fit is worked out, since a saddle altered for a sore or lame horse hides what hurts it.
      </p>
    </section>
  );
}

function Lacking({ paths }: { paths: readonly string[] }) {
  return (
    <div className="lacking">
      <p>
        <State outcome="cannot-tell" />
        {paths.length > 0 ? ": these readings are missing for it." : "."}
      </p>
      <ReadingLinks paths={paths} />
    </div>
  );
}
