import { cos, tan } from "../engine/number/index.ts";
import type { SurveyedSaddle } from "../survey/case.ts";
import { type BySide, type ByStation, SIDES } from "../terms/places.ts";
import { eachStation } from "./along.ts";
import { type BearingAt, bearingAt, halfOf, inOrder, middleOf } from "./bearing.ts";
import { Doubts, type Drawn } from "./doubt.ts";
import { headOf } from "./head.ts";
import type { Deviations, Head, Lacking, Tree, TreeBelief } from "./model.ts";

/** The rear station lies this far before the panel's end, mm (the trade's convention; see the case file). */
const REAR_BEFORE_END_MM = 40;
/** Stations nearer to each other than this tell nothing of the curve between them, mm (assumption). */
const APART_MM = 40;

/**
 * Tree and panel with their doubt, or the paths of the readings that are missing. Heights are counted from the
 * straight-edge laid along the middle over the bearing; x from the tree points, tailward.
 */
export function buildTree(saddle: SurveyedSaddle): TreeBelief | Lacking {
  const doubts = new Doubts();
  const { bearing } = saddle;
  if (bearing.face === "not-said") doubts.lack("saddle.bearing.face");
  const head = headOf(saddle, doubts);
  const faces = eachStation((station) => ({
    near: bearingAt(saddle, station, "near", doubts),
    off: bearingAt(saddle, station, "off", doubts),
  }));
  const end = doubts.take("saddle.bearing.panelEnd", bearing.panelEnd);
  const deepest = doubts.take("saddle.bearing.deepestSeat", bearing.deepestSeat);
  const straps = {
    near: doubts.take("saddle.bearing.strapNear", bearing.strapNear),
    off: doubts.take("saddle.bearing.strapOff", bearing.strapOff),
  };
  const channels = eachStation((station) =>
    doubts.takeIfRead(`saddle.bearing.${station}.channel`, bearing[station].channel),
  );
  const stations = stationReaders(saddle, doubts, deepest, end);
  if (doubts.lacking.length > 0) return { lacking: doubts.lacking };
  if (
    !inOrder(
      eachStation((station) => stations[station]({})),
      APART_MM,
    )
  )
    return { lacking: ["saddle.bearing.mid.behindFront", "saddle.bearing.rear.behindFront"] };
  const at = (deviations: Deviations): Tree => {
    const xs = eachStation((station) => stations[station](deviations));
    const here = eachStation((station) => ({
      near: faces[station].near(deviations),
      off: faces[station].off(deviations),
    }));
    const headHere = head(deviations);
    const tipHeightMm = tipHeight(headHere, here.front);
    return {
      lengthMm: end(deviations),
      stationsMm: xs,
      halves: {
        near: halfOf(
          eachStation((station) => here[station].near),
          xs,
        ),
        off: halfOf(
          eachStation((station) => here[station].off),
          xs,
        ),
      },
      head: headHere,
      crownHeightMm: tipHeightMm + headHere.depthMm,
      tipHeightMm,
      straps: { near: { xMm: straps.near(deviations) }, off: { xMm: straps.off(deviations) } },
      channelMm: eachStation((station) => channels[station]?.(deviations)),
      deepestSeatMm: deepest(deviations),
    };
  };
  return { at, uncertain: doubts.uncertain };
}

/** Where each station was read; else where its name says it is: at the points, at the deepest seat, 40 mm before the panel's end. */
function stationReaders(
  { bearing }: SurveyedSaddle,
  doubts: Doubts,
  deepest: Drawn,
  end: Drawn,
): ByStation<Drawn> {
  const read = eachStation((station) =>
    doubts.takeIfRead(`saddle.bearing.${station}.behindFront`, bearing[station].behindFront),
  );
  return {
    front: read.front ?? (() => 0),
    mid: read.mid ?? deepest,
    rear: read.rear ?? ((deviations) => end(deviations) - REAR_BEFORE_END_MM),
  };
}

/**
 * Height of the tips. Assumption: at the points the inside of the head lies on the panel's back, that is above the
 * front bearing's face, carried on straight to the tips, by the panel's thickness. Mean of both sides. Nobody reads
 * it, so only differences between settings are used.
 */
function tipHeight(head: Head, front: BySide<BearingAt>): number {
  const heights = SIDES.map((side) => {
    const { face, thickness } = front[side];
    const outward = head.spreadMm / 2 - middleOf(face);
    return face.heightMm - outward * tan(face.faceAngleRad) + thickness.middle / cos(face.faceAngleRad);
  });
  return heights.reduce((sum, one) => sum + one, 0) / heights.length;
}
