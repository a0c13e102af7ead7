import { insertsStand } from "../../reach/inserts.ts";
import type { SurveyedSaddle } from "../../survey/case.ts";
import type { Seen, Sign } from "../../terms/knowing.ts";
import { SOUNDNESS_ORDERS, type SoundnessFindings, worse } from "./orders.ts";

type RiderPart = SoundnessFindings["riderPart"];
type OtherPart = SoundnessFindings["otherPart"];

const structure = (seen: Seen): RiderPart => (seen === "failed" ? "failed-structure" : seen);
const renewable = (seen: Seen): RiderPart => (seen === "failed" ? "failed-renewable" : seen);
/** What is always in reach of eye or hand: "cannot be seen" there means it was not looked at. */
const inReach = (seen: Seen): RiderPart => renewable(seen === "cannot-be-seen" ? "not-looked" : seen);
const sign = (found: Sign, then: RiderPart): RiderPart =>
  found === "yes" ? then : found === "no" ? "sound" : found === "cannot-be-seen" ? found : "not-looked";

/** Inserts in two positions are a head that nobody made: out of use until they are put right. */
const alike = ({ inserts }: SurveyedSaddle): RiderPart =>
  insertsStand(inserts).how === "unlike" ? "failed-renewable" : "sound";

/** Head, rails, cantle, bars, webs, straps, and what the hands tell of them. A crack seen is structure; a click heard is not yet a crack seen. */
export function riderPart(saddle: SurveyedSaddle): RiderPart {
  const { parts, squeeze, flex, twist, noise, whiteLine, plateHome, plateBent } = saddle.looked;
  const whole = [
    structure(parts.head),
    structure(parts.rails),
    structure(parts.cantle),
    sign(whiteLine, "failed-structure"),
  ];
  const layers: RiderPart = parts.layers === "failed" ? "failed-structure" : "sound";
  const hung = [parts.bars, parts.webs, parts["girth-straps"]].map(inReach);
  const byHand = [squeeze, flex, twist].map(inReach);
  const heard: RiderPart = noise === "cannot-be-seen" ? "not-looked" : sign(noise, "failed-renewable");
  const bent = sign(plateBent, "failed-renewable");
  const { lockHome, keyway } = saddle.inserts;
  const exchanged: { readonly [E in typeof saddle.build.exchange]: readonly RiderPart[] } = {
    none: [],
    unknown: [],
    plate: [inReach(plateHome), bent],
    insert: [inReach(lockHome), inReach(keyway), bent, alike(saddle)],
  };
  const all = [...whole, layers, ...hung, ...byHand, heard, ...exchanged[saddle.build.exchange]];
  return worse(SOUNDNESS_ORDERS.riderPart, ...all);
}

/** Parts that this tree can have: no layers in polymer, no plates or rivets where no metal was found. */
function partsThere(saddle: SurveyedSaddle): readonly Seen[] {
  const { parts } = saddle.looked;
  const polymer = saddle.build.arch === "polymer";
  const noMetal = saddle.build.metal === "none";
  return [
    parts["panel-fixing"],
    ...(polymer ? [] : [parts.layers]),
    ...(noMetal ? [] : [parts.plates]),
    ...(noMetal && polymer ? [] : [parts.rivets]),
  ];
}

/** Rivets, layers, plates, panel fixing, and the marks that make them doubtful. */
export function otherPart(saddle: SurveyedSaddle): OtherPart {
  const { rust, musty } = saddle.looked;
  const mark = (found: Sign): OtherPart =>
    found === "yes" ? "doubtful" : found === "no" ? "sound" : found === "unknown" ? "not-looked" : found;
  const { storedDamp, storedHot } = saddle.past;
  const stored: OtherPart = storedDamp === "yes" || storedHot === "yes" ? "doubtful" : "sound";
  const all: readonly OtherPart[] = [...partsThere(saddle), mark(rust), mark(musty), stored];
  return worse(SOUNDNESS_ORDERS.otherPart, ...all);
}
