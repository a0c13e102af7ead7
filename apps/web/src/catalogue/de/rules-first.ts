import type { Table } from "../trade.ts";

/** Rules of the horse and of its load. */
export const RULES_HORSE: Table = {
  "A horse that is uneven goes to the vet before it is ridden.":
    "Ein Pferd, das ungleich geht, kommt vor dem Reiten zum Tierarzt.",
  "Stumbling, swaying or a dragged toe go to the vet before the horse is ridden.":
    "Mit Stolpern, Schwanken oder schleifender Zehe geht es vor dem Reiten zum Tierarzt.",
  "A wound, sore or swelling under saddle or girth goes to the vet before the horse is ridden.":
    "Mit Wunde, offener Stelle oder Schwellung unter Sattel oder Gurt geht es vor dem Reiten zum Tierarzt.",
  "A strong reaction to the hand (grade 3) goes to the vet before the horse is ridden.":
    "Mit starker Reaktion auf die Hand (Grad 3) geht es vor dem Reiten zum Tierarzt.",
  "A clear reaction that comes again, or mild ones at several places, go to the vet before any saddle work.":
    "Mit deutlicher Reaktion, die wiederkommt, oder leichten an mehreren Stellen geht es vor jeder Arbeit am Sattel zum Tierarzt.",
  "One mild reaction that comes again: nothing is altered; the horse is looked at again another day.":
    "Eine leichte Reaktion, die wiederkommt: Nichts wird geändert; das Pferd wird an einem anderen Tag wieder angesehen.",
  "A sudden change, a fall, painkillers, heat, loss of muscle or weight, or a saddle that always slips the same way go to the vet before any saddle work.":
    "Mit plötzlicher Veränderung, Sturz, Schmerzmitteln, Wärme, Verlust von Muskel oder Gewicht oder einem Sattel, der immer zur selben Seite rutscht, geht es vor jeder Arbeit am Sattel zum Tierarzt.",
  "A horse is not judged until every zone has been touched, on both sides.":
    "Ein Pferd wird nicht beurteilt, bevor jede Zone auf beiden Seiten abgetastet wurde.",
  "A horse is not judged until it has been seen trotted up in hand and stumbling has been asked about.":
    "Ein Pferd wird nicht beurteilt, bevor es an der Hand vorgetrabt und nach Stolpern gefragt wurde.",
  "A horse is not judged until its history has been asked, question by question, and its skin looked at.":
    "Ein Pferd wird nicht beurteilt, bevor seine Geschichte Frage für Frage erfragt und seine Haut angesehen wurde.",
  "After more than four weeks off work no head is pressed until the horse has been back six to eight weeks.":
    "Nach mehr als vier Wochen ohne Arbeit wird kein Kopf gepresst, bis das Pferd sechs bis acht Wochen wieder arbeitet.",
  "No head is pressed until it is known whether the horse has been in work.":
    "Kein Kopf wird gepresst, bevor bekannt ist, ob das Pferd in Arbeit war.",
  "A growing horse, and one with a hollow of more than 10 mm behind the shoulder, will have another back: no head is pressed for it; it is looked at again in six to eight weeks.":
    "Ein wachsendes Pferd und eines mit einer Kuhle von mehr als 10 mm hinter der Schulter bekommt einen anderen Rücken: Für es wird kein Kopf gepresst; in sechs bis acht Wochen wird es wieder angesehen.",
  "No head is pressed until it is known whether the horse is growing, and a straight-edge was laid behind both shoulders.":
    "Kein Kopf wird gepresst, bevor bekannt ist, ob das Pferd wächst, und hinter beide Schultern eine Richtlatte gelegt wurde.",
  "Touched, trotted up and asked about: no reason was seen.":
    "Abgetastet, vorgetrabt und erfragt: Kein Grund wurde gesehen.",
  "Rider and tack are under 15 % of the horse's mass: nothing to say of the load.":
    "Reiter und Zeug liegen unter 15 % des Pferdegewichts: zur Last ist nichts zu sagen.",
  "Rider and tack are 15 to 20 % of the horse's mass: short rides at first, a fit horse, a saddle that fits, and a look at the back after each ride.":
    "Reiter und Zeug liegen bei 15 bis 20 % des Pferdegewichts: zuerst kurze Ritte, ein trainiertes Pferd, ein passender Sattel, und nach jedem Ritt ein Blick auf den Rücken.",
  "Rider and tack are over 20 % of the horse's mass: a lighter rider or lighter tack.":
    "Reiter und Zeug liegen über 20 % des Pferdegewichts: ein leichterer Reiter oder leichteres Zeug.",
  "The condition is outside 4 to 6 of 9: as it comes right the back will change its shape, so the next look comes sooner.":
    "Der Futterzustand liegt außerhalb von 4 bis 6 von 9: Wenn er sich gibt, ändert der Rücken seine Form; die nächste Nachschau kommt deshalb früher.",
  "Since this trace was drawn the condition has changed by more than one grade, or the mass by more than 5 %: it is void, and the back is traced again.":
    "Seit dieser Kurve hat sich der Futterzustand um mehr als einen Grad oder das Gewicht um mehr als 5 % geändert: Sie gilt nicht mehr, und der Rücken wird neu abgenommen.",
};

