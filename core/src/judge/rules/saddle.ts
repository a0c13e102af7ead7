import { practice } from "./make.ts";

export const SADDLE_RULES = [
  practice(
    "saddle-cracked",
    "A crack or white line in arch, rail or deck, or parted layers, even 5 mm long: out of use for good, marked, not sold.",
    "saddle.looked.parts",
    "saddle.looked.whiteLine",
  ),
  practice(
    "saddle-part-failed",
    "A failed bar, web, strap, rivet or plate, or a head that clicks, grates or gives: out of use until it is found and put right, then looked at again.",
    "saddle.looked",
  ),
  practice(
    "saddle-rider-part-doubtful",
    "Doubt in a part that carries the rider: stripped before it is ridden.",
    "saddle.looked.parts",
    "saddle.looked.squeeze",
    "saddle.looked.flex",
    "saddle.looked.twist",
  ),
  practice(
    "saddle-incident",
    "A saddle that was rolled on, fallen with or driven over is stripped before it is ridden.",
    "saddle.past.incidents",
  ),
  practice(
    "saddle-incident-bare",
    "A known incident, stripped, nothing found: it may be ridden; its head is not pressed, for good.",
    "saddle.past.incidents",
  ),
  practice(
    "saddle-not-looked",
    "What could have been looked at today and was not is looked at now.",
    "saddle.looked",
  ),
  practice(
    "saddle-other-part-doubtful",
    "Rust, a dark ring, must, damp or doubt at rivets, layers or plates: stripped before it is altered.",
    "saddle.looked.parts",
    "saddle.looked.rust",
    "saddle.looked.musty",
    "saddle.past.storedDamp",
  ),
  practice(
    "saddle-not-bare",
    "A head is pressed bare only when the tree was seen bare and sound, by a named person.",
    "saddle.looked.level",
    "saddle.looked.seenBy",
  ),
  practice(
    "saddle-incident-not-known",
    "Incidents not denied one by one by an owner since new: stripped before it is pressed.",
    "saddle.past.incidents",
    "saddle.past.ownedSinceNew",
  ),
  practice(
    "saddle-past-not-clean",
    "A head altered more than once, by an unknown hand, or with an unknown past is stripped before it is pressed.",
    "saddle.past.alterationsKnown",
    "saddle.past.alterations",
    "saddle.past.repaired",
    "saddle.past.storedDamp",
  ),
  practice(
    "saddle-repaired",
    "A head that was repaired, replated or heated is for the maker.",
    "saddle.past.repaired",
    "saddle.past.heatedBefore",
  ),
  practice(
    "saddle-old",
    "Over five years, or of unknown age, a tree is stripped before its head is pressed.",
    "saddle.past.age",
  ),
  practice(
    "saddle-twisted",
    "Half-angles more than 2 degrees apart, or diagonals more than 5 mm (bare 3): stripped; confirmed bare it is the maker's. A press does not cure a twist.",
    "saddle.head.halfAngleNear",
    "saddle.head.halfAngleOff",
    "saddle.lines",
  ),
  practice(
    "saddle-square-not-measured",
    "No head is pressed before half-angles and diagonals have been read.",
    "saddle.head.halfAngleNear",
    "saddle.head.halfAngleOff",
    "saddle.lines.diagonalNear",
    "saddle.lines.diagonalOff",
  ),
  practice(
    "saddle-identity",
    "A serial that is absent, unread or different makes the saddle's history unknown.",
    "saddle.standing.serial",
    "saddle.standing.serialIsOfRecord",
  ),
  practice("saddle-nothing-found", "Nothing was found, as far as it was looked at.", "saddle.looked"),
] as const;
