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
    "way-polymer-bar",
    "Polymer with a metal bar is pressed by a qualified colleague, warm, in small passes; this program does not calculate it yet.",
    "saddle.build",
  ),
  practice(
    "way-polymer-solid",
    "Solid polymer is moved by heat, never by pressure, and only by the maker's people; this program does not calculate it yet.",
    "saddle.build",
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
