import { practice } from "./make.ts";

export const WAY_RULES = [
  practice(
    "way-no-exchange",
    "A head without a changeable plate or inserts is not exchanged.",
    "saddle.build.exchange",
  ),
  practice(
    "way-changeable",
    "A changeable head is moved by exchange; no plate is ever bent or pressed to size.",
    "saddle.build.exchange",
  ),
  practice(
    "way-bar-fixings",
    "A bar whose fixings in the polymer are in doubt or have failed is the maker's: no press pulls on it.",
    "saddle.looked.parts.rivets",
  ),
  practice(
    "way-inserts-unlike",
    "Inserts that stand in two positions are put right first, and then everything is read again; unlike sides are never a cure.",
    "saddle.inserts.near",
    "saddle.inserts.off",
  ),
  practice(
    "way-inserts-not-known",
    "No insert is moved before it is known in which position each side stands, and that its keyway is clean.",
    "saddle.inserts.near",
    "saddle.inserts.off",
    "saddle.inserts.grit",
  ),
  practice(
    "way-inserts-grit",
    "Grit in a keyway is cleaned out, and the keyway looked at again, before an insert is moved.",
    "saddle.inserts.grit",
  ),
  practice(
    "way-polymer-solid",
    "Solid polymer is moved by heat, never by pressure, and only by the maker's people, by the maker's forming sheet.",
    "saddle.build",
    "saddle.forming",
  ),
  practice(
    "way-maker-only",
    "Side saddles, half trees, hinged or screw heads, composites and heads that nothing moves are the maker's.",
    "saddle.build",
  ),
  practice(
    "way-build-not-known",
    "No head is moved before it is known how it is built.",
    "saddle.build.form",
    "saddle.build.arch",
    "saddle.build.metal",
    "saddle.build.exchange",
    "saddle.build.movedBy",
  ),
  practice(
    "way-owners-word",
    "A head is not pressed on an owner's word for how it is built.",
    "saddle.build.toldBy",
  ),
  practice(
    "way-not-told",
    "No head is moved before somebody has told how it is built, and by what sign.",
    "saddle.build.toldBy",
  ),
  practice(
    "way-moved-not-known",
    "How far this head has been moved already is not known; no press before its record, or the spread as made, shows that the caps hold.",
    "saddle.head.asMadeSpreadTips",
    "saddle.past.alterationsKnown",
    "saddle.past.alterations",
  ),
  practice(
    "way-polymer-cold",
    "Polymer under 15 C is first brought to 20 C, for hours; cold it is neither pressed nor sprung open, and a tree whose warmth nobody looked at is not pressed.",
    "saddle.build.treeTemperature",
  ),
] as const;
