import { describe, expect, test } from "vitest";
import type { At } from "../engine/drawing.ts";
import { drawUniform } from "../engine/random.ts";
import { SIDES } from "../terms/places.ts";
import { downFromCrown, screenParts, widthOverAllMm } from "./screen-parts.ts";

const SEED = Number(process.env.SEED ?? 20_261);
const drawn = (i: number, what: string, from: number, to: number): number =>
  from + (to - from) * drawUniform(SEED, i, what);

/** A head of straight arms: crown at so much above nought, tips so far out and down. */
function headOf(halfNear: number, halfOff: number, depth: number, crown = 8) {
  return {
    near: [
      [0, crown],
      [-halfNear, -depth],
    ] as readonly At[],
    off: [
      [0, crown],
      [halfOff, -depth],
    ] as readonly At[],
  };
}

describe("parts of a template on a screen", () => {
  test("a screen that holds it shows it whole", () => {
    const [part, ...others] = screenParts(headOf(100, 100, 110), { widthMm: 240, heightMm: 160 });
    expect(others).toEqual([]);
    expect(part?.half).toBe("whole");
    expect(part?.window).toEqual({ left: -104, right: 104, top: -4, bottom: 122 });
    expect(widthOverAllMm(headOf(100, 90, 110))).toBe(190);
  });

  test("one that is too narrow shows halves, near first and left, never mirrored", () => {
    const parts = screenParts(headOf(100, 90, 110), { widthMm: 130, heightMm: 160 });
    expect(parts.map(({ half }) => half)).toEqual(["near", "off"]);
    expect(parts[0]?.window).toMatchObject({ left: -104, right: 4 });
    expect(parts[1]?.window).toMatchObject({ left: -4, right: 94 });
  });

  test("in any room every point of the outline is on a part of its half, and no part is larger than the room", () => {
    for (let i = 0; i < 300; i++) {
      const head = headOf(drawn(i, "near", 70, 140), drawn(i, "off", 70, 140), drawn(i, "depth", 70, 150));
      const room = { widthMm: drawn(i, "width", 31, 400), heightMm: drawn(i, "height", 31, 250) };
      const parts = screenParts(head, room);
      expect(parts.length).toBeGreaterThan(0);
      for (const { window, across, down } of parts) {
        expect(window.right - window.left).toBeLessThanOrEqual(room.widthMm + 1e-9);
        expect(window.bottom - window.top).toBeLessThanOrEqual(room.heightMm + 1e-9);
        expect(across.at).toBeLessThanOrEqual(across.of);
        expect(down.at).toBeLessThanOrEqual(down.of);
      }
      const down = downFromCrown(head);
      for (const side of SIDES)
        for (let t = 0; t <= 1; t += 0.05) {
          const [[x0, y0], [x1, y1]] = [down[side][0] ?? [0, 0], down[side][1] ?? [0, 0]];
          const [x, y] = [x0 + t * (x1 - x0), y0 + t * (y1 - y0)];
          const on = parts.filter(
            ({ half, window: { left, right, top, bottom } }) =>
              (half === side || half === "whole") && x >= left && x <= right && y >= top && y <= bottom,
          );
          expect(on.length, `seed ${SEED}, case ${i}, ${side} at ${t}`).toBeGreaterThan(0);
        }
    }
  });

  test("a room in which nothing can be held to a tree has no part", () => {
    expect(screenParts(headOf(100, 100, 110), { widthMm: 20, heightMm: 200 })).toEqual([]);
    expect(screenParts(headOf(100, 100, 110), { widthMm: Number.NaN, heightMm: 200 })).toEqual([]);
  });
});
