import { expect, test } from "vitest";
import { poseAhead } from "./pose-ahead.ts";

const pose = (heave: number) => ({ heave, pitch: heave / 100, roll: -heave / 50 });

test("from nothing there is no start, from one pose that pose, from two the line through them", () => {
  expect(poseAhead([], 3)).toBeUndefined();
  expect(poseAhead([{ at: 1, pose: pose(5) }], 3)).toEqual(pose(5));
  const passed = [9, -2, -4].map((heave, i) => ({ at: [0, 1, 3][i] ?? 0, pose: pose(heave) }));
  const ahead = poseAhead(passed, 7);
  expect(ahead?.heave).toBeCloseTo(-8, 12);
  expect(ahead?.pitch).toBeCloseTo(-0.08, 12);
  expect(ahead?.roll).toBeCloseTo(0.16, 12);
});

test("two poses at one place point nowhere: the last is taken", () => {
  const twice = [pose(1), pose(2)].map((one) => ({ at: 5, pose: one }));
  expect(poseAhead(twice, 6)).toEqual(pose(2));
});
