import { expect, test } from "vitest";
import { fromFile, linesOf, pointsOf, toFile } from "./typed.ts";

test("a plain number is kept as a number, anything else sign for sign", () => {
  expect(toFile("205")).toBe(205);
  expect(toFile(" -3.5 ")).toBe(-3.5);
  for (const typed of ["105.0", "105,5", "4 1/4 in", "1e3", "0x10", "not-looked", ""])
    expect(toFile(typed)).toBe(typed);
});

test("repeats go there and back", () => {
  expect(toFile("205; 206; 204,5")).toEqual({ read: [205, 206, "204,5"] });
  expect(fromFile({ read: [205, 206, "204,5"], by: "calliper" })).toBe("205; 206; 204,5");
  expect(fromFile(undefined)).toBe("");
});

test("lines of two figures are points, and a line that is not is told by its number", () => {
  expect(pointsOf("-130 -105.0\n\n0\t0\n 5;-1,5 ")).toEqual({
    points: [
      [-130, "-105.0"],
      [0, 0],
      [5, "-1,5"],
    ],
  });
  expect(pointsOf("1 2\n3 4 5")).toEqual({ line: 2, words: "3 4 5" });
  expect(
    linesOf([
      [-130, "-105.0"],
      [0, 0],
    ]),
  ).toBe("-130 -105.0\n0 0");
});
