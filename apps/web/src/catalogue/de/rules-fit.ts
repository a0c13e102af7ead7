import type { Table } from "../trade.ts";

/** Rules of the fit of the whole. */
export const RULES_FIT: Table = {
  "Everything that was read lies inside, and the hands agree.":
    "Alles Abgelesene liegt innerhalb, und die Hände stimmen zu.",
  "Too small a seat or stirrups on unequal holes are put right before any saddle is judged.":
    "Ein zu kleiner Sitz oder ungleich verschnallte Bügel werden gerichtet, bevor ein Sattel beurteilt wird.",
  "Rider and tack are over 20 % of the horse's mass: a lighter load comes first, and no work on a saddle makes up for it.":
    "Reiter und Zeug liegen über 20 % des Pferdegewichts: Zuerst kommt eine leichtere Last, und keine Arbeit am Sattel ersetzt sie.",
  "What lies outside is cured by girthing, placing or padding.":
    "Was außerhalb liegt, wird durch Gurten, Auflegen oder Unterlegen behoben.",
  "A flat, lumpy, wrongly shaped or crooked panel is put right first; then the head is judged.":
    "Ein plattes, klumpiges, falsch geformtes oder schiefes Kissen wird zuerst gerichtet; dann wird der Kopf beurteilt.",
  "The head is right and the fill needed is at most 8 mm a side: the panel cures it.":
    "Der Kopf stimmt, und es braucht höchstens 8 mm Füllung je Seite: Das Kissen behebt es.",
  "Too little room at the withers, and nothing else wrong with the head: the front of the panel is filled, by 8 mm at the most, and the seat is looked at again.":
    "Zu wenig Raum am Widerrist, sonst nichts falsch am Kopf: Das Kissen wird vorn gepolstert, um höchstens 8 mm, und der Sitz wieder angesehen.",
  "Over a hollow of more than 10 mm no head is narrowed: fill for now, and look again in six to eight weeks.":
    "Über einer Kuhle von mehr als 10 mm wird kein Kopf enger gemacht: vorerst polstern und in sechs bis acht Wochen wieder nachsehen.",
  "The hollow is deeper than fill can carry: the horse is built up first.":
    "Die Kuhle ist tiefer, als eine Füllung tragen kann: Zuerst wird das Pferd aufgebaut.",
  "The head is best within 3 mm of as made, the last change went the other way, and fewer than two reversals are on record.":
    "Der Kopf ist innerhalb von 3 mm vom Maß ab Werk am besten, die letzte Änderung ging in die andere Richtung, und weniger als zwei Umkehrungen sind aufgezeichnet.",
  "A plate or insert at hand makes the whole fit; the ridden check decides.":
    "Mit einem vorrätigen Kopfeisen oder Einsatz passt das Ganze; die Prüfung beim Reiten entscheidet.",
  "The hands show the contrary of what the plate would do: a template is offered up before it is changed.":
    "Die Hände zeigen das Gegenteil dessen, was das Kopfeisen täte: Vor dem Wechsel wird eine Schablone angehalten.",
  "The hands show the contrary of what the template says: both are taken again before a saddle is given up.":
    "Die Hände zeigen das Gegenteil dessen, was die Schablone sagt: Beides wird noch einmal genommen, bevor ein Sattel aufgegeben wird.",
  "The template shows a fault on one side only, of a square head over even sides, and the hand there shows none: it is offered up again before a saddle is given up.":
    "Die Schablone zeigt nur auf einer Seite einen Fehler, bei geradem Kopf über gleichen Seiten, und die Hand zeigt dort keinen: Sie wird noch einmal angehalten, bevor ein Sattel aufgegeben wird.",
  "A head of this mounting would fit, and no plate at hand makes it.":
    "Ein Kopf mit dieser Halterung würde passen, und kein vorrätiges Kopfeisen ergibt ihn.",
  "A head of this build would fit, and no position of its inserts makes it: the maker is asked for others.":
    "Ein Kopf dieser Bauart würde passen, und keine Stellung seiner Einsätze ergibt ihn: Der Hersteller wird nach anderen gefragt.",
  "A change by heat would make the whole fit, inside with half of the uncertainty to spare, and the hands agree: it is what the maker's people are asked for.":
    "Mit einer Änderung durch Wärme würde das Ganze passen, innerhalb und mit der halben Unsicherheit als Reserve, und die Hände stimmen zu: Darum werden die Leute des Herstellers gebeten.",
  "Spring steels along the rails give under a rider: part of a bridge that is seen standing is wanted, and it is looked at again ridden.":
    "Federstähle längs der Trachten geben unter dem Reiter nach: Ein Teil der im Stand gesehenen Brücke ist gewollt; sie wird beim Reiten wieder angesehen.",
  "A change at the press makes the whole fit, inside with half of the uncertainty to spare, and the hands agree.":
    "Mit einer Änderung an der Presse passt das Ganze, innerhalb und mit der halben Unsicherheit als Reserve, und die Hände stimmen zu.",
  "Two angles subtracted never suffice for a press: the template is offered up to the head with feelers at both tips.":
    "Zwei voneinander abgezogene Winkel genügen nie für eine Presse: Die Schablone wird an den Kopf gehalten, mit Fühlerlehren an beiden Spitzen.",
  "A head is pressed only when the hands show the fault in the direction that the change cures.":
    "Ein Kopf wird nur gepresst, wenn die Hände den Fehler in der Richtung zeigen, die die Änderung behebt.",
  "Dressed, a head is pressed 8 mm at the most.": "Im Bezug wird ein Kopf höchstens um 8 mm gepresst.",
  "A head would fit that the caps forbid: this tree has had its share.":
    "Es würde ein Kopf passen, den die Obergrenzen verbieten: Dieser Baum ist oft genug geändert worden.",
  "No head within 20 mm either way makes the whole fit: rails and curve stay as they are.":
    "Mit keinem Kopf innerhalb von 20 mm nach beiden Richtungen passt das Ganze: Trachten und Schwung bleiben, wie sie sind.",
  "The saddle lies on the blade or behind the last rib, and there is no room to move it.":
    "Der Sattel liegt auf dem Schulterblatt oder hinter der letzten Rippe, und es ist kein Platz, ihn zu verschieben.",
  "Nothing is called right before the saddle was seen ridden.":
    "Nichts wird richtig genannt, bevor der Sattel geritten gesehen wurde.",
  "In the calculation the saddle does not come to rest on this back as it was read: what rests on that cannot be told, and the bearing is read again.":
    "In der Rechnung kommt der Sattel auf diesem Rücken, wie er abgelesen wurde, nicht zur Ruhe: Was darauf beruht, ist nicht zu sagen, und die Auflage wird noch einmal abgelesen.",
  "What is missing or too wide decides the answer.":
    "Was fehlt oder zu unsicher ist, entscheidet die Antwort.",
  "No earlier change of the head is on record with its size, so there is nothing to set back.":
    "Keine frühere Änderung des Kopfes ist mit ihrem Maß aufgezeichnet; es gibt also nichts zurückzunehmen.",
  "An earlier change of the head is on record; the head stays as it is, so it is not set back.":
    "Eine frühere Änderung des Kopfes ist aufgezeichnet; der Kopf bleibt, wie er ist, sie wird also nicht zurückgenommen.",
  "An earlier change is on record; what is made by other hands is no setting back.":
    "Eine frühere Änderung ist aufgezeichnet; was andere Hände machen, ist kein Zurücknehmen.",
  "An earlier change is on record, and the spread as made was not read: whether this sets it back cannot be told.":
    "Eine frühere Änderung ist aufgezeichnet, und die Weite ab Werk wurde nicht abgelesen: Ob dies sie zurücknimmt, ist nicht zu sagen.",
  "The last change went the same way as this one: it goes further and sets nothing back.":
    "Die letzte Änderung ging in dieselbe Richtung wie diese: Sie geht weiter und nimmt nichts zurück.",
  "The best head lies more than 3 mm from as made: it is a new change and no setting back.":
    "Der beste Kopf liegt mehr als 3 mm vom Maß ab Werk: Das ist eine neue Änderung und kein Zurücknehmen.",
  "The head has been moved to and fro twice: it is not set back again.":
    "Der Kopf wurde schon zweimal hin und her bewegt: Er wird nicht noch einmal zurückgesetzt.",
  "The plate that was in this head before was not kept with the saddle: another one is a change and no setting back.":
    "Das frühere Kopfeisen wurde nicht beim Sattel aufbewahrt: Ein anderes ist eine Änderung und kein Zurücknehmen.",
};

