import type { Table } from "../trade.ts";

/** The saddle looked over, its build, its lines. */
export const SADDLE: Table = {
  "what the arch of the head is made of": "Woraus der Bogen des Kopfes besteht",
  "metal that reinforces the head": "Metall, das den Kopf verstärkt",
  "spring steels of the tree (a spring tree has them along its rails)":
    "Federstähle des Baums (ein Federbaum hat sie längs der Trachten)",
  "part of the head made to be exchanged": "Teil des Kopfes, das zum Wechseln gemacht ist",
  "what moves this head": "Was diesen Kopf bewegt",
  "special form of saddle or head": "Besondere Form von Sattel oder Kopf",
  "how the build was told": "Woran die Bauart erkannt wurde",
  "temperature of the tree": "Temperatur des Baums",
  "how the head is built, by its properties, and how that was told":
    "Wie der Kopf gebaut ist, nach seinen Eigenschaften, und woran das erkannt wurde",
  "the saddle looked over, off the horse": "Der Sattel, durchgesehen, nicht auf dem Pferd",
  "was the tree looked at under its cover or bare": "Wurde der Baum unter dem Bezug oder bloß angesehen",
  "part by part": "Teil für Teil",
  head: "Kopf",
  rails: "Trachten",
  cantle: "Hinterzwiesel",
  bars: "Sturzfedern",
  webs: "Spanngurte",
  "girth straps": "Gurtstrupfen",
  "rivets; in polymer, what holds its bar": "Nieten; bei Kunststoff, was die Schiene hält",
  layers: "Schichten",
  "plates; in polymer, its bar": "Kopfeisen; bei Kunststoff die Schiene",
  "panel fixing": "Befestigung des Kissens",
  "head squeezed and pulled at the tips by the heels of the hands":
    "Kopf an den Ortspitzen mit den Handballen zusammengedrückt und auseinandergezogen",
  "head against the thigh, cantle drawn toward it": "Kopf gegen den Schenkel, Hinterzwiesel herangezogen",
  "head held, cantle turned both ways": "Kopf gehalten, Hinterzwiesel nach beiden Seiten verdreht",
  "click, grate or creak": "Knacken, Reiben oder Knarren",
  "crack or white stress line in the head": "Riss oder weiße Spannungslinie im Kopf",
  "rust bleed or dark ring at a rivet": "Rostfahne oder dunkler Ring an einer Niete",
  "musty smell, mould, swollen edge": "Modriger Geruch, Schimmel, aufgequollene Kante",
  "exchanged plate home, both sides the same, screws sound":
    "Gewechseltes Kopfeisen sitzt ganz, beide Seiten gleich, Schrauben in Ordnung",
  "exchanged plate bent, filed, drilled or forced":
    "Gewechseltes Kopfeisen verbogen, gefeilt, gebohrt oder hineingezwungen",
  "named person who saw it bare": "Name der Person, die den bloßen Baum gesehen hat",
  "lines and square": "Linien und Winkel",
  "{side} tip to the {other} rear corner": "Ortspitze {side} zur hinteren Ecke {other}",
  "length of the point, {side}": "Länge des Orts, {side}",
  "rock of the points on a flat bench": "Kippeln der Orte auf ebener Werkbank",
  "string from head centre to cantle centre, greatest distance from the seat's line":
    "Schnur von der Mitte des Kopfes zur Mitte des Hinterzwiesels, größter Abstand von der Sitzlinie",
};

