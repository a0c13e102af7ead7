import { biotNumber, steadyFaces } from "../../engine/heat/index.ts";
import { EVEN_WITHIN_K, HEATED_TO_C, NYLON, STILL_AIR, THICKNESS } from "./nylon.ts";

interface Span {
  readonly lo: number;
  readonly hi: number;
}

/** Whether a solid head can be made soft from one side at all. */
export interface OneSidedHeating {
  readonly thicknessMm: Span;
  /** Film of air on the far face against conduction, h l / k. */
  readonly biot: Span;
  /** How much hotter the heated face stays than the far one however long it is heated, K. */
  readonly hotterByK: Span;
  readonly window: boolean;
  readonly says: string;
}

/**
 * One-sided heating of a solid head of unfilled nylon, air behind. The heated face may stand no higher than where melting
 * begins; the far face then stays colder by a step that no waiting takes away (closed form: Biot number). A window is
 * there only where that step is small enough for the whole thickness to be soft at once, in any air of the range.
 * thicknessMm: as read, above 0 (RangeError otherwise); undefined: the whole stated range of such heads.
 */
export function oneSidedHeating(thicknessMm: number | undefined): OneSidedHeating {
  if (thicknessMm !== undefined && !(thicknessMm > 0))
    throw new RangeError(`a thickness is above 0 mm, read ${thicknessMm}`);
  const thickness: Span = thicknessMm === undefined ? THICKNESS : { lo: thicknessMm, hi: thicknessMm };
  const thin = colderBehind(thickness.lo, STILL_AIR.loWm2K, NYLON.conductivityWmK.hi);
  const thick = colderBehind(thickness.hi, STILL_AIR.hiWm2K, NYLON.conductivityWmK.lo);
  const hotterByK = { lo: thin.hotterByK, hi: thick.hotterByK };
  const window = hotterByK.hi <= EVEN_WITHIN_K;
  const biot = { lo: thin.biot, hi: thick.biot };
  return {
    thicknessMm: thickness,
    biot,
    hotterByK,
    window,
    says: inWords(thickness, biot, hotterByK, window),
  };
}

function colderBehind(thicknessMm: number, filmWm2K: number, conductivityWmK: number) {
  const slab = { thicknessMm, conductivityWmK };
  const faces = steadyFaces(
    slab,
    { kind: "held", temperatureC: HEATED_TO_C },
    { kind: "film", filmWm2K, airC: STILL_AIR.airC },
  );
  const hotterByK = faces === undefined ? Number.NaN : faces.frontC - faces.backC;
  return { biot: biotNumber(slab, filmWm2K), hotterByK };
}

function inWords(thickness: Span, biot: Span, hotterByK: Span, window: boolean): string {
  const head = `${span(thickness, 0)} mm of unfilled nylon heated from one side, air behind (Biot number ${span(biot, 2)})`;
  const hotter = `the heated face stays ${span(hotterByK, 0)} K hotter than the far one`;
  return window
    ? `${head}: ${hotter}, within the ${EVEN_WITHIN_K} K that forming asks for.`
    : `${head}: ${hotter}, however long it is heated, where forming asks for ${EVEN_WITHIN_K} K; there is no temperature at which it forms and does not sag.`;
}

function span({ lo, hi }: Span, digits: number): string {
  const [from, to] = [lo.toFixed(digits), hi.toFixed(digits)];
  return from === to ? from : `${from} to ${to}`;
}
