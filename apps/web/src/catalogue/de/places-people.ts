import type { Table } from "../trade.ts";

/** Who and where, whose saddle, what has been going on. */
export const PEOPLE: Table = {
  "name of the practice": "Name der Praxis",
  "address of the practice": "Anschrift der Praxis",
  "telephone of the practice": "Telefon der Praxis",
  "mail address of the practice": "E-Mail der Praxis",
  "day of the visit, yyyy-mm-dd": "Tag des Besuchs, JJJJ-MM-TT",
  "name of the yard": "Name des Stalls",
  "legal owner of the saddle, to whom the letter goes": "Eigentümer des Sattels, an den der Brief geht",
  "what the owner asked, in a sentence": "Was der Besitzer gefragt hat, in einem Satz",
  "ground's slope along the horse, head end higher is positive":
    "Gefälle des Bodens längs des Pferdes, positiv, wo es vorn höher steht",
  "contagious disease in the yard": "Ansteckende Krankheit im Stall",
  "who would do the work": "Wer die Arbeit machen würde",
  "may judge a fit": "Darf eine Passform beurteilen",
  "may exchange plates or inserts": "Darf Kopfeisen oder Einsätze wechseln",
  "may alter a head at a press": "Darf einen Kopf an der Presse ändern",
  "may strip a saddle to its tree": "Darf einen Sattel bis auf den Baum zerlegen",
  "a trainee's work is countersigned at the bench, before and after":
    "Arbeit eines Lehrlings wird an der Werkbank gegengezeichnet, vorher und nachher",
  "name of the rider": "Name des Reiters",
  "rider, dressed to ride": "Reiter, zum Reiten angezogen",
  "saddle, girth, stirrups, pads": "Sattel, Gurt, Bügel, Unterlagen",
  "stirrup hole really ridden, {side} side": "Bügelloch, das wirklich geritten wird, {side}",
  "seat too small for the rider": "Sitz zu klein für den Reiter",
  "how the trot is ridden most": "Wie der Trab meistens geritten wird",
  "how the canter is ridden most": "Wie der Galopp meistens geritten wird",
  "mounted from the ground, or from a block of at least 350 mm":
    "Aufgestiegen vom Boden oder von einem Tritt von mindestens 350 mm",
  "name of the saddle in this case": "Name des Sattels in diesem Fall",
  "maker of the saddle": "Hersteller des Sattels",
  "model of the saddle": "Modell des Sattels",
  "serial or date stamp as read": "Seriennummer oder Datumsstempel, wie gelesen",
  "the serial is the one of the record": "Die Seriennummer ist die aufgezeichnete",
  "its legal owner consents to the work": "Der Eigentümer stimmt der Arbeit zu",
  "it is evidence in a claim, an enquiry or a sale dispute":
    "Er ist Beweisstück in einem Schadensfall, einer Untersuchung oder einem Streit um den Kauf",
  "the maker's warranty runs": "Die Gewährleistung des Herstellers läuft",
  "the maker permits this work by this person": "Der Hersteller erlaubt dieser Person diese Arbeit",
  "other horses wear it that are not in this case": "Andere Pferde tragen ihn, die nicht in diesem Fall sind",
  "age of the tree": "Alter des Baums",
  "its owner has had it since new": "Der Besitzer hat ihn seit er neu war",
  "incidents, asked one by one": "Vorfälle, einzeln gefragt",
  "a horse rolled on it": "Ein Pferd hat sich darauf gewälzt",
  "a horse fell with it on": "Ein Pferd ist damit gestürzt",
  "it fell off a rack": "Er ist vom Halter gefallen",
  "it was driven over": "Er wurde überfahren",
  "it was dragged": "Er wurde geschleift",
  "it was dropped": "Er wurde fallen gelassen",
  "a horse was cast in the box with it on": "Ein Pferd hat sich damit in der Box festgelegt",
  "it hung from its bars": "Er hing an seinen Sturzfedern",
  "stored hot: car, loft": "Heiß gelagert: Auto, Dachboden",
  "stored damp, flooded, mouldy": "Feucht gelagert, überschwemmt, schimmelig",
  "are earlier alterations of the head known": "Sind frühere Änderungen des Kopfes bekannt",
  "earlier alterations of the head, oldest first": "Frühere Änderungen des Kopfes, die älteste zuerst",
  "when, yyyy or yyyy-mm or yyyy-mm-dd, or unknown": "Wann, JJJJ oder JJJJ-MM oder JJJJ-MM-TT oder unknown",
  "change of the spread inside the tips; opening is positive":
    "Änderung der Weite innen an den Ortspitzen; weiter ist positiv",
  "by whom": "Von wem",
  "the hand is known and qualified": "Die Hand ist bekannt und qualifiziert",
  "how it was altered": "Wie geändert wurde",
  "repaired, replated, bandaged, extra rivets, filler":
    "Repariert, neu beschlagen, bandagiert, mit zusätzlichen Nieten oder Spachtel",
  "its head was heated before": "Der Kopf wurde schon einmal erwärmt",
};

