import { clipped, type Window } from "../engine/drawing/clip.ts";
import type { Stretch } from "../engine/drawing/tiles.ts";
import type { At } from "../engine/drawing.ts";
import { SIDES, type Side } from "../terms/places.ts";
import type { HeadOutline } from "./template-data.ts";

/** Room about an outline for its own line and the tip's, mm. */
const MARGIN_MM = 4;
/** Neighbouring parts share this much, mm: a part is laid on by what was on the one before. */
const SHARED_MM = 12;
/** Less than this either way shows no part of a head that could be held to anything, mm. Working limit, no source. */
const LEAST_ROOM_MM = 30;

/** One part of the template as a screen shows it at 1:1. `window` in the outline's own places, y down from the crown, mm. */
export interface ScreenPart {
  readonly half: Side | "whole";
  readonly window: Window;
  /** Which stretch from the left, and which from above, of how many; from 1. */
  readonly across: Counted;
  readonly down: Counted;
}

interface Counted {
  readonly at: number;
  readonly of: number;
}

export interface RoomMm {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** An outline as it is drawn: x to the off side, y down from the crown of `wanted`, mm. */
export function downFromCrown(wanted: HeadOutline, outline: HeadOutline = wanted): HeadOutline {
  const crown = wanted.off[0]?.[1] ?? 0;
  const down = ([y, z]: At): At => [y, crown - z];
  return { near: outline.near.map(down), off: outline.off.map(down) };
}

/** How wide the outline is over all, mm: what the screen's doubt is told over. */
export function widthOverAllMm({ near, off }: HeadOutline): number {
  const xs = [...near, ...off].map(([x]) => x);
  return Math.max(...xs) - Math.min(...xs);
}

/**
 * The template at 1:1 in so much room: whole where it goes, else half by half, and a half in stretches that share a
 * strip; a stretch that the outline does not pass is left out. Near stays left of off. None where the room is too small
 * for any part that could be held to a tree.
 */
export function screenParts(wanted: HeadOutline, room: RoomMm): readonly ScreenPart[] {
  if (!(room.widthMm >= LEAST_ROOM_MM && room.heightMm >= LEAST_ROOM_MM)) return [];
  const head = downFromCrown(wanted);
  const box = boxOf([...head.near, ...head.off]);
  if (box.right - box.left <= room.widthMm && box.bottom - box.top <= room.heightMm)
    return [{ half: "whole", window: box, across: ONE, down: ONE }];
  return SIDES.flatMap((side) =>
    halfParts(side, boxOf(head[side]), room).filter(({ window }) => clipped(head[side], window).length > 0),
  );
}

const ONE: Counted = { at: 1, of: 1 };

function halfParts(half: Side, box: Window, room: RoomMm): readonly ScreenPart[] {
  const columns = stretches(box.left, box.right, room.widthMm);
  const rows = stretches(box.top, box.bottom, room.heightMm);
  return rows.flatMap((row, r) =>
    columns.map((column, c) => ({
      half,
      window: { left: column.from, right: column.to, top: row.from, bottom: row.to },
      across: { at: c + 1, of: columns.length },
      down: { at: r + 1, of: rows.length },
    })),
  );
}

/** As few equal stretches as go, each sharing a strip with the next, and none of them beyond the ends. */
function stretches(from: number, to: number, roomMm: number): readonly Stretch[] {
  const length = to - from;
  if (length <= roomMm) return [{ from, to }];
  const count = Math.ceil((length - SHARED_MM) / (roomMm - SHARED_MM));
  const each = (length + (count - 1) * SHARED_MM) / count;
  return Array.from({ length: count }, (_, i) => {
    const start = from + i * (each - SHARED_MM);
    return { from: start, to: start + each };
  });
}

function boxOf(points: readonly At[]): Window {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    left: Math.min(...xs) - MARGIN_MM,
    right: Math.max(...xs) + MARGIN_MM,
    top: Math.min(...ys) - MARGIN_MM,
    bottom: Math.max(...ys) + MARGIN_MM,
  };
}
