import type { Table } from "../trade.ts";

/** A table that is brought in: where in it, what was read, what is allowed. */
export const TABLE_IN: Table = {
  "the whole table": "die ganze Tabelle",
  "row {n}": "Zeile {n}",
  horse: "Pferd",
  owner: "Besitzer",
  yard: "Stall",
  rider: "Reiter",
  saddle: "Sattel",
  day: "Tag",
  asked: "gefragt",
  "{n} letters": "{n} Buchstaben",
  "{n} letters in one cell": "{n} Buchstaben in einer Zelle",
  "{n} cells": "{n} Zellen",
  "more than {n} rows": "mehr als {n} Zeilen",
  "more than {n} cells": "mehr als {n} Zellen",
  "a quote that is not closed": "ein Anführungszeichen, das nicht geschlossen ist",
  "every quote closed": "jedes Anführungszeichen geschlossen",
  '"{typed}" behind a closing quote': "„{typed}“ hinter einem schließenden Anführungszeichen",
  "a separator or the line's end": "ein Trennzeichen oder das Ende der Zeile",
  '"{column}" twice': "„{column}“ zweimal",
  "each column once": "jede Spalte einmal",
  'the names of the columns, "horse" among them: {columns}':
    "die Namen der Spalten, „Pferd“ darunter: {columns}",
  "the {n} that row 1 names": "die {n}, die Zeile 1 nennt",
  "no horse": "kein Pferd",
  "the name of a horse": "der Name eines Pferdes",
  '"{name}", no yard: here already': "„{name}“, kein Stall: schon hier",
  '"{name}", "{place}": here already': "„{name}“, „{place}“: schon hier",
  "a horse of another name or yard": "ein Pferd mit anderem Namen oder Stall",
};
