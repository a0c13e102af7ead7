import type { Table } from "../trade.ts";

/** Panel, bearing, straps, bars. */
export const PANEL: Table = {
  "where and how the saddle bears: rails, panel, channel, straps":
    "Wo und wie der Sattel trägt: Trachten, Kissen, Kissenkanal, Strupfen",
  "dressed: the panel's face; bare: the rail's": "Bezogen: die Fläche des Kissens; bloß: die der Tracht",
  "distance behind the tree points": "Abstand hinter den Ortspitzen",
  "inner edge from the tree's centre plane": "Innenkante von der Mittelebene des Baums",
  "width of the face": "Breite der Auflagefläche",
  "angle of the face to the horizontal, outer edge lower is positive":
    "Winkel der Auflagefläche zur Waagerechten, positiv, wo die Außenkante tiefer liegt",
  "height of the straight-edge over the middle of the face":
    "Höhe der Richtlatte über der Mitte der Auflagefläche",
  "panel thickness under the face at its inner edge": "Dicke des Kissens unter der Fläche, an der Innenkante",
  "panel thickness under the face in its middle": "Dicke des Kissens unter der Fläche, in der Mitte",
  "panel thickness under the face at its outer edge": "Dicke des Kissens unter der Fläche, an der Außenkante",
  "channel between the panels": "Kissenkanal",
  "end of the panel behind the tree points": "Ende des Kissens hinter den Ortspitzen",
  "deepest seat behind the tree points": "Tiefster Punkt des Sitzes hinter den Ortspitzen",
  "girth strap behind the tree points, {side}": "Gurtstrupfe hinter den Ortspitzen, {side}",
  "a girth strap hangs on the tree point": "Eine Gurtstrupfe hängt am Ort",
  "points seated in their pockets": "Orte sitzen in ihren Taschen",
  "how the straps that are used run: to one buckle, or side by side":
    "Wie die benutzten Strupfen laufen: zu einer Schnalle oder nebeneinander",
  "the girth is buckled to the point strap": "Der Gurt ist an der Vorderstrupfe geschnallt",
  "point strap behind the tree points, {side}": "Vorderstrupfe hinter den Ortspitzen, {side}",
  "the girth is buckled to the first strap": "Der Gurt ist an der ersten Strupfe geschnallt",
  "first strap behind the tree points, {side}": "Erste Strupfe hinter den Ortspitzen, {side}",
  "the girth is buckled to the second strap": "Der Gurt ist an der zweiten Strupfe geschnallt",
  "second strap behind the tree points, {side}": "Zweite Strupfe hinter den Ortspitzen, {side}",
  "the girth is buckled to the third strap": "Der Gurt ist an der dritten Strupfe geschnallt",
  "third strap behind the tree points, {side}": "Dritte Strupfe hinter den Ortspitzen, {side}",
  "the girth is buckled to the back strap": "Der Gurt ist an der hinteren Strupfe geschnallt",
  "back strap behind the tree points, {side}": "Hintere Strupfe hinter den Ortspitzen, {side}",
  "stirrup leather behind the tree points, {side}": "Bügelriemen hinter den Ortspitzen, {side}",
  "from one stirrup bar to the other, outside": "Von einer Sturzfeder zur anderen, außen",
  "height of the straight-edge over the stirrup bars": "Höhe der Richtlatte über den Sturzfedern",
  "the panel": "Das Kissen",
  "what the panel is filled with": "Womit das Kissen gefüllt ist",
  "state of the panel": "Zustand des Kissens",
  "panel square on the tree": "Kissen sitzt gerade am Baum",
};

