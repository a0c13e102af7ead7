import { type KeyboardEvent, useEffect, useRef, useState } from "react";
import type { Desk } from "../desk/desk.ts";
import type { Hand } from "../desk/hand.ts";
import { countOf } from "./count.ts";
import { GroupTable } from "./group-table.tsx";
import { GROUPS, groupOf } from "./groups.ts";

/** The place named after the # of the address: a link anywhere on the page leads to its reading. */
const placeAsked = () => decodeURIComponent(location.hash.slice(1));

/** All readings, one group at a time, in the order of the work. Enter goes to the next reading. */
export function Readings({ desk, hand }: { desk: Desk; hand: Hand }) {
  const [open, setOpen] = useState(0);
  const [wanted, setWanted] = useState<string>();
  const table = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const go = () => {
      const group = groupOf(placeAsked());
      if (group < 0) return;
      setOpen(group);
      setWanted(placeAsked());
    };
    addEventListener("hashchange", go);
    return () => removeEventListener("hashchange", go);
  }, []);
  useEffect(() => {
    if (wanted === undefined || table.current === null) return;
    setWanted(undefined);
    const boxes = [...table.current.querySelectorAll<HTMLElement>("[data-reading]")];
    const box =
      boxes.find((one) => one.dataset.reading === wanted) ??
      boxes.find((one) => one.dataset.reading?.startsWith(wanted)) ??
      boxes[0];
    box?.focus();
    box?.scrollIntoView({ block: "center" });
  }, [wanted]);
  const onEnter = (event: KeyboardEvent) => {
    const here = event.target;
    if (event.key !== "Enter" || !(here instanceof HTMLInputElement || here instanceof HTMLSelectElement))
      return;
    event.preventDefault();
    const boxes = [...(table.current?.querySelectorAll<HTMLElement>("[data-reading]") ?? [])];
    const next = boxes[boxes.indexOf(here) + 1];
    if (next) return next.focus();
    here.blur();
    if (open < GROUPS.length - 1) {
      setOpen(open + 1);
      setWanted("");
    }
  };
  return (
    <section className="readings" aria-label="Readings" id="readings">
      <header className="section-head">
        <h2>Readings</h2>
        <p className="quiet">
          In the order of the work. Enter goes to the next one. Point and comma both do; write the unit if it
          is not the one shown (4 1/4 in); part repeats by semicolons.
        </p>
      </header>
      <div className="reading-groups">
        <nav aria-label="Groups of readings">
          <ol>
            {GROUPS.map((group, index) => (
              <li key={group.title}>
                <button
                  type="button"
                  aria-current={index === open ? "step" : undefined}
                  onClick={() => setOpen(index)}
                >
                  <span>{group.title}</span>
                  <Count {...countOf(group, desk.read.file, desk.horse)} />
                </button>
              </li>
            ))}
          </ol>
        </nav>
        {/* Keys pressed in a field bubble up to here; the table itself is no control. */}
        {/* biome-ignore lint/a11y/noStaticElementInteractions: Enter moves between the fields inside */}
        <div className="group-table" ref={table} onKeyDown={onEnter}>
          <h3>{GROUPS[open]?.title}</h3>
          {GROUPS[open] ? (
            <GroupTable key={`${open} ${desk.horse}`} group={GROUPS[open]} desk={desk} hand={hand} />
          ) : null}
        </div>
      </div>
    </section>
  );
}

function Count({ taken, of }: { taken: number; of: number }) {
  return (
    <span className="count figure">
      {taken}
      <span aria-hidden="true">/</span>
      <span className="only-heard"> of </span>
      {of}
    </span>
  );
}
