import type { Table } from "../trade.ts";

/** What may be typed, short, beside a question. */
export const HINTS: Table = {
  "{lo} to {hi}": "{lo} bis {hi}",
  "{lo} to {hi} {unit}": "{lo} bis {hi} {unit}",
  "yyyy-mm-dd": "JJJJ-MM-TT",
  words: "Worte",
  'pairs parted by ";", such as -90 -60; -80 -52; … in mm; for inches or cm begin with in or cm':
    "Paare, getrennt durch „;“, etwa -90 -60; -80 -52; … in mm; für Zoll oder cm mit in oder cm beginnen",
};

/** What was read, where it was refused. */
export const READ: Table = {
  nothing: "nichts",
  "a list of {n}": "eine Liste von {n}",
  '"{typed}" a second time': "„{typed}“ ein zweites Mal",
  "a list of {n} a second time": "eine Liste von {n} ein zweites Mal",
  '"{typed}"': "„{typed}“",
  "number {n} of a list": "Nummer {n} einer Liste",
  "{size} across": "{size} quer",
  "{size} long": "{size} lang",
  "{size} from lowest to highest": "{size} vom tiefsten zum höchsten Punkt",
  "first {size}, last {last}": "erster {size}, letzter {last}",
  "a point {size} above the midline": "ein Punkt {size} über der Mittellinie",
  "z {size} where y is 0": "z {size}, wo y 0 ist",
  "the same point as the one before it (points {n} and {m})":
    "derselbe Punkt wie der davor (Punkte {n} und {m})",
  "the line from point {a} to {b} crosses the line from point {c} to {d}":
    "die Linie von Punkt {a} nach {b} kreuzt die Linie von Punkt {c} nach {d}",
  "x {size}": "x {size}",
};

/** What is allowed in place of a figure or a word that was refused. */
export const ALLOWED: Table = {
  "{range} (a number in {unit}, or a number followed by its unit ({units})), or one of the words {words}":
    "{range} (eine Zahl in {unit}, oder eine Zahl mit ihrer Einheit dahinter: {units}), oder eines der Wörter {words}",
  "{range} (a whole number without a unit), or one of the words {words}":
    "{range} (eine ganze Zahl ohne Einheit), oder eines der Wörter {words}",
  "{unit}, in which the first was typed": "{unit}, worin die erste getippt wurde",
  "{range}, whole": "{range}, ganz",
  'for fingers, measure your own by ruler and write { "read": "54 mm", "by": "fingers" }':
    "für Finger die eigenen mit dem Lineal messen und in mm eintragen",
  'if you mean {typed}, write "{again}"': "wenn {typed} gemeint ist, so schreiben: „{again}“",
  "is that {a} or {b}? Write it with a point, or without the comma":
    "ist das {a} oder {b}? Mit Punkt schreiben, oder ohne Komma",
  "one of {words}": "eines von {words}",
  'one of {words} (did you mean "{word}"?)': "eines von {words} (ist „{word}“ gemeint?)",
  "a day that exists, written yyyy-mm-dd": "ein Tag, den es gibt, geschrieben JJJJ-MM-TT",
  "a whole number from {lo} to {hi}": "eine ganze Zahl von {lo} bis {hi}",
  "words of {lo} to {hi} letters": "Worte von {lo} bis {hi} Buchstaben",
  "words of at most {hi} letters": "Worte von höchstens {hi} Buchstaben",
  "a list of {lo} to {hi} points [across or along, up]":
    "eine Liste von {lo} bis {hi} Punkten [quer oder längs, hoch]",
  "two numbers [across or along, up]": "zwei Zahlen [quer oder längs, hoch]",
  "a number from {lo} to {hi} {unit}": "eine Zahl von {lo} bis {hi} {unit}",
  "the one before it first": "zuerst das davor",
  "each horse by its own name, and each trace once (the same trace drawn again belongs in its repeats)":
    "jedes Pferd mit eigenem Namen und jede Kurve einmal (dieselbe Kurve, noch einmal gezeichnet, gehört zu ihren Wiederholungen)",
};

/** What is allowed for a tracing or a midline. */
export const ALLOWED_LINE: Table = {
  "{lo} to {hi} across": "{lo} bis {hi} quer",
  "{lo} to {hi} long": "{lo} bis {hi} lang",
  'is the unit inches or cm? Then write "unit": "in" or "unit": "cm"':
    "ist die Einheit Zoll oder cm? Dann mit in oder cm beginnen",
  "is the unit right?": "stimmt die Einheit?",
  "at most {size}": "höchstens {size}",
  "at most {size} long": "höchstens {size} lang",
  "at most {size} from lowest to highest": "höchstens {size} vom tiefsten zum höchsten Punkt",
  "near side first: y is negative on the near (left) side and positive on the off side; this trace is the other way round":
    "links zuerst: y ist links negativ und rechts positiv; diese Kurve ist andersherum",
  "points on both sides of the midline, at least {size} to each, near side (negative y) first":
    "Punkte auf beiden Seiten der Mittellinie, mindestens {size} je Seite, links (y negativ) zuerst",
  "z goes up: points below the top of the back are negative; at most {size} above it":
    "z geht nach oben: Punkte unter der höchsten Stelle des Rückens sind negativ; höchstens {size} darüber",
  "the top of the back at (0, 0), within {size}": "die höchste Stelle des Rückens bei (0, 0), auf {size}",
  "each point once": "jeder Punkt einmal",
  "a line that does not cross itself": "eine Linie, die sich nicht kreuzt",
  "x growing from point to point, from the front station backward":
    "x wächst von Punkt zu Punkt, von der vorderen Messstelle nach hinten",
};

/** What is allowed for a chip's number and a number for life. */
export const ALLOWED_NUMBER: Table = {
  "15 figures, three for the country or the maker and twelve for the animal; spaces, dots and hyphens may stand between":
    "15 Ziffern, drei für das Land oder den Hersteller und zwölf für das Tier; Leerzeichen, Punkte und Striche dürfen dazwischen stehen",
  "a country's three figures from 001 to 899, or a maker's from 900 to 998, in front":
    "vorn die drei Ziffern eines Landes von 001 bis 899 oder eines Herstellers von 900 bis 998",
  "another number than one that begins with 999: those are for tests and stand in no horse":
    "eine andere Nummer als eine, die mit 999 beginnt: Die sind für Prüfungen und stecken in keinem Pferd",
  "an animal's number of at most {n} in the last twelve figures (38 bits)":
    "in den letzten zwölf Ziffern eine Tiernummer von höchstens {n} (38 Bit)",
  "15 signs: three figures, three figures or letters, nine figures or letters. A shorter number of the horse is written after a space behind the first six, and is filled up with zeros":
    "15 Zeichen: drei Ziffern, drei Ziffern oder Buchstaben, neun Ziffern oder Buchstaben. Eine kürzere Nummer des Pferdes steht nach einem Leerzeichen hinter den ersten sechs und wird mit Nullen aufgefüllt",
  "the three figures of the database's country in front, and not 000":
    "vorn die drei Ziffern des Landes der Datenbank, und nicht 000",
  "at most nine figures or letters behind the first six":
    "höchstens neun Ziffern oder Buchstaben hinter den ersten sechs",
  "figures and letters; of other signs only / * ! in a horse's own number behind a space":
    "Ziffern und Buchstaben; von anderen Zeichen nur / * ! in der eigenen Nummer des Pferdes hinter einem Leerzeichen",
};
