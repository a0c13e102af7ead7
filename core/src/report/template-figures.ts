import { abreast, type Block, stacked } from "../engine/drawing/block.ts";
import { line } from "../engine/drawing/marks.ts";
import { paragraph } from "../engine/drawing/paragraph.ts";
import type { Item, Measure } from "../engine/drawing.ts";
import { printed } from "./figures.ts";
import { FIGURE, SMALL, TEXT } from "./looks.ts";
import type { TemplateData } from "./template-data.ts";

const LARGER: { readonly [L in TemplateData["larger"]]: string } = {
  near: "near (left); the head is made for it",
  off: "off (right); the head is made for it",
  alike: "both sides alike",
  "cannot tell": "cannot tell which side is larger",
};

/** Everything one must know to use the template, on each of its sheets. */
export function templateFigures(data: TemplateData, width: number, measure: Measure): Block {
  const half = width / 2;
  const row = (name: string, said: string, figure: boolean): Block => {
    const value = paragraph(name, said, figure ? FIGURE : TEXT, half - 36, measure);
    return abreast([
      { x: 0, block: paragraph(`${name}, name`, name, { ...SMALL, leading: TEXT.leading }, 33, measure) },
      { x: 34, block: value },
    ]);
  };
  const left = stacked([
    row("face of the head", data.face, false),
    row(`spread ${data.face} the tips`, printed(data.spread, "mm"), true),
    row("tips below the crown", printed(data.depth, "mm"), true),
    row("larger side", LARGER[data.larger], false),
  ]);
  const right = stacked([
    row("station", data.station, false),
    row("horse's back", data.temper === "not asked" ? "cold or warm: not asked" : data.temper, false),
    row("half-angle, near", printed(data.halfAngle.near, "deg"), true),
    row("half-angle, off", printed(data.halfAngle.off, "deg"), true),
  ]);
  const both = abreast([
    { x: 0, block: left },
    { x: half + 2, block: right },
  ]);
  const key = paragraph("key", `${capital(data.allowed)}. ${keyWords(data)}`, SMALL, width, measure);
  const whole = stacked([both, key], 2);
  const rule: Item = line("figures, rule", "thin", [
    [0, whole.height + 2],
    [width, whole.height + 2],
  ]);
  return { items: [...whole.items, rule], height: whole.height + 4 };
}

const capital = (said: string): string => said.slice(0, 1).toUpperCase() + said.slice(1);

function keyWords(data: TemplateData): string {
  const today = data.today
    ? "Whole line: the wanted head. Dashed line: the head today. "
    : "Whole line: the wanted head. ";
  const doubt = data.spread.u
    ? "Bracket under each tip: how far the tip may lie to either side, at true scale. "
    : "";
  return `${today}${doubt}Half-angles are to the tree's own centre plane. Seen from behind. Cut along the middle of the line; join several sheets where crosses of one name meet.`;
}
