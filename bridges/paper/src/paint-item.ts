import { DASH, fineLines } from "@treewright/core/engine/drawing/strokes.ts";
import { path } from "@treewright/core/engine/drawing/svg.ts";
import { INKS, type Item, PENS, TINTS } from "@treewright/core/engine/drawing.ts";
import type PDFDocument from "pdfkit";
import type { Typesetter } from "./typesetter.ts";

type Pdf = InstanceType<typeof PDFDocument>;
type Structure = ReturnType<Pdf["struct"]>;

/** Paints one item; lines are marked as decoration, words as paragraphs to be read aloud. Lengths are mm by the page's scale. */
export function paintItem(pdf: Pdf, setter: Typesetter, whole: Structure, item: Item, page: number): void {
  if (item.kind === "text") {
    if (item.words.trim() === "") return;
    const paragraph = pdf.struct("P", {}, () => written(pdf, setter, item, page));
    whole.add(paragraph);
    paragraph.end();
    return;
  }
  pdf.markContent("Artifact", { type: "Layout" });
  if (item.kind === "band") band(pdf, item);
  else drawn(pdf, item);
  pdf.endMarkedContent();
}

function drawn(pdf: Pdf, item: Extract<Item, { kind: "line" }>): void {
  fine(pdf, item);
  const d = path(item.points, item.closed);
  pdf.lineWidth(PENS[item.pen]).lineJoin("round").lineCap("butt").strokeColor(INKS.ink);
  if (item.dashed) pdf.dash(DASH[0], { space: DASH[1] });
  else pdf.undash();
  pdf.path(d);
  if (item.fill === "ink" || item.fill === "paper") pdf.fillAndStroke(INKS[item.fill], INKS.ink);
  else pdf.stroke();
}

function band(pdf: Pdf, item: Extract<Item, { kind: "band" }>): void {
  if (item.tint === "crossed") {
    fine(pdf, item);
    return;
  }
  const d = item.rings.map((ring) => path(ring, true)).join("");
  if (d !== "") pdf.path(d).fill(TINTS[item.tint], "nonzero");
}

function fine(pdf: Pdf, item: Item): void {
  const d = fineLines(item)
    .map((run) => path(run, false))
    .join("");
  if (d !== "") pdf.undash().lineWidth(PENS.thin).path(d).stroke(INKS.ink);
}

function written(pdf: Pdf, setter: Typesetter, item: Extract<Item, { kind: "text" }>, page: number): void {
  const runs = setter.runs(item.words, item.face, item.bold, { page, part: item.name });
  const widths = runs.map((run) => setter.width(run, item.size));
  const whole = widths.reduce((sum, width) => sum + width, 0);
  const [x, y] = item.at;
  let from = item.anchor === "start" ? x : item.anchor === "end" ? x - whole : x - whole / 2;
  pdf.save();
  if (item.turn !== 0) pdf.rotate(item.turn, { origin: [x, y] });
  runs.forEach((run, i) => {
    pdf.font(run.font).fontSize(item.size).fillColor(INKS[item.ink]);
    pdf.text(run.words, from, y, { lineBreak: false, baseline: "alphabetic" });
    from += widths[i] ?? 0;
  });
  pdf.restore();
}
