import type { Table } from "../trade.ts";

/** The owner's page: its own words, and whom to see. */
export const OWNER_PAGE: Table = {
  "Can the head of this saddle be altered?": "Kann der Kopf dieses Sattels geändert werden?",
  "Say what you know; where you do not know, leave it.":
    "Sagen Sie, was Sie wissen; wo Sie es nicht wissen, lassen Sie es.",
  "Nobody presses, heats or bends a head at home.": "Niemand presst, erwärmt oder biegt einen Kopf zu Hause.",
  "At any pain, heat, swelling, sore or lameness stop, and ring the vet first.":
    "Bei Schmerz, Wärme, Schwellung, wunder Stelle oder Lahmheit hören Sie auf und rufen zuerst den Tierarzt an.",
  "What may be done, and by whom?": "Was darf gemacht werden, und von wem?",
  Horse: "Pferd",
  Saddle: "Sattel",
  "What you may do at home": "Was Sie zu Hause tun dürfen",
  "Whom to see, in this order": "Zu wem, der Reihe nach",
  Why: "Warum",
  "This comes from what you said, not from looking: it promises nothing.":
    "Das kommt aus dem, was Sie gesagt haben, nicht vom Ansehen: Es verspricht nichts.",
  vet: "Tierarzt",
  fitter: "Sattelanpasser",
  saddler: "Sattler",
  maker: "Hersteller",
  "The arch of the tree, from the front": "Der Bogen des Baums, von vorn",
  "A plate of metal that follows the arch": "Ein Eisen, das dem Bogen folgt",
  "A piece that is meant to be taken out of the arch":
    "Ein Teil, das zum Herausnehmen aus dem Bogen gemacht ist",
  "Both points pressed towards each other": "Beide Ortspitzen, gegeneinander gedrückt",
  "A line across the arch": "Eine Linie quer über den Bogen",
  "The bar at each side from which the stirrup hangs":
    "Die Sturzfeder auf jeder Seite, an der der Bügel hängt",
};

export const OWNER_QUESTIONS: Table = {
  "What is the arch of the tree made of?": "Woraus ist der Bogen des Baums?",
  "What metal is in the head?": "Welches Metall ist im Kopf?",
  "Is there a plate or are there inserts that the maker means to be changed?":
    "Gibt es ein Kopfeisen oder Einsätze, die nach dem Willen des Herstellers gewechselt werden sollen?",
  "Does the maker's own paper say so?": "Steht das im Papier des Herstellers selbst?",
  "Is the tree under five years old?": "Ist der Baum unter fünf Jahren alt?",
  "Does the maker's warranty still run?": "Läuft die Gewährleistung des Herstellers noch?",
  "Does the maker's paper let an owner change the plate or the inserts?":
    "Lässt das Papier des Herstellers einen Besitzer Kopfeisen oder Einsätze wechseln?",
  "Have you had the saddle since it was new?": "Haben Sie den Sattel, seit er neu war?",
  "Is it part of a claim or a dispute?": "Gehört er zu einem Schadensfall oder Streit?",
  "Is the saddle yours?": "Gehört der Sattel Ihnen?",
  "Does another horse wear it?": "Trägt ihn ein anderes Pferd?",
  "How many hours a week is it ridden in?": "Wie viele Stunden in der Woche wird darin geritten?",
  "Has a horse ever rolled on it?": "Hat sich je ein Pferd darauf gewälzt?",
  "Has a horse fallen with it on?": "Ist ein Pferd damit gestürzt?",
  "Has it fallen off a rack?": "Ist er von einem Sattelhalter gefallen?",
  "Has it been driven over?": "Wurde er überfahren?",
  "Has it been dragged?": "Wurde er geschleift?",
  "Has it been dropped?": "Wurde er fallen gelassen?",
  "Has a horse been cast in its box with it on?": "Lag ein Pferd damit in der Box fest?",
  "Has it hung from its stirrup bars?": "Hing er an seinen Sturzfedern?",
  "Does the head click, grate or give when you press the points together?":
    "Knackt, reibt oder gibt der Kopf nach, wenn Sie die Ortspitzen zusammendrücken?",
  "Do you see a crack or a white line in the head?": "Sehen Sie einen Riss oder eine weiße Linie im Kopf?",
  "Is a strap, a web or a stirrup bar loose, worn or torn?":
    "Ist eine Strupfe, ein Spanngurt oder eine Sturzfeder locker, abgenutzt oder gerissen?",
  "Is the horse uneven, or does it stumble?": "Geht das Pferd ungleich, oder stolpert es?",
  "Is there a wound, a swelling, a sore or heat under saddle or girth?":
    "Gibt es unter Sattel oder Gurt eine Wunde, eine Schwellung, eine wunde Stelle oder Wärme?",
  "Does it flinch or object when you touch its back, girth it or get on?":
    "Zuckt es oder wehrt es sich, wenn Sie den Rücken anfassen, gurten oder aufsteigen?",
  "Has it changed all at once, fallen, or been given painkillers lately?":
    "Hat es sich plötzlich verändert, ist es gestürzt, oder bekam es kürzlich Schmerzmittel?",
  "Does the saddle always slip to the same side?": "Rutscht der Sattel immer auf dieselbe Seite?",
  "Is it still growing, or back from more than four weeks off work?":
    "Wächst es noch, oder kommt es nach mehr als vier Wochen ohne Arbeit zurück?",
};