/** Head and points, plates, inserts, forming. */
export const HEAD: Table = {
  "face of the head that the spreads below were taken on":
    "Seite des Kopfes, an der die Weiten unten genommen wurden",
  "spread at the tips, on the face named": "Weite an den Ortspitzen, an der genannten Seite",
  "spread at the upper level, on the face named": "Weite an der oberen Höhe, an der genannten Seite",
  "depth of the upper level below the crown": "Tiefe der oberen Höhe unter dem Scheitel",
  "depth from crown to the line of the tips": "Tiefe vom Scheitel bis zur Linie der Ortspitzen",
  "inner radius of the crown": "Innenradius des Scheitels",
  "thickness of the head at the points, to go from one face to the other":
    "Dicke des Kopfes an den Orten, um von einer Seite auf die andere zu rechnen",
  "half-angle of the near point to the tree's centre plane":
    "Halber Winkel des linken Orts zur Mittelebene des Baums",
  "half-angle of the off point to the tree's centre plane":
    "Halber Winkel des rechten Orts zur Mittelebene des Baums",
  "spread at the tips as made, on the face named": "Weite an den Ortspitzen ab Werk, an der genannten Seite",
  "thickness of the wood between the plates at the head, or of a polymer head":
    "Dicke des Holzes zwischen den Eisen am Kopf, oder eines Kopfes aus Kunststoff",
  "width of the wood at the head along the back, or of a polymer head":
    "Breite des Holzes am Kopf längs des Rückens, oder eines Kopfes aus Kunststoff",
  "thickness of the plate over the head, or of the bar within a polymer head":
    "Dicke des Eisens über dem Kopf, oder der Schiene in einem Kopf aus Kunststoff",
  "width of the plate over the head, or of the bar within a polymer head":
    "Breite des Eisens über dem Kopf, oder der Schiene in einem Kopf aus Kunststoff",
  "thickness of the plate under the head": "Dicke des Eisens unter dem Kopf",
  "width of the plate under the head": "Breite des Eisens unter dem Kopf",
  "rivets through each plate, on each side of the head's middle":
    "Nieten durch jedes Eisen, auf jeder Seite der Kopfmitte",
  "thickness of a rivet's shank": "Dicke eines Nietschafts",
  "screw holes a side": "Schraublöcher je Seite",
  "distance between the holes of one side": "Abstand der Löcher einer Seite",
  "edge of the plate where it is held": "Kante des Kopfeisens, wo es gehalten wird",
  "thickness of the plate where it is held": "Dicke des Kopfeisens, wo es gehalten wird",
  "positions of the inserts, each read as fitted": "Stellungen der Einsätze, jede eingebaut abgelesen",
  "mark or number of the position; never compared": "Zeichen oder Nummer der Stellung; wird nie verglichen",
  "spread at the tips with both inserts in it, as fitted, on the head's named face":
    "Weite an den Ortspitzen mit beiden Einsätzen darin, eingebaut, an der genannten Seite des Kopfes",
  "half-angle of the points with both inserts in it, as fitted":
    "Halber Winkel der Orte mit beiden Einsätzen darin, eingebaut",
  "position that the inserts stand in now, {side}, counted in the order of the list":
    "Stellung, in der die Einsätze jetzt stehen, {side}, nach der Reihe der Liste gezählt",
  "inserts locked home, both sides": "Einsätze ganz eingerastet, beide Seiten",
  "keyways unworn: the inserts sit without play": "Nuten nicht ausgeschlagen: Einsätze sitzen ohne Spiel",
  "grit or dirt in a keyway": "Sand oder Schmutz in einer Nut",
  "a polymer head's forming, by its maker's sheet":
    "Das Formen eines Kopfes aus Kunststoff, nach dem Blatt des Herstellers",
  "the maker's forming sheet for this very tree is at hand":
    "Das Formblatt des Herstellers für genau diesen Baum liegt vor",
  "lowest temperature of forming by the maker's sheet, degrees C":
    "Niedrigste Formtemperatur nach dem Blatt des Herstellers, Grad C",
  "highest temperature of forming by the maker's sheet, degrees C":
    "Höchste Formtemperatur nach dem Blatt des Herstellers, Grad C",
  "most change at the tips in one heating, by the maker's sheet":
    "Größte Änderung an den Ortspitzen bei einem Erwärmen, nach dem Blatt des Herstellers",
  "most change at the tips from as made, by the maker's sheet":
    "Größte Änderung an den Ortspitzen gegenüber ab Werk, nach dem Blatt des Herstellers",
  "how often this head has been formed by heat": "Wie oft dieser Kopf schon mit Wärme geformt wurde",
  "plates at hand, at most 60": "Vorrätige Kopfeisen, höchstens 60",
  "what the maker calls it; never compared": "Wie der Hersteller es nennt; wird nie verglichen",
  "maker of the plate": "Hersteller des Kopfeisens",
  "spread at the tips, as fitted if it was, on the head's named face":
    "Weite an den Ortspitzen, eingebaut, wenn es eingebaut war, an der genannten Seite des Kopfes",
  "half-angle of the plate": "Halber Winkel des Kopfeisens",
  "measured as fitted in this head, not loose": "Eingebaut in diesem Kopf gemessen, nicht lose",
  "it was in this head before the last change, and is kept with the saddle":
    "Es war vor der letzten Änderung in diesem Kopf und wird beim Sattel aufbewahrt",
  "plate straight, holes sound, no crack": "Kopfeisen gerade, Löcher in Ordnung, kein Riss",
};
