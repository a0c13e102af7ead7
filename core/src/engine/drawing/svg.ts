import { type At, type Face, INKS, type Item, type Page, PENS, TINTS } from "../drawing.ts";
import { DASH, fineLines } from "./strokes.ts";

/** Families of each face: ours first, then the reader's own. */
export const FAMILIES: { readonly [F in Face]: string } = {
  text: "'Atkinson Hyperlegible Next', sans-serif",
  figure: "'B612 Mono', monospace",
  letter: "'Source Serif 4', serif",
};

/**
 * One page as SVG at true size: a user unit is a millimetre.
 * @param style CSS with the fonts, where the page is to carry them; lines need none
 */
export function svgOf(page: Page, title: string, language = "en", style = ""): string {
  const { width, height } = page;
  const parts = page.items.map((item) => itemAsSvg(item));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" xml:lang="${escaped(language)}">`,
    `<title>${escaped(title)}</title>`,
    ...(style === "" ? [] : [`<style>${escaped(style)}</style>`]),
    ...parts,
    "</svg>",
    "",
  ].join("\n");
}

/** One item as an element, mm. */
export function itemAsSvg(item: Item): string {
  const named = `data-name="${escaped(item.name)}"`;
  if (item.kind === "text") return written(item, named);
  if (item.kind === "band") return band(item, named);
  const d = path(item.points, item.closed);
  const fill = item.fill === "ink" || item.fill === "paper" ? INKS[item.fill] : "none";
  const outline = stroked(
    d,
    PENS[item.pen],
    `${named} fill="${fill}"${item.dashed ? ` stroke-dasharray="${DASH.join(" ")}"` : ""}`,
  );
  return item.fill === "hatch"
    ? `<g ${named}>${fine(item)}${stroked(d, PENS[item.pen], 'fill="none"')}</g>`
    : outline;
}

function stroked(d: string, pen: number, more: string): string {
  return `<path ${more} d="${d}" stroke="${INKS.ink}" stroke-width="${pen}" stroke-linejoin="round" stroke-linecap="butt"/>`;
}

function band(item: Extract<Item, { kind: "band" }>, named: string): string {
  if (item.tint === "crossed") return `<g ${named}>${fine(item)}</g>`;
  const d = item.rings.map((ring) => path(ring, true)).join("");
  return `<path ${named} d="${d}" fill="${TINTS[item.tint]}" stroke="none"/>`;
}

function fine(item: Item): string {
  const d = fineLines(item)
    .map((run) => path(run, false))
    .join("");
  return stroked(d, PENS.thin, 'fill="none"');
}

function written(item: Extract<Item, { kind: "text" }>, named: string): string {
  const [x, y] = item.at;
  const turn = item.turn === 0 ? "" : ` transform="rotate(${mm(item.turn)} ${mm(x)} ${mm(y)})"`;
  const type = `font-family="${FAMILIES[item.face]}" font-size="${mm(item.size)}" font-weight="${item.bold ? 700 : 400}"`;
  return `<text ${named} x="${mm(x)}" y="${mm(y)}" ${type} text-anchor="${item.anchor}" fill="${INKS[item.ink]}" xml:space="preserve"${turn}>${escaped(item.words)}</text>`;
}

/** Path data; a micrometre is finer than any printer. */
export function path(points: readonly At[], closed: boolean): string {
  const run = points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${mm(x)} ${mm(y)}`).join("");
  return closed ? `${run}Z` : run;
}

function mm(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing holds a length that is no number: ${value}`);
  return String(Math.round(value * 1000) / 1000 + 0);
}

const ESCAPES: { readonly [sign: string]: string } = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&apos;",
};

export function escaped(said: string): string {
  return Array.from(said)
    .filter(allowedInXml)
    .map((sign) => ESCAPES[sign] ?? sign)
    .join("");
}

/** Signs that XML 1.0 does not allow at all are left out: they cannot be escaped (section 2.2, from memory). */
function allowedInXml(sign: string): boolean {
  const code = sign.codePointAt(0) ?? 0;
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd;
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff;
}