/** The horse itself: who it is, its body, what has been going on. */
export const HORSE: Table = {
  "name of the horse": "Name des Pferdes",
  "breed, age, work": "Rasse, Alter, Arbeit",
  "number of the chip as the reader shows it, 15 figures":
    "Nummer des Chips, wie das Lesegerät sie zeigt, 15 Ziffern",
  "number for life (UELN) out of the passport, 15 signs; or its first six, a space, and the horse's own":
    "Lebensnummer (UELN) aus dem Pass, 15 Zeichen; oder ihre ersten sechs, ein Leerzeichen und die des Pferdes",
  "age of the horse": "Alter des Pferdes",
  "mass of the horse": "Gewicht des Pferdes",
  "type of horse, for the equation of four measures": "Typ des Pferdes, für die Gleichung aus vier Maßen",
  "girth round the body behind the withers, by tape, after breathing out":
    "Brustumfang hinter dem Widerrist, mit dem Band, nach dem Ausatmen",
  "length of the body from point of shoulder to point of buttock, by tape":
    "Körperlänge von der Bugspitze zum Sitzbeinhöcker, mit dem Band",
  "height at the withers": "Widerristhöhe",
  "round the neck, half way between poll and withers":
    "Halsumfang, auf halbem Weg zwischen Genick und Widerrist",
  "condition by eye and hand, 1 (poor) to 9 (extremely fat); 5 is moderate":
    "Futterzustand nach Auge und Hand, 1 (mager) bis 9 (sehr fett); 5 ist mäßig",
  "one horse that wears the saddle": "Ein Pferd, das den Sattel trägt",
  "measures of the body and its condition, for the horse's mass":
    "Maße des Körpers und Futterzustand, für das Gewicht des Pferdes",
  "what has been going on, each asked by itself": "Was vorgefallen ist, jedes einzeln gefragt",
  "the horse stood up: level, square, head level, mouth empty":
    "Das Pferd aufgestellt: eben, geschlossen, Kopf waagerecht, nichts im Maul",
  "trotted up in hand": "An der Hand vorgetrabt",
  "sudden change of behaviour": "Plötzlich verändertes Verhalten",
  "a wound under saddle or girth lately": "In letzter Zeit eine Wunde unter Sattel oder Gurt",
  "a fall lately": "In letzter Zeit ein Sturz",
  "stumbling, swaying or other signs of the nerves": "Stolpern, Schwanken oder andere Nervenzeichen",
  "painkillers in the last 7 days, or a joint or back injection whose waiting time is not over":
    "Schmerzmittel in den letzten 7 Tagen, oder eine Spritze in Gelenk oder Rücken, deren Wartezeit noch läuft",
  "sudden loss of muscle on one side": "Plötzlicher Muskelschwund auf einer Seite",
  "weight falling without a reason": "Gewichtsverlust ohne Grund",
  "signs counted on the published list of 24 ridden signs":
    "Gezählte Zeichen aus der veröffentlichten Liste von 24 Zeichen beim Reiten",
  "saddle slips the same way on both reins and with a second rider":
    "Sattel rutscht auf beiden Händen und auch mit einem zweiten Reiter zur selben Seite",
  "weeks off work in the last three months": "Wochen ohne Arbeit in den letzten drei Monaten",
  "weeks back in work since": "Wochen seither wieder in Arbeit",
  "still growing, or under seven": "Wächst noch oder ist unter sieben",
  "swelling under saddle or girth": "Schwellung unter Sattel oder Gurt",
  "heat under saddle or girth": "Wärme unter Sattel oder Gurt",
  "open sore or rub under saddle or girth": "Offene Stelle oder Scheuerstelle unter Sattel oder Gurt",
  "white hairs or scars under the saddle": "Weiße Haare oder Narben unter dem Sattel",
  "hollow behind the shoulder under a 300 mm straight-edge, {side} side":
    "Kuhle hinter der Schulter unter einer Richtlatte von 300 mm, {side}",
  "front station to the last rib's line, measured at the side, {side}":
    "Von der vorderen Messstelle bis zur Linie der letzten Rippe, seitlich gemessen, {side}",
  "girth groove, distance behind the front station": "Gurtlage, Abstand hinter der vorderen Messstelle",
  "width of spine and ridge that the panels straddle, front":
    "Breite der Wirbelsäule, die die Kissen frei lassen, vorn",
  "width of spine and ridge that the panels straddle, mid":
    "Breite der Wirbelsäule, die die Kissen frei lassen, Mitte",
  "width of spine and ridge that the panels straddle, rear":
    "Breite der Wirbelsäule, die die Kissen frei lassen, hinten",
  "hands on, flat hand first, by zone and side; a zone left out was not looked at":
    "Abtasten, zuerst mit flacher Hand, nach Zone und Seite; eine ausgelassene Zone wurde nicht angesehen",
  "reaction to pressure: 0 none, 1 mild, 2 clear, 3 strong":
    "Reaktion auf Druck: 0 keine, 1 leicht, 2 deutlich, 3 stark",
  "was the reaction there again": "War die Reaktion wieder da",
  "uneven at walk or trot in hand": "Ungleich im Schritt oder Trab an der Hand",
  "drags a toe or stumbles": "Schleift mit der Zehe oder stolpert",
};