/** Where an owner's own answers are all there is. */
export const OWNER_LOOKED: Table = {
  "No reason told.": "Kein Grund genannt.",
  "Nothing in your answers speaks against riding; nobody has touched the horse or seen it trot.":
    "Nichts in Ihren Antworten spricht gegen das Reiten; niemand hat das Pferd abgetastet oder traben gesehen.",
  "Come back later.": "Später wiederkommen.",
  "From your answers the back is not one to alter a saddle for now.":
    "Nach Ihren Antworten ändert man für diesen Rücken jetzt keinen Sattel.",
  "Nothing told against it.": "Nichts gegen ihn genannt.",
  "Nobody has looked at it by trade; what lies under the cover was not seen.":
    "Niemand vom Fach hat ihn angesehen; was unter dem Bezug liegt, wurde nicht gesehen.",
  "Nothing is done to its head before it has been looked at.":
    "An seinem Kopf wird nichts gemacht, bevor er angesehen wurde.",
  "Your answers cannot tell its past for sure; a fitter or saddler looks, and says whether the tree has to be seen bare.":
    "Ihre Antworten können seine Geschichte nicht sicher sagen; ein Sattelanpasser oder Sattler sieht nach und sagt, ob der bloße Baum angesehen werden muss.",
};

export const OWNER_HOME: Table = {
  "Look the saddle over in good light: straps, webs, bars, stitching, and the head for cracks.":
    "Den Sattel in gutem Licht durchsehen: Strupfen, Spanngurte, Sturzfedern, Nähte und den Kopf auf Risse.",
  "Lay it on the bare back without a pad, girth it, and see where it comes to lie by itself.":
    "Ihn ohne Unterlage auf den bloßen Rücken legen, gurten und sehen, wohin er sich von selbst legt.",
  "Take pads and risers off first, and see whether the stirrups hang on the same hole on both sides.":
    "Zuerst Unterlagen und Keile abnehmen und sehen, ob die Bügel auf beiden Seiten im selben Loch hängen.",
  "Write down what you see with the date, and ring a fitter.":
    "Mit Datum aufschreiben, was Sie sehen, und einen Sattelanpasser anrufen.",
  "What a change of plate or inserts needs: a fitter first looks at horse and saddle and names what to fit; parts of this maker and this mounting; both sides alike and home, photographed; a ridden look afterwards by the fitter.":
    "Was ein Wechsel von Kopfeisen oder Einsätzen braucht: Ein Sattelanpasser sieht zuerst Pferd und Sattel an und nennt, was eingesetzt wird; Teile dieses Herstellers und dieser Befestigung; beide Seiten gleich und ganz eingesetzt, fotografiert; danach eine Prüfung beim Reiten durch den Sattelanpasser.",
};

/** What for. */
export const OWNER_SEES: Table = {
  "before the horse is ridden": "bevor das Pferd geritten wird",
  "before any saddle work": "vor jeder Arbeit am Sattel",
  "to find and put right what failed": "zum Finden und Beheben, was schadhaft ist",
  "to strip it and look, before it is ridden": "zum Zerlegen und Ansehen, bevor er geritten wird",
  "to confirm the crack and mark the saddle": "zum Bestätigen des Risses und Kennzeichnen des Sattels",
  "a head of this build is altered by a qualified saddler only, after a fitter has asked for it":
    "ein Kopf dieser Bauart wird nur von einem qualifizierten Sattler geändert, nachdem ein Sattelanpasser darum gebeten hat",
  "a head of this build is moved by the maker's own people only":
    "ein Kopf dieser Bauart wird nur von den Leuten des Herstellers bewegt",
  "a head of this build is the maker's to touch": "ein Kopf dieser Bauart wird nur vom Hersteller angefasst",
  "to learn how the head is built; nothing is done to it before that is known":
    "zum Erfragen, wie der Kopf gebaut ist; vorher wird an ihm nichts gemacht",
  "to learn who may change its plate or inserts": "zum Erfragen, wer Kopfeisen oder Einsätze wechseln darf",
  "while the warranty runs, or may run, ask before anybody opens the saddle":
    "solange die Gewährleistung läuft oder laufen kann, vor jedem Öffnen des Sattels fragen",
  "to look at horse, saddle and rider together before any change":
    "zum Ansehen von Pferd, Sattel und Reiter zusammen, vor jeder Änderung",
};
