const SVG = "http://www.w3.org/2000/svg";

/** A head from the front, drawn with our own pen: the arch, its two points, and what a question is about. 100 units a side. */
const HEAD = "M14 92 C18 60 30 24 50 18 C70 24 82 60 86 92";
export const DRAWINGS: Readonly<
  Record<string, { readonly says: string; readonly lines: readonly string[] }>
> = {
  arch: { says: "The arch of the tree, from the front", lines: [] },
  metal: {
    says: "A plate of metal that follows the arch",
    lines: ["M26 66 C32 44 40 32 50 29 C60 32 68 44 74 66", "M38 40 h1", "M61 40 h1"],
  },
  exchange: {
    says: "A piece that is meant to be taken out of the arch",
    lines: [
      "M34 46 C40 34 46 30 50 29 C54 30 60 34 66 46 L58 52 C54 46 46 46 42 52 Z",
      "M50 58 v22 m-6 -6 l6 6 l6 -6",
    ],
  },
  clicksOrMoves: {
    says: "Both points pressed towards each other",
    lines: ["M0 84 h10 m-5 -5 l5 5 l-5 5", "M100 84 h-10 m5 -5 l-5 5 l5 5"],
  },
  crackOrWhiteLine: { says: "A line across the arch", lines: ["M44 10 l4 6 l-3 5 l4 6 l-3 5"] },
  strapOrBarWorn: {
    says: "The bar at each side from which the stirrup hangs",
    lines: ["M16 74 h-10 v8 h12", "M84 74 h10 v8 h-12"],
  },
};

/** The drawing for a question, with its words in the page's language; undefined where there is none. */
export function drawingFor(name: string, said: (english: string) => string): SVGSVGElement | undefined {
  const drawing = DRAWINGS[name];
  if (!drawing) return undefined;
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("viewBox", "-2 0 104 100");
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", said(drawing.says));
  const line = (path: string, weight: string) => {
    const made = document.createElementNS(SVG, "path");
    made.setAttribute("d", path);
    made.setAttribute("class", weight);
    svg.append(made);
  };
  line(HEAD, "heavy");
  for (const path of drawing.lines) line(path, "medium");
  return svg;
}