/** Tracings, and the saddle on the back in its five states. */
export const BACK: Table = {
  "tracings, at most 24": "Rückenkurven, höchstens 24",
  "distance of this trace behind the front station, along the back":
    "Abstand dieser Kurve hinter der vorderen Messstelle, am Rücken entlang",
  "before work (cold) or after 20 to 30 minutes of it (warm)":
    "Vor der Arbeit (kalt) oder nach 20 bis 30 Minuten Arbeit (warm)",
  "minutes since work": "Minuten seit der Arbeit",
  "who drew it": "Wer sie gezeichnet hat",
  "mass of the horse on the day this trace was drawn, where that was another day":
    "Gewicht des Pferdes am Tag dieser Kurve, wenn es ein anderer Tag war",
  "condition (1 to 9) on the day this trace was drawn, where that was another day":
    "Futterzustand (1 bis 9) am Tag dieser Kurve, wenn es ein anderer Tag war",
  "points [y to the off side, z up], near side first, top of the back at [0, 0]":
    "Punkte [y nach rechts, z nach oben], links zuerst, höchste Stelle des Rückens bei [0, 0]",
  "the same trace drawn again, each time lifted off":
    "Dieselbe Kurve noch einmal gezeichnet, jedes Mal neu angelegt",
  "the midline from front station to behind the saddle, against a level line":
    "Die Mittellinie von der vorderen Messstelle bis hinter den Sattel, gegen eine Waagerechte",
  "points [x behind the front station, z of the midline to a level line, up]":
    "Punkte [x hinter der vorderen Messstelle, z der Mittellinie zu einer Waagerechten, nach oben]",
  "behind the hollow the trunk has the shape it had before":
    "Hinter der Kuhle hat der Rumpf die Form, die er vorher hatte",
  "clearance over the top of the withers": "Freiraum über dem Widerrist",
  "clearance at the {side} side of the withers": "Freiraum neben dem Widerrist, {side}",
  "slope of the seat's bottom to gravity, head end higher is positive":
    "Neigung der Sitzfläche zum Lot, positiv, wo sie vorn höher liegt",
  "girthed up, no rider": "Angegurtet, ohne Reiter",
  "rider up, sitting still": "Mit Reiter, der still sitzt",
  "rider in half-seat": "Reiter im leichten Sitz",
  "hand between point and horse, down the near point": "Hand zwischen Ort und Pferd, am linken Ort hinunter",
  "hand between point and horse, down the off point": "Hand zwischen Ort und Pferd, am rechten Ort hinunter",
  "gap under the middle of the panel, girthed and unridden, {side}":
    "Luft unter der Mitte des Kissens, angegurtet und ungeritten, {side}",
  "rock by hand, lift of the free end": "Kippeln von Hand, Hub des freien Endes",
  "tree point behind the back edge of the blade, {side}":
    "Ortspitze hinter der Hinterkante des Schulterblatts, {side}",
  "panel's rear edge before the last rib's line, at the side":
    "Hinterkante des Kissens vor der Linie der letzten Rippe, seitlich",
  "line in which the girth hangs, distance behind the front station":
    "Linie, in der der Gurt hängt, Abstand hinter der vorderen Messstelle",
  "steady side offset seen from behind": "Bleibender seitlicher Versatz, von hinten gesehen",
  "lift of the rear edge in trot": "Abheben der Hinterkante im Trab",
  "a template of this horse offered up to the head": "Eine Schablone dieses Pferdes, an den Kopf gehalten",
  "feeler between template and head, {side}, top": "Fühlerlehre zwischen Schablone und Kopf, {side}, oben",
  "feeler between template and head, {side}, middle":
    "Fühlerlehre zwischen Schablone und Kopf, {side}, Mitte",
  "feeler between template and head, {side}, tip; negative where the head is narrower":
    "Fühlerlehre zwischen Schablone und Kopf, {side}, Spitze; negativ, wo der Kopf enger ist",
  "signed: the other horses of this saddle are left out":
    "Unterschrieben: Die anderen Pferde dieses Sattels bleiben außer Acht",
};

/** Titles of the steps, and where along the horse, on which side, in which state a place is. */
export const WHERE: Table = {
  "Who and where": "Wer und wo",
  "What's been going on": "Was vorgefallen ist",
  "Horse stood up": "Pferd aufgestellt",
  "Hands on": "Abgetastet",
  "Trotted up": "Vorgetrabt",
  Tracings: "Rückenkurven",
  "Saddle looked over": "Sattel durchgesehen",
  "Head and points": "Kopf und Orte",
  "Lines and square": "Linien und Winkel",
  Panel: "Kissen",
  "On the back": "Auf dem Rücken",
  "Girthed up": "Angegurtet",
  "Rider up": "Mit Reiter",
  "After work": "Nach der Arbeit",
  near: "links",
  off: "rechts",
  "near side": "links",
  "off side": "rechts",
  front: "vorn",
  mid: "Mitte",
  rear: "hinten",
  "withers top": "Widerrist oben",
  "withers side": "neben dem Widerrist",
  "under point": "unter dem Ort",
  "mid back": "Rückenmitte",
  "last ribs": "letzte Rippen",
  loin: "Lende",
  girth: "Gurtlage",
  breastbone: "Brustbein",
  "neck base": "Halsansatz",
  template: "Schablone",
  computed: "gerechnet",
  cold: "kalt",
  warm: "warm",
  "laid on": "aufgelegt",
  "girthed up": "angegurtet",
  "rider up": "mit Reiter",
  "half-seat": "im leichten Sitz",
  "in movement": "in der Bewegung",
  "horse {n}": "Pferd {n}",
  "trace {n}": "Kurve {n}",
  "alteration {n}": "Änderung {n}",
  "plate {n}": "Kopfeisen {n}",
  "point {n}": "Punkt {n}",
  "repeat {n}": "Wiederholung {n}",
  "front trace": "Kurve vorn",
  "mid trace": "Kurve Mitte",
  "rear trace": "Kurve hinten",
  "front trace, once more, such as after work": "Kurve vorn, noch einmal, etwa nach der Arbeit",
  "mid trace, once more, such as after work": "Kurve Mitte, noch einmal, etwa nach der Arbeit",
  "rear trace, once more, such as after work": "Kurve hinten, noch einmal, etwa nach der Arbeit",
};