/** Rules of right and standing. */
export const RULES_RIGHT: Table = {
  "A saddle in a claim, an enquiry or a sale dispute is left as found.":
    "Ein Sattel in einem Schadensfall, einer Untersuchung oder einem Streit um den Kauf bleibt, wie er gefunden wurde.",
  "Nothing on the saddle is begun before it is known whether it is in a claim or dispute.":
    "Am Sattel wird nichts begonnen, bevor bekannt ist, ob er zu einem Schadensfall oder Streit gehört.",
  "The legal owner has not agreed: the saddle is left as found.":
    "Der Eigentümer hat nicht zugestimmt: Der Sattel bleibt, wie er gefunden wurde.",
  "Nothing on the saddle is begun before its legal owner agrees, for the worse case at once.":
    "Am Sattel wird nichts begonnen, bevor sein Eigentümer zustimmt, gleich auch für den schlechteren Fall.",
  "A head is pressed only when every horse that wears the saddle is measured, or this one is signed for alone.":
    "Ein Kopf wird nur gepresst, wenn jedes Pferd, das den Sattel trägt, gemessen ist, oder für dieses allein unterschrieben wurde.",
  "A head is not pressed for one horse when that harms another that wears the saddle.":
    "Ein Kopf wird nicht für ein Pferd gepresst, wenn das einem anderen schadet, das den Sattel trägt.",
  "While the maker's warranty runs (under five years when nobody knows), the maker's permission comes first.":
    "Solange die Gewährleistung läuft (unter fünf Jahren, wenn es niemand weiß), kommt zuerst die Erlaubnis des Herstellers.",
  "The maker does not permit this work by this person.":
    "Der Hersteller erlaubt dieser Person diese Arbeit nicht.",
  "Who may not judge a fit refers to a colleague who may.":
    "Wer eine Passform nicht beurteilen darf, gibt sie an einen Kollegen, der es darf.",
  "Who may not exchange a plate refers to a colleague who may.":
    "Wer kein Kopfeisen wechseln darf, gibt es an einen Kollegen, der es darf.",
  "Who may judge but not press prepares the job and refers to a colleague who may.":
    "Wer beurteilen, aber nicht pressen darf, bereitet die Arbeit vor und gibt sie an einen Kollegen, der es darf.",
  "Who may not strip refers to a colleague who may.":
    "Wer nicht zerlegen darf, gibt den Sattel an einen Kollegen, der es darf.",
  "No head is pressed before it is known who may judge the fit.":
    "Kein Kopf wird gepresst, bevor bekannt ist, wer die Passform beurteilen darf.",
  "No plate is exchanged before it is known who may.":
    "Kein Kopfeisen wird gewechselt, bevor bekannt ist, wer es darf.",
  "No head is pressed before it is known who may.":
    "Kein Kopf wird gepresst, bevor bekannt ist, wer es darf.",
  "No saddle is stripped before it is known who may.":
    "Kein Sattel wird zerlegt, bevor bekannt ist, wer es darf.",
};

