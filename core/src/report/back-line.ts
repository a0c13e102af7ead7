import { line, words } from "../engine/drawing/marks.ts";
import type { At, Item } from "../engine/drawing.ts";
import { type ByStation, STATIONS } from "../terms/places.ts";
import { SMALL } from "./looks.ts";
import { ENGLISH, type Tongue } from "./tongue.ts";

/** The horse's back from its near side, head to the left: x behind the front station and height of the midline, mm. */
export interface BackLine {
  readonly profile: readonly At[] | undefined;
  /** Distance of each station behind the front one, mm; undefined where it was not read. */
  readonly stations: ByStation<number | undefined>;
}

const HIGH = 11;

/** One line across the head of a sheet. It is a sign and not a drawing to scale: its height is stretched. */
export function backLine(
  back: BackLine,
  [x, y]: At,
  width: number,
  { say }: Tongue = ENGLISH,
): readonly Item[] {
  const { profile } = back;
  if (profile === undefined || profile.length < 2) return unread([x, y], width);
  const span = reach(profile.map(([along]) => along));
  const rise = reach(profile.map(([, up]) => up));
  const onPaper = ([along, up]: At): At => [
    x + ((along - span.low) / (span.high - span.low || 1)) * width,
    y + HIGH - ((up - rise.low) / (rise.high - rise.low || 1)) * HIGH,
  ];
  const marks = STATIONS.flatMap((station) => {
    const along = back.stations[station];
    return along === undefined || along < span.low || along > span.high
      ? []
      : mark(say(station), onPaper([along, heightAt(profile, along)]));
  });
  return [line("back line", "medium", profile.map(onPaper)), ...marks];
}

function unread([x, y]: At, width: number): readonly Item[] {
  const level = y + HIGH * 0.7;
  return [
    line(
      "back line",
      "thin",
      [
        [x, level],
        [x + width, level],
      ],
      { dashed: true },
    ),
    words("back line, words", SMALL, [x + width, level - 1.2], "the back's profile was not read", {
      anchor: "end",
    }),
  ];
}

function mark(station: string, [x, y]: At): readonly Item[] {
  return [
    line(`station ${station}`, "medium", [
      [x, y - 1.6],
      [x, y + 1.6],
    ]),
    words(`station ${station}, words`, SMALL, [x + 1.2, y + 4], station),
  ];
}

function reach(values: readonly number[]): { readonly low: number; readonly high: number } {
  return { low: Math.min(...values), high: Math.max(...values) };
}

/** Where the drawn line itself passes over a place: between its two neighbouring points. */
function heightAt(profile: readonly At[], along: number): number {
  const after = Math.max(
    1,
    profile.findIndex(([x]) => x >= along),
  );
  const [x0, z0] = profile[after - 1] ?? [0, 0];
  const [x1, z1] = profile[after] ?? [x0, z0];
  return x1 === x0 ? z0 : z0 + ((along - x0) / (x1 - x0)) * (z1 - z0);
}
