/** A figure as it was worked out elsewhere: a value and half of its central 95 %, in one unit. Nothing is worked out here. */
export interface Figure {
  readonly value: number;
  readonly u: number | undefined;
}

export type Unit = "mm" | "deg" | "%" | "kPa" | "cm2";
const UNIT_WORDS: { readonly [U in Unit]: string } = {
  mm: " mm",
  deg: "°",
  "%": " %",
  kPa: " kPa",
  cm2: " cm²",
};

/** A figure in print: one decimal, none where its doubt is 10 or more; a missing one says so. */
export function printed(figure: Figure | undefined, unit: Unit): string {
  if (figure === undefined) return "not read";
  const { u } = figure;
  const doubt = u === undefined ? "" : ` ± ${u.toFixed(decimalsFor(u))}`;
  return `${printedAlone(figure)}${doubt}${UNIT_WORDS[unit]}`;
}

/** Its value alone, for a row of several that share a doubt and a unit. */
export const printedAlone = ({ value, u }: Figure): string => signed(value, decimalsFor(u));

const decimalsFor = (u: number | undefined): number => (u !== undefined && u >= 10 ? 0 : 1);

/** A true minus sign, and no minus before a figure that prints as nothing. */
function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}