/** Rules of the saddle's soundness. */
export const RULES_SADDLE: Table = {
  "A crack or white line in arch, rail or deck, or parted layers, even 5 mm long: out of use for good, marked, not sold.":
    "Ein Riss oder eine weiße Linie in Bogen, Tracht oder Sitzfläche, oder gelöste Schichten, auch nur 5 mm lang: für immer außer Gebrauch, gekennzeichnet, nicht verkauft.",
  "A failed bar, web, strap, rivet or plate, or a head that clicks, grates or gives: out of use until it is found and put right, then looked at again.":
    "Schadhafte Sturzfeder, Spanngurt, Strupfe, Niete oder Eisen, oder ein Kopf, der knackt, reibt oder nachgibt: außer Gebrauch, bis es gefunden und behoben ist, dann wieder ansehen.",
  "Doubt in a part that carries the rider: stripped before it is ridden.":
    "Zweifel an einem Teil, das den Reiter trägt: zerlegen, bevor er geritten wird.",
  "A saddle that was in an accident (rolled on, fallen with, dropped, driven over or the like) is stripped before it is ridden.":
    "Ein Sattel, der einen Unfall hatte (gewälzt, gestürzt, fallen gelassen, überfahren oder dergleichen), wird zerlegt, bevor er geritten wird.",
  "A known incident, stripped, nothing found: it may be ridden; its head is not pressed, for good.":
    "Ein bekannter Vorfall, zerlegt, nichts gefunden: Er darf geritten werden; sein Kopf wird nie mehr gepresst.",
  "What could have been looked at today and was not is looked at now.":
    "Was heute hätte angesehen werden können und nicht angesehen wurde, wird jetzt angesehen.",
  "Rust, a dark ring, must, damp, a hot store or doubt at rivets, layers or plates: stripped before it is altered.":
    "Rost, dunkler Ring, Moder, Feuchte, heißes Lager oder Zweifel an Nieten, Schichten oder Eisen: zerlegen, bevor geändert wird.",
  "A head is pressed bare only when the tree was seen bare and sound, by a named person.":
    "Ein Kopf wird am bloßen Baum nur gepresst, wenn eine genannte Person den bloßen Baum in Ordnung gesehen hat.",
  "Incidents not denied one by one by an owner since new: stripped before it is pressed.":
    "Vorfälle, die nicht ein Besitzer seit neu einzeln verneint hat: zerlegen, bevor gepresst wird.",
  "A head altered more than once, by an unknown hand, or with an unknown past is stripped before it is pressed.":
    "Ein Kopf, der mehr als einmal oder von unbekannter Hand geändert wurde oder dessen Geschichte unbekannt ist, wird zerlegt, bevor er gepresst wird.",
  "A head that was repaired, replated or heated, or polymer stored hot, is for the maker.":
    "Ein Kopf, der repariert, neu beschlagen oder erwärmt wurde, oder heiß gelagerter Kunststoff ist Sache des Herstellers.",
  "Over five years, or of unknown age, a tree is stripped before its head is pressed.":
    "Über fünf Jahre alt oder von unbekanntem Alter wird ein Baum zerlegt, bevor sein Kopf gepresst wird.",
  "Half-angles more than 2 degrees apart, or diagonals more than 5 mm (bare 3): stripped; confirmed bare it is the maker's. Neither press nor plate cures a twist.":
    "Halbe Winkel mehr als 2 Grad auseinander, oder Diagonalen mehr als 5 mm (bloß 3): zerlegen; am bloßen Baum bestätigt ist es Sache des Herstellers. Weder Presse noch Kopfeisen heilt einen verzogenen Baum.",
  "No head is pressed before half-angles and diagonals have been read.":
    "Kein Kopf wird gepresst, bevor halbe Winkel und Diagonalen abgelesen sind.",
  "A serial that is absent, unread or different makes the saddle's history unknown.":
    "Fehlt die Seriennummer, wurde sie nicht gelesen oder ist sie eine andere, so ist die Geschichte des Sattels unbekannt.",
  "Nothing was found, as far as it was looked at.": "Nichts wurde gefunden, soweit angesehen wurde.",
};
