import { describe, expect, test } from "vitest";
import { ASSUMED_LOADS } from "../../core/src/fit/assumed-loads.ts";
import { loadPoint } from "../../core/src/fit/bars.ts";
import { loadsFor, TREE } from "./model-loads.ts";

const { barsAheadMm, barsApartMm, barsOverTipsMm } = ASSUMED_LOADS;
const barsFor = (bars: object) => loadsFor({ bars }).bars;
const drawn = (bars: object) =>
  barsFor(bars)
    .uncertain.map(({ id }) => id)
    .filter((id) => id.startsWith("bars."));

describe("stirrup bars", () => {
  test("where none was read they lie where bars usually do, and all three places are drawn", () => {
    const { near, off } = barsFor({}).at(TREE, {});
    const z = TREE.tipHeightMm + barsOverTipsMm.base;
    const x = TREE.deepestSeatMm - barsAheadMm.base;
    expect([near, off]).toEqual([
      { x, y: -barsApartMm.base / 2, z },
      { x, y: barsApartMm.base / 2, z },
    ]);
    expect(drawn({})).toEqual([barsAheadMm.id, barsApartMm.id, barsOverTipsMm.id]);
  });
  test("what was read stands in its place and is no longer drawn; one side read serves for both", () => {
    const { near, off } = barsFor({ near: 70, apart: 240, underStraightEdge: 30 }).at(TREE, {});
    expect([near, off]).toEqual([
      { x: 70, y: -120, z: -30 },
      { x: 70, y: 120, z: -30 },
    ]);
    expect(drawn({ near: 70, apart: 240, underStraightEdge: 30 })).toEqual([]);
    expect(barsFor({ off: 60 }).at(TREE, {}).near.x).toBe(60);
    const uneven = barsFor({ near: 70, off: 60 }).at(TREE, {});
    expect([uneven.near.x, uneven.off.x]).toEqual([70, 60]);
    expect(drawn({ off: 60 })).toEqual([barsApartMm.id, barsOverTipsMm.id]);
    expect(drawn({ apart: 240 })).toEqual([barsAheadMm.id, barsOverTipsMm.id]);
    expect(drawn({ underStraightEdge: 30 })).toEqual([barsAheadMm.id, barsApartMm.id]);
  });
  test("a part of the load on them moves its point that part of the way to their middle", () => {
    const seat = { x: 200, y: 1, z: 40 };
    const bars = { near: { x: 70, y: -120, z: -30 }, off: { x: 60, y: 120, z: -20 } };
    expect(loadPoint(seat, bars, 0)).toEqual(seat);
    expect(loadPoint(seat, bars, 1)).toEqual({ x: 65, y: 0, z: -25 });
    const half = loadPoint(seat, bars, 0.5);
    expect([half.x, half.y, half.z]).toEqual([132.5, 0.5, 7.5]);
  });
});