/** Rules of the way in which this head may be moved. */
export const RULES_WAY: Table = {
  "A head without a changeable plate or inserts is not exchanged.":
    "Ein Kopf ohne wechselbares Kopfeisen oder Einsätze wird nicht gewechselt.",
  "A changeable head is moved by exchange; no plate is ever bent or pressed to size.":
    "Ein wechselbarer Kopf wird durch Wechsel bewegt; kein Kopfeisen wird je auf Maß gebogen oder gepresst.",
  "A bar whose fixings in the polymer are in doubt or have failed is the maker's: no press pulls on it.":
    "Eine Schiene, deren Halt im Kunststoff zweifelhaft oder schadhaft ist, ist Sache des Herstellers: Keine Presse zieht daran.",
  "Inserts that stand in two positions are put right first, and then everything is read again; unlike sides are never a cure.":
    "Einsätze, die in zwei Stellungen stehen, werden zuerst gerichtet, und dann wird alles neu abgelesen; ungleiche Seiten sind nie eine Abhilfe.",
  "No insert is moved before it is known in which position each side stands, and that its keyway is clean.":
    "Kein Einsatz wird bewegt, bevor bekannt ist, in welcher Stellung jede Seite steht und dass die Nut sauber ist.",
  "Grit in a keyway is cleaned out, and the keyway looked at again, before an insert is moved.":
    "Sand in einer Nut wird entfernt und die Nut wieder angesehen, bevor ein Einsatz bewegt wird.",
  "Solid polymer is moved by heat, never by pressure, and only by the maker's people, by the maker's forming sheet.":
    "Massiver Kunststoff wird mit Wärme bewegt, nie mit Druck, und nur von den Leuten des Herstellers nach dessen Formblatt.",
  "Side saddles, half trees, hinged or screw heads, composites and heads that nothing moves are the maker's.":
    "Damensättel, halbe Bäume, Gelenk- und Schraubköpfe, Verbundstoffe und Köpfe, die nichts bewegt, sind Sache des Herstellers.",
  "No head is moved before it is known how it is built.":
    "Kein Kopf wird bewegt, bevor bekannt ist, wie er gebaut ist.",
  "A head is not pressed on an owner's word for how it is built.":
    "Ein Kopf wird nicht auf das Wort des Besitzers über seine Bauart hin gepresst.",
  "No head is moved before somebody has told how it is built, and by what sign.":
    "Kein Kopf wird bewegt, bevor jemand gesagt hat, wie er gebaut ist und woran das zu erkennen war.",
  "How far this head has been moved already is not known; no press before its record, or the spread as made, shows that the caps hold.":
    "Wie weit dieser Kopf schon bewegt wurde, ist nicht bekannt; keine Presse, bevor seine Aufzeichnung oder die Weite ab Werk zeigt, dass die Obergrenzen eingehalten sind.",
  "Polymer under 15 C is first brought to 20 C, for hours; cold it is neither pressed nor sprung open, and a tree whose warmth nobody looked at is not pressed.":
    "Kunststoff unter 15 °C wird erst stundenlang auf 20 °C gebracht; kalt wird er weder gepresst noch aufgefedert, und ein Baum, dessen Wärme niemand angesehen hat, wird nicht gepresst.",
};

