import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import type { At } from "../../core/src/engine/drawing.ts";
import { templateOf } from "../../core/src/report/template.ts";
import type { HeadOutline } from "../../core/src/report/template-data.ts";
import { poppler } from "./poppler.ts";
import { headOf, template } from "./samples.ts";

/*
 * The outline read back from the PDF by another program (pdftocairo) against the outline that was handed in,
 * without going through our drawing: every point that was handed in must lie on the paper's line.
 */

const TOLERANCE_MM = 0.1;
const paper = await paperInNode();

test("the whole outline on one sheet lies within 0.1 mm of what was handed in", async () => {
  const data = template(150);
  const found = linesIn(await paper.paint(templateOf(data, paper.measure)), 1);
  for (const side of ["near", "off"] as const) {
    expect(worst(found, data.wanted[side])).toBeLessThan(TOLERANCE_MM);
    // A head 5 % too large, and one 1 mm too wide at the tips, are seen.
    expect(worst(found, stretched(data.wanted, 1.05)[side])).toBeGreaterThan(TOLERANCE_MM);
    expect(worst(found, stretched(data.wanted, 1 + 1 / 75)[side])).toBeGreaterThan(TOLERANCE_MM);
  }
});

test("near lies left: a head wider on its near side is found as it is and not mirrored", async () => {
  const crooked: HeadOutline = { near: headOf(160, 96).near, off: headOf(140, 96).off };
  const found = linesIn(await paper.paint(templateOf(template(150, { wanted: crooked }), paper.measure)), 1);
  const whole = [...crooked.near].reverse().concat(crooked.off);
  expect(worst(found, whole)).toBeLessThan(TOLERANCE_MM);
  expect(
    worst(
      found,
      whole.map(([y, z]): At => [-y, z]),
    ),
  ).toBeGreaterThan(1);
});

test("halves joined at their register marks give the whole outline to 0.1 mm", async () => {
  const data = template(232);
  const pdf = await paper.paint(templateOf(data, paper.measure));
  const [left, right] = [linesIn(pdf, 1), linesIn(pdf, 2)];
  const shift = between(registerMark(left), registerMark(right));
  const joined = [...left, ...right.map((run) => run.map(([x, y]): At => [x - shift[0], y - shift[1]]))];
  const crown = registerMark(left);
  // Both halves in one frame: the near crown's place fixes it, the off tip must then be where it was handed in.
  const near = placedOn(joined, data.wanted.near);
  expect(near.off).toBeLessThan(TOLERANCE_MM);
  const offTip = data.wanted.off.at(-1) ?? [0, 0];
  const onPaper: At = [near.at[0] + offTip[0], near.at[1] - offTip[1]];
  expect(distanceToLines(joined, onPaper)).toBeLessThan(TOLERANCE_MM);
  expect(crown).toBeDefined();
});

/** Every line of a page, mm from the upper left corner. (Unasked, pdftocairo shrinks A4 by 0.12 % to whole points.) */
function linesIn(pdf: Uint8Array, page: number): readonly (readonly At[])[] {
  const svg = poppler(
    "pdftocairo",
    pdf,
    ["-svg", "-noshrink", "-nocenter", "-f", String(page), "-l", String(page)],
    ["OUT"],
  ).toString("utf8");
  return [...svg.matchAll(/<path [^>]*\bd="([^"]+)"[^>]*>/g)].map(([tag, d = ""]) => {
    const [a = 1, b = 0, c = 0, e = 1, f = 0, g = 0] = (/matrix\(([^)]+)\)/.exec(tag)?.[1] ?? "1,0,0,1,0,0")
      .split(",")
      .map(Number);
    return [...d.matchAll(/[ML] ?(-?[\d.]+) (-?[\d.]+)/g)].map((match): At => {
      const [x, y] = [Number(match[1]), Number(match[2])];
      return [((a * x + c * y + f) * 25.4) / 72, ((b * x + e * y + g) * 25.4) / 72];
    });
  });
}

/** Largest distance of handed-in points from the paper's lines, at the best place where the line could lie. */
function worst(lines: readonly (readonly At[])[], outline: readonly At[]): number {
  return placedOn(lines, outline).off;
}

/** The place of the crown that fits best among the ends of all long lines, and the largest distance there. */
function placedOn(lines: readonly (readonly At[])[], outline: readonly At[]): { at: At; off: number } {
  const long = lines.filter((run) => run.length > 10);
  const starts = long.flatMap((run): At[] => [run[0] ?? [0, 0], run.at(-1) ?? [0, 0]]);
  let best: { at: At; off: number } = { at: [0, 0], off: Number.POSITIVE_INFINITY };
  for (const at of starts) {
    let off = 0;
    for (const [y, z] of outline) {
      off = Math.max(off, distanceToLines(long, [at[0] + y, at[1] - z]));
      if (off >= best.off) break;
    }
    if (off < best.off) best = { at, off };
  }
  return best;
}

function distanceToLines(lines: readonly (readonly At[])[], [x, y]: At): number {
  let least = Number.POSITIVE_INFINITY;
  for (const run of lines) {
    for (let i = 0; i + 1 < run.length; i++) {
      const [x0, y0] = run[i] ?? [0, 0];
      const [x1, y1] = run[i + 1] ?? [0, 0];
      const long = (x1 - x0) ** 2 + (y1 - y0) ** 2;
      const t =
        long === 0 ? 0 : Math.max(0, Math.min(1, ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / long));
      least = Math.min(least, Math.hypot(x - x0 - t * (x1 - x0), y - y0 - t * (y1 - y0)));
    }
  }
  return least;
}

/** The centre of the upper register mark: the uppermost small diamond. */
function registerMark(lines: readonly (readonly At[])[]): At {
  const diamonds = lines.filter((run) => {
    const xs = run.map(([x]) => x);
    const ys = run.map(([, y]) => y);
    const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    return run.length >= 4 && run.length <= 6 && Math.abs(wide - 3) < 0.01 && Math.abs(high - 3) < 0.01;
  });
  const upper = diamonds.sort((a, b) => (a[0]?.[1] ?? 0) - (b[0]?.[1] ?? 0))[0];
  if (!upper) throw new Error("no register mark on the sheet");
  const [[x, y] = [0, 0]] = upper;
  return [x + 1.5, y];
}

function between(a: At, b: At): At {
  return [b[0] - a[0], b[1] - a[1]];
}

function stretched(head: HeadOutline, by: number): HeadOutline {
  const wider = (half: readonly At[]) => half.map(([y, z]): At => [y * by, z]);
  return { near: wider(head.near), off: wider(head.off) };
}
