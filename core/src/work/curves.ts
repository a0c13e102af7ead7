import type { Half, Section } from "../engine/bending/index.ts";
import { drawnHead } from "../reach/bend/drawn-head.ts";
import { bendingHead, type HeadArchBelief } from "../reach/bend/head-arch.ts";
import { changesThatBent, throughPast } from "../reach/bend/past.ts";
import type { Deviations } from "../shape/model.ts";
import type { SurveyedSaddle } from "../survey/case.ts";
import { BELIEVED_WIDER } from "./doubts.ts";
import type { HalfCurve } from "./half-curve.ts";
import { pressCurve, type Way } from "./press-curve.ts";

/** Heads that may be the one in the press, as tables. */
export interface HeadCurves {
  readonly stuff: HeadArchBelief["stuff"];
  readonly curves: readonly HalfCurve[];
}

/** Heads drawn before the first pass: the 90 % interval is steady to a twentieth of its width. */
export const HEADS_DRAWN = 500;
/** Strips through a layer here, half as many as reach takes: 2 parts in a hundred of what is kept (assumption), far below the doubt. */
const FIBRES = 4;

/** Draws heads from the ranges of reach/bend, with all that was read of this one. undefined where its head is not one that is bent, or was not read. */
export function headCurves(
  saddle: SurveyedSaddle,
  way: Way,
  seed: number,
  count = HEADS_DRAWN,
): HeadCurves | undefined {
  const known = DRAWN.get(saddle);
  const key = `${way} ${seed} ${count}`;
  if (known?.key === key) return known.curves;
  const curves = drawCurves(saddle, way, seed, count);
  DRAWN.set(saddle, { key, curves });
  return curves;
}

/** The last drawn of each saddle: the same one asked for again is not worked out again. */
const DRAWN = new WeakMap<
  SurveyedSaddle,
  { readonly key: string; readonly curves: HeadCurves | undefined }
>();

function drawCurves(saddle: SurveyedSaddle, way: Way, seed: number, count: number): HeadCurves | undefined {
  const belief = bendingHead(saddle);
  if (belief === undefined) return undefined;
  const drawn = Array.from({ length: count }, (_, i) =>
    curveAt(belief, widely(drawnHead(belief, seed, i)), saddle, way),
  );
  const curves = drawn.filter((one) => one !== undefined);
  return curves.length === 0 ? undefined : { stuff: belief.stuff, curves };
}

const widely = (drawn: Deviations): Deviations =>
  Object.fromEntries(Object.entries(drawn).map(([id, off]) => [id, BELIEVED_WIDER * off]));

/** The table of one head. undefined where it gives way. */
export function curveAt(
  belief: HeadArchBelief,
  deviations: Deviations,
  saddle: SurveyedSaddle,
  way: Way,
): HalfCurve | undefined {
  const { arch, head } = belief.at(deviations, "alike");
  const half = coarse(arch[0]);
  const upperMm = head.depthMm - (head.upperBelowCrownMm ?? UPPER_BELOW_CROWN_MM);
  return pressCurve(half, throughPast([half, half], changesThatBent(saddle)).state, way, upperMm);
}
/** Where the upper level lies when nobody said. Common practice, no source: about 35 mm below the crown. */
const UPPER_BELOW_CROWN_MM = 35;

function coarse(half: Half): Half {
  const known = new Map<Section, Section>();
  return half.map((piece) => {
    const section = known.get(piece.section) ?? { ...piece.section, fibres: FIBRES };
    known.set(piece.section, section);
    return { ...piece, section };
  });
}