/** Limits, each as its one sentence. */
export const LIMITS: Table = {
  "The two points stand within 1 degree of one another; over 2 degrees the head is twisted.":
    "Die beiden Orte stehen auf 1 Grad gleich; über 2 Grad ist der Kopf verzogen.",
  "Dressed, the diagonals agree within 5 mm; over that the tree may be twisted.":
    "Im Bezug stimmen die Diagonalen auf 5 mm überein; darüber kann der Baum verzogen sein.",
  "Bare, the diagonals agree within 3 mm; over that the tree is twisted.":
    "Am bloßen Baum stimmen die Diagonalen auf 3 mm überein; darüber ist der Baum verzogen.",
  "The points are as long as one another within 2 mm; over 4 mm is outside.":
    "Die Orte sind auf 2 mm gleich lang; über 4 mm ist außerhalb.",
  "On a flat bench the points rock no more than 2 mm; over 4 mm the tree is twisted.":
    "Auf ebener Werkbank kippeln die Orte höchstens 2 mm; über 4 mm ist der Baum verzogen.",
  "A string from head to cantle keeps within 3 mm of the seat's line; over 6 mm the tree is twisted.":
    "Eine Schnur vom Kopf zum Hinterzwiesel bleibt auf 3 mm an der Sitzlinie; über 6 mm ist der Baum verzogen.",
  "The panel is as thick on both sides within 3 mm; over 6 mm it sits the saddle crooked.":
    "Das Kissen ist auf beiden Seiten auf 3 mm gleich dick; über 6 mm setzt es den Sattel schief.",
  "Girthed, 45 mm over the withers is enough and under 30 mm is too little.":
    "Angegurtet sind 45 mm über dem Widerrist genug und unter 30 mm zu wenig.",
  "With the rider up, 40 to 75 mm over the withers is right; under 30 mm is too little and over 75 mm too much.":
    "Mit Reiter sind 40 bis 75 mm über dem Widerrist richtig; unter 30 mm ist zu wenig und über 75 mm zu viel.",
  "In half-seat, 30 mm over the withers is enough and under 20 mm is too little.":
    "Im leichten Sitz sind 30 mm über dem Widerrist genug und unter 20 mm zu wenig.",
  "Beside the withers, 12 mm is enough and under 8 mm pinches.":
    "Neben dem Widerrist sind 12 mm genug, und unter 8 mm klemmt es.",
  "The channel is at least 25 mm wider than spine and ridge; any touch is outside.":
    "Der Kissenkanal ist mindestens 25 mm breiter als die Wirbelsäule; jede Berührung ist außerhalb.",
  "The channel is at least 60 mm wide for its whole length; under 55 mm is outside.":
    "Der Kissenkanal ist auf ganzer Länge mindestens 60 mm breit; unter 55 mm ist außerhalb.",
  "The girth hangs within 20 mm of the groove it will go to; over 40 mm it moves the saddle.":
    "Der Gurt hängt auf 20 mm an der Gurtlage, in die er rutscht; über 40 mm verschiebt er den Sattel.",
  "The tree points lie at least 50 mm behind the shoulder blade; under 30 mm they are on its way.":
    "Die Ortspitzen liegen mindestens 50 mm hinter dem Schulterblatt; unter 30 mm sind sie ihm im Weg.",
  "The panel ends at least 10 mm before the last rib's line and never behind it.":
    "Das Kissen endet mindestens 10 mm vor der Linie der letzten Rippe und nie dahinter.",
  "Ridden, the saddle sits within 10 mm of the middle; a steady 25 mm to one side is outside.":
    "Geritten sitzt der Sattel auf 10 mm in der Mitte; bleibend 25 mm zu einer Seite ist außerhalb.",
  "At the points the tree may be 2 degrees steeper or 3 flatter than the back; over 5 steeper or 6 flatter is outside.":
    "An den Orten darf der Baum 2 Grad steiler oder 3 flacher sein als der Rücken; über 5 steiler oder 6 flacher ist außerhalb.",
  "Along the rails the faces agree within 4 degrees; over 8 is outside.":
    "Längs der Trachten stimmen die Flächen auf 4 Grad überein; über 8 ist außerhalb.",
  "The spread at the tips agrees with the wanted head within 5 mm; over 10 mm is outside.":
    "Die Weite an den Ortspitzen stimmt auf 5 mm mit dem gewünschten Kopf überein; über 10 mm ist außerhalb.",
  "Template against head: even within 2 mm at three places a side; over 5 mm is outside.":
    "Schablone gegen Kopf: auf 2 mm gleichmäßig an drei Stellen je Seite; über 5 mm ist außerhalb.",
  "A hollow up to 5 mm behind the shoulder is usual; over 10 mm the back is wasted and no head is narrowed to it.":
    "Eine Kuhle bis 5 mm hinter der Schulter ist üblich; über 10 mm ist der Rücken geschwunden, und kein Kopf wird danach enger gemacht.",
  "The horse's sides agree within 3 degrees at the front; over 6 degrees a vet or physiotherapist looks too.":
    "Die Seiten des Pferdes stimmen vorn auf 3 Grad überein; über 6 Grad sieht auch Tierarzt oder Physiotherapeut nach.",
  "The horse's sides agree within 5 mm at the front; over 10 mm a vet or physiotherapist looks too.":
    "Die Seiten des Pferdes stimmen vorn auf 5 mm überein; über 10 mm sieht auch Tierarzt oder Physiotherapeut nach.",
  "Girthed and unridden, up to 5 mm of gap under the middle is inside; over 10 mm the saddle bridges.":
    "Angegurtet und ungeritten sind bis 5 mm Luft unter der Mitte innerhalb; über 10 mm bildet der Sattel eine Brücke.",
  "Up to 5 mm of rock by hand is inside; over 12 mm the rails do not follow the back.":
    "Bis 5 mm Kippeln von Hand sind innerhalb; über 12 mm folgen die Trachten dem Rücken nicht.",
  "With the rider up the seat's bottom is level within 1.5 degrees; over 3 degrees it tips the rider.":
    "Mit Reiter liegt die Sitzfläche auf 1,5 Grad waagerecht; über 3 Grad kippt sie den Reiter.",
  "Fill up to 8 mm a side cures; 8 to 12 mm is for eight weeks, dated; over 12 mm is no cure.":
    "Füllung bis 8 mm je Seite hilft; 8 bis 12 mm gelten für acht Wochen, datiert; über 12 mm ist keine Abhilfe.",
  "Far over what was published for horses with dry spots: over 20 kPa on average under the head at walk closes; less says nothing.":
    "Weit über dem, was für Pferde mit trockenen Stellen veröffentlicht ist: Über 20 kPa im Mittel unter dem Kopf im Schritt schließt aus; weniger sagt nichts.",
  "Nothing presses on spine and ridge: any touch is outside.":
    "Nichts drückt auf die Wirbelsäule: Jede Berührung ist außerhalb.",
  "common practice, no source": "übliche Praxis, ohne Quelle",
  published: "veröffentlicht",
  "from memory": "aus dem Gedächtnis",
};

