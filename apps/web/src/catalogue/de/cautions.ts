import type { Table } from "../trade.ts";

/** Cautions; the mark STOP stays in front, since the screens tell a stop by it. */
export const CAUTIONS: Table = {
  "STOP: do not ride this horse until a vet has seen it.":
    "STOP: dieses Pferd nicht reiten, bis ein Tierarzt es gesehen hat.",
  "STOP: do not ride in this saddle.": "STOP: nicht in diesem Sattel reiten.",
  "STOP: this tree is broken. Mark it; do not mend or sell it.":
    "STOP: dieser Baum ist gebrochen. Kennzeichnen; nicht flicken, nicht verkaufen.",
  "STOP: keep this saddle as it was found; do not ride in it or touch it.":
    "STOP: diesen Sattel lassen, wie er gefunden wurde; nicht darin reiten, nicht anrühren.",
  "Ask the vet whether the horse may be ridden meanwhile.":
    "Den Tierarzt fragen, ob das Pferd inzwischen geritten werden darf.",
  "A reaction to the hand is told as it was seen; what it means is for the vet to say.":
    "Eine Reaktion auf die Hand wird gesagt, wie sie gesehen wurde; was sie bedeutet, sagt der Tierarzt.",
  "Not everything was looked at on the horse; until it is, nothing here says that it may be ridden.":
    "Am Pferd wurde nicht alles angesehen; solange sagt hier nichts, dass es geritten werden darf.",
  "Not everything was looked at on the saddle; until it is, nothing here says that it may be ridden in.":
    "Am Sattel wurde nicht alles angesehen; solange sagt hier nichts, dass in ihm geritten werden darf.",
  "What lies under the cover was not seen.": "Was unter dem Bezug liegt, wurde nicht gesehen.",
  "A laminated tree is never heated; a plate is never bent to size; no head is moved on one side only.":
    "Ein schichtverleimter Baum wird nie erwärmt; ein Kopfeisen wird nie auf Maß gebogen; kein Kopf wird nur auf einer Seite bewegt.",
  "The ridden check decides, on both reins, before the work counts as done.":
    "Die Prüfung beim Reiten, auf beiden Händen, entscheidet, bevor die Arbeit als getan gilt.",
  "A change of the head moves clearance, balance, channel and points: all are read again afterwards.":
    "Eine Änderung des Kopfes bewegt Freiraum, Gleichgewicht, Kissenkanal und Orte: danach wird alles neu abgelesen.",
  "Nothing is begun before the legal owner has agreed, for the worse case at once.":
    "Nichts wird begonnen, bevor der Eigentümer zugestimmt hat, gleich auch für den schlechteren Fall.",
  "A fill is dated and thinned at each visit; one left in makes the hollow stay.":
    "Eine Füllung wird datiert und bei jedem Besuch dünner gemacht; bleibt sie, so bleibt die Kuhle.",
  "Every horse that wears this saddle is judged before its head is changed.":
    "Jedes Pferd, das diesen Sattel trägt, wird beurteilt, bevor der Kopf geändert wird.",
  "Only a cold trace, or one of unknown state, was judged; a warm back is wider.":
    "Beurteilt wurde nur eine kalte Kurve oder eine von unbekanntem Zustand; ein warmer Rücken ist breiter.",
  "The horse is growing: prefer what can be undone, and look again in six to eight weeks.":
    "Das Pferd wächst: vorziehen, was sich zurücknehmen lässt, und in sechs bis acht Wochen wieder nachsehen.",
  "There is a hollow of more than 10 mm behind the shoulder: a vet or physiotherapist is asked why, and horse and saddle are looked at again in six to eight weeks.":
    "Hinter der Schulter ist eine Kuhle von mehr als 10 mm: Tierarzt oder Physiotherapeut wird nach dem Grund gefragt, und Pferd und Sattel werden in sechs bis acht Wochen wieder angesehen.",
  "The horse's two sides differ much: before one side is filled, a vet or physiotherapist looks whether one is swollen or wasted, and whether the horse is lame.":
    "Die beiden Seiten des Pferdes sind sehr verschieden: Bevor eine Seite gepolstert wird, sieht Tierarzt oder Physiotherapeut nach, ob eine geschwollen oder geschwunden ist und ob das Pferd lahmt.",
  "Horse, rider or tack was not weighed, so nothing is said of the load; over 20 % of the horse's mass no saddle makes it right.":
    "Pferd, Reiter oder Zeug wurde nicht gewogen, über die Last wird deshalb nichts gesagt; über 20 % des Pferdegewichts macht kein Sattel sie richtig.",
  "Another horse wears this saddle, or may: what is filled or placed for one is looked at under each.":
    "Ein anderes Pferd trägt diesen Sattel oder trägt ihn vielleicht: Was für eines gepolstert oder gelegt wird, wird unter jedem angesehen.",
  "A polymer head is warmed through at 20 C, for hours, before anything is done to it; nothing is pressed or sprung cold.":
    "Ein Kopf aus Kunststoff wird stundenlang bei 20 °C durchgewärmt, bevor etwas an ihm gemacht wird; kalt wird nichts gepresst oder aufgefedert.",
  "A polymer head takes back a part of its change by itself, 20 to 40 % within a week (from memory): it is measured after 24 hours and after a week before it counts as done.":
    "Ein Kopf aus Kunststoff nimmt einen Teil der Änderung von selbst zurück, 20 bis 40 % in einer Woche (aus dem Gedächtnis): Er wird nach 24 Stunden und nach einer Woche gemessen, bevor es als getan gilt.",
  "White hairs or scars under the saddle tell of pressure before: look there after each ride.":
    "Weiße Haare oder Narben unter dem Sattel erzählen von früherem Druck: nach jedem Ritt dort nachsehen.",
  "A trainee's work is countersigned at the bench, before and after.":
    "Arbeit eines Lehrlings wird an der Werkbank gegengezeichnet, vorher und nachher.",
  "Clean tools and hands between horses; no going from yard to yard while disease is about.":
    "Werkzeug und Hände zwischen den Pferden reinigen; nicht von Stall zu Stall, solange eine Krankheit umgeht.",
};
