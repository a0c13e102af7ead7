import { z } from "zod";
import { measured, sign } from "./typed.ts";

export const standingSchema = z
  .strictObject({
    swelling: sign("swelling under saddle or girth"),
    heat: sign("heat under saddle or girth"),
    openSore: sign("open sore or rub under saddle or girth"),
    whiteHairs: sign("white hairs or scars under the saddle"),
    hollowNear: measured({
      kind: "length",
      lo: 0,
      hi: 60,
      by: "ruler",
      about: "hollow behind the shoulder under a 300 mm straight-edge, near side",
    }),
    hollowOff: measured({
      kind: "length",
      lo: 0,
      hi: 60,
      by: "ruler",
      about: "hollow behind the shoulder under a 300 mm straight-edge, off side",
    }),
    usableLengthNear: measured({
      kind: "length",
      lo: 200,
      hi: 650,
      by: "ruler",
      about: "front station to the last rib's line, measured at the side, near",
    }),
    usableLengthOff: measured({
      kind: "length",
      lo: 200,
      hi: 650,
      by: "ruler",
      about: "front station to the last rib's line, measured at the side, off",
    }),
    girthGroove: measured({
      kind: "length",
      lo: -200,
      hi: 250,
      by: "ruler",
      about: "girth groove, distance behind the front station",
    }),
    ridgeFront: measured({
      kind: "length",
      lo: 15,
      hi: 110,
      by: "calliper",
      about: "width of spine and ridge that the panels straddle, front",
    }),
    ridgeMid: measured({
      kind: "length",
      lo: 15,
      hi: 110,
      by: "calliper",
      about: "width of spine and ridge that the panels straddle, mid",
    }),
    ridgeRear: measured({
      kind: "length",
      lo: 15,
      hi: 110,
      by: "calliper",
      about: "width of spine and ridge that the panels straddle, rear",
    }),
  })
  .meta({ description: "the horse stood up: level, square, head level, mouth empty" });

export const movingSchema = z
  .strictObject({
    uneven: sign("uneven at walk or trot in hand"),
    toeDragOrStumble: sign("drags a toe or stumbles"),
  })
  .meta({ description: "trotted up in hand" });