/** Gaits as ridden, and why a saddle was not brought to rest in the calculation. */
export const RESTS: Table = {
  walk: "Schritt",
  "rising trot, sitting down": "Leichttraben, beim Einsitzen",
  "sitting trot": "ausgesessener Trab",
  "trot in half-seat": "Trab im leichten Sitz",
  "trot, seat not asked": "Trab, nach dem Sitz nicht gefragt",
  "canter in half-seat": "Galopp im leichten Sitz",
  "canter, sat": "Galopp, ausgesessen",
  "canter, taken as sat": "Galopp, als ausgesessen genommen",
  "In the calculation it does not come to rest: it tips forward over its points.":
    "In der Rechnung kommt er nicht zur Ruhe: Er kippt nach vorn über die Ortspitzen.",
  "In the calculation it does not come to rest: it tips back over the rear of its panel.":
    "In der Rechnung kommt er nicht zur Ruhe: Er kippt nach hinten über das Ende des Kissens.",
  "In the calculation it does not come to rest: it rolls off to the near side (left).":
    "In der Rechnung kommt er nicht zur Ruhe: Er rollt nach links ab.",
  "In the calculation it does not come to rest: it rolls off to the off side (right).":
    "In der Rechnung kommt er nicht zur Ruhe: Er rollt nach rechts ab.",
  "In the calculation it does not stay at rest: where forces balance, the least nudge moves it on.":
    "In der Rechnung bleibt er nicht in Ruhe: Wo die Kräfte im Gleichgewicht sind, bewegt ihn der kleinste Stoß weiter.",
  "It was not worked out how it rests: panel and back would be pressed together further than the calculation holds for.":
    "Wie er ruht, wurde nicht ausgerechnet: Kissen und Rücken würden weiter zusammengedrückt, als die Rechnung gilt.",
};
