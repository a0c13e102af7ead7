import type { Table } from "../trade.ts";

/** The owner's letter: its frame, the answers as an owner is told them, what will be done. Names stand in it in capitals. */
export const LETTER: Table = {
  "Letter to the owner": "Brief an den Besitzer",
  "HORSE and its saddle": "HORSE und der Sattel",
  "HORSE and the saddle “SADDLE”": "HORSE und der Sattel „SADDLE“",
  "To the owner of this saddle,": "An den Besitzer dieses Sattels",
  "Dear OWNER,": "Guten Tag, OWNER,",
  "With kind regards, HAND": "Mit freundlichen Grüßen, HAND",
  "page PAGE of OF": "Seite PAGE von OF",
  "worked out by engine VERSION from readings HASH":
    "ausgerechnet mit Rechenwerk VERSION aus den Ablesungen HASH",
  invented: "erfunden",
  "The question": "Die Frage",
  "May you ride?": "Dürfen Sie reiten?",
  "Your horse": "Ihr Pferd",
  "The saddle": "Der Sattel",
  "The work": "Die Arbeit",
  "What will be done": "Was gemacht wird",
  "What will not": "Was nicht",
  "What follows": "Was daraus folgt",
  "Who may do it": "Wer es darf",
  "When we meet next": "Wann wir uns wieder sehen",
  "Please heed": "Bitte beachten",
  "What we cannot see": "Was wir nicht sehen können",
  "Whether this saddle suits HORSE, and whether its head can be altered.":
    "Ob dieser Sattel zu HORSE passt und ob sein Kopf geändert werden kann.",
  "{day} January {year}": "{day}. Januar {year}",
  "{day} February {year}": "{day}. Februar {year}",
  "{day} March {year}": "{day}. März {year}",
  "{day} April {year}": "{day}. April {year}",
  "{day} May {year}": "{day}. Mai {year}",
  "{day} June {year}": "{day}. Juni {year}",
  "{day} July {year}": "{day}. Juli {year}",
  "{day} August {year}": "{day}. August {year}",
  "{day} September {year}": "{day}. September {year}",
  "{day} October {year}": "{day}. Oktober {year}",
  "{day} November {year}": "{day}. November {year}",
  "{day} December {year}": "{day}. Dezember {year}",
  "This holds for horse, saddle and rider as they were read on {date}.":
    "Das gilt für Pferd, Sattel und Reiter, wie sie am {date} abgelesen wurden.",
  "What lies under the saddle's cover was not seen.":
    "Was unter dem Bezug des Sattels liegt, wurde nicht gesehen.",
  "A vet, the maker and a qualified saddler come before it, and local rules apply.":
    "Ein Tierarzt, der Hersteller und ein qualifizierter Sattler gehen vor, und die Regeln am Ort gelten.",
  "In this letter the tree is the frame inside the saddle, its head the arch over the withers, and the tips the ends of that arch; the panel is the cushion on the horse, and to flock is to fill it with wool.":
    "In diesem Brief ist der Baum das Gerüst im Sattel, sein Kopf der Bogen über dem Widerrist, und die Ortspitzen sind die Enden dieses Bogens; die Trachten sind seine beiden Längsseiten, das Kissen ist das Polster auf dem Pferd, und polstern heißt, es mit Wolle zu füllen.",
  "First comes: {place}.": "Zuerst kommt: {place}.",
};

export const OWNER_SAYS: Table = {
  "No reason seen in HORSE itself not to ride. Hands, eyes and questions showed no reason today; that is not a vet's examination.":
    "An HORSE selbst wurde kein Grund gesehen, nicht zu reiten. Hände, Augen und Fragen zeigten heute keinen Grund; das ist keine tierärztliche Untersuchung.",
  "Nothing found broken, looked at with its cover on. What lies under the cover was not seen.":
    "Nichts Gebrochenes gefunden, im Bezug angesehen. Was unter dem Bezug liegt, wurde nicht gesehen.",
  "Nothing found broken, its tree looked at bare, without its cover.":
    "Nichts Gebrochenes gefunden, der Baum bloß angesehen, ohne Bezug.",
  "A saddler has to take it apart and look at its tree before its head is altered. Something about the tree is in doubt, or its past is not known.":
    "Ein Sattler muss ihn zerlegen und den Baum ansehen, bevor der Kopf geändert wird. Etwas am Baum ist zweifelhaft, oder seine Geschichte ist nicht bekannt.",
  "Not to be ridden in. There is doubt in a part that carries the rider, or the saddle was in an accident. A saddler takes it apart; it is ridden in again only when its tree has been seen bare, found sound, and the saddle has been built up and looked over.":
    "Nicht zum Reiten. Ein Teil, das den Reiter trägt, ist zweifelhaft, oder der Sattel hatte einen Unfall. Ein Sattler zerlegt ihn; geritten wird darin erst wieder, wenn der bloße Baum angesehen und in Ordnung gefunden, der Sattel aufgebaut und durchgesehen ist.",
  "How it fits was not judged.": "Wie er passt, wurde nicht beurteilt.",
  "How it fits is told below, at the work.": "Wie er passt, steht unten bei der Arbeit.",
  "It does not yet fit as it should. Until it does, ride at walk and trot only, and not for long. After each ride look at the back for heat, swelling, rubbed or ruffled hair, dry spots under a wet saddle, and flinching: at any of these stop riding in this saddle and ring us, or the vet.":
    "Er passt noch nicht, wie er soll. Reiten Sie bis dahin nur im Schritt und Trab und nicht lange. Sehen Sie nach jedem Ritt den Rücken an: auf Wärme, Schwellung, geriebenes oder gesträubtes Haar, trockene Stellen unter nassem Sattel und Zusammenzucken. Bei irgendetwas davon reiten Sie nicht weiter in diesem Sattel und rufen uns oder den Tierarzt an.",
  "Not before a vet has said that HORSE may be ridden.":
    "Nicht, bevor ein Tierarzt gesagt hat, dass HORSE geritten werden darf.",
  "You ring the vet, tell what was found and where, and ask whether HORSE may be ridden. Until the vet has answered it is not ridden.":
    "Sie rufen den Tierarzt an, sagen, was wo gefunden wurde, und fragen, ob HORSE geritten werden darf. Bis der Tierarzt geantwortet hat, wird nicht geritten.",
  "You ring the vet today, and leave the saddle off.":
    "Sie rufen heute den Tierarzt an und lassen den Sattel weg.",
  "The vet at once where HORSE gets worse.": "Sofort den Tierarzt, wenn es HORSE schlechter geht.",
  "Sooner where HORSE's shape, work or mood changes.":
    "Früher, wenn sich Form, Arbeit oder Laune von HORSE ändern.",
  "Its tree is broken, so another saddle is looked for.":
    "Sein Baum ist gebrochen, darum wird ein anderer Sattel gesucht.",
  "No head serves every horse that wears this saddle; it stays as it is for the other.":
    "Kein Kopf dient jedem Pferd, das diesen Sattel trägt; er bleibt für das andere, wie er ist.",
};

const LATER = "Danach mindestens zweimal im Jahr.";
const AFTER_WORK = `An dem Tag, an dem er zurückkommt, zur Prüfung beim Reiten auf beiden Händen, und nach sechs bis acht Wochen noch einmal. ${LATER}`;
const ON_CHANGE = `Am Tag des Wechsels zur Prüfung beim Reiten, und nach sechs bis acht Wochen noch einmal. ${LATER}`;
const RIDDEN_FIRST =
  "Er wird nach 24 Stunden wieder gemessen und vor dem Sattelanpasser geritten, bevor er zu Hause geritten wird.";

export const OWNER_WORK: Table = {
  "On the day it comes back, for the ridden check on both reins, and again after six to eight weeks. After that at least twice a year.":
    AFTER_WORK,
  "In six to eight weeks. After that at least twice a year.": `In sechs bis acht Wochen. ${LATER}`,
  "The head is not moved further than agreed. It is never moved by heat, and never on one side alone.":
    "Der Kopf wird nicht weiter bewegt als vereinbart. Er wird nie mit Wärme bewegt und nie nur auf einer Seite.",
  "Beyond that, nothing is done to the saddle for HORSE, the panel included, before the vet has seen HORSE.":
    "Darüber hinaus wird am Sattel für HORSE nichts gemacht, auch nicht am Kissen, bevor der Tierarzt HORSE gesehen hat.",
  "The head is not altered by us.": "Der Kopf wird nicht von uns geändert.",
  "This head is not altered.": "Dieser Kopf wird nicht geändert.",
  "The head stays as it is.": "Der Kopf bleibt, wie er ist.",
  "When the vet has seen HORSE, the saddle is looked at afresh.":
    "Wenn der Tierarzt HORSE gesehen hat, wird der Sattel neu angesehen.",
  "Nothing is done to the saddle for HORSE, the panel included, before the vet has seen HORSE and has nothing against it.":
    "Am Sattel wird für HORSE nichts gemacht, auch nicht am Kissen, bevor der Tierarzt HORSE gesehen und nichts dagegen hat.",
  "As soon as the vet has seen HORSE. Please bring what the vet said.":
    "Sobald der Tierarzt HORSE gesehen hat. Bitte bringen Sie mit, was er gesagt hat.",
  "Keep the saddle dry, unridden and as it is until the claim is closed or its owner has agreed in writing.":
    "Den Sattel trocken, ungeritten und wie er ist aufbewahren, bis der Fall abgeschlossen ist oder sein Eigentümer schriftlich zugestimmt hat.",
  "Nothing is done to the saddle, the panel included, before the claim is closed or its owner has agreed in writing.":
    "Am Sattel wird nichts gemacht, auch nicht am Kissen, bevor der Fall abgeschlossen ist oder sein Eigentümer schriftlich zugestimmt hat.",
  "When the claim is closed or the owner has agreed. The saddle is then looked at afresh.":
    "Wenn der Fall abgeschlossen ist oder der Eigentümer zugestimmt hat. Dann wird der Sattel neu angesehen.",
  "Nothing needs doing today.": "Heute ist nichts zu tun.",
  "In six months.": "In sechs Monaten.",
  "It is placed, girthed or padded otherwise, ridden, and read again.":
    "Er wird anders aufgelegt, gegurtet oder unterlegt, geritten und neu abgelesen.",
  "When that is done, to read it again. After that at least twice a year.": `Wenn das getan ist, um neu abzulesen. ${LATER}`,
  "The panel is worked on and the saddle ridden. Each fill is dated, and thinned at each visit.":
    "Am Kissen wird gearbeitet und der Sattel geritten. Jede Füllung wird datiert und bei jedem Besuch dünner gemacht.",
  "The plate in the head is changed, the head is measured again as it is then fitted, and the ridden check decides. The old plate stays with the saddle.":
    "Das Kopfeisen wird gewechselt, der Kopf eingebaut neu gemessen, und die Prüfung beim Reiten entscheidet. Das alte Kopfeisen bleibt beim Sattel.",
  "The plate is not bent to size, and the head is not put to a press.":
    "Das Kopfeisen wird nicht auf Maß gebogen, und der Kopf kommt nicht an eine Presse.",
  "On the day of the change, for the ridden check, and again after six to eight weeks. After that at least twice a year.":
    ON_CHANGE,
  "The inserts in the head are set the same on both sides, the head is measured again, and the ridden check decides.":
    "Die Einsätze im Kopf werden auf beiden Seiten gleich gestellt, der Kopf wird neu gemessen, und die Prüfung beim Reiten entscheidet.",
  "The inserts are never set differently on one side, and the head is not put to a press.":
    "Die Einsätze werden nie auf einer Seite anders gestellt, und der Kopf kommt nicht an eine Presse.",
  "The head is altered at the press, inside the saddle, in small measured passes. It is measured again after 24 hours, and ridden in front of the fitter before it is ridden at home.": `Der Kopf wird an der Presse geändert, im Sattel, in kleinen gemessenen Gängen. ${RIDDEN_FIRST}`,
  "The saddle is stripped, and the head is altered at the press, in small measured passes. It is measured again after 24 hours, built up, and ridden in front of the fitter before it is ridden at home.":
    "Der Sattel wird zerlegt und der Kopf an der Presse geändert, in kleinen gemessenen Gängen. Er wird nach 24 Stunden wieder gemessen, aufgebaut und vor dem Sattelanpasser geritten, bevor er zu Hause geritten wird.",
  "A saddler strips the saddle, which is to take it apart until its tree is bare, and looks at the tree. What is found decides what comes next, and we write to you before anything more is done. Please tell us now what you would want if the tree is not sound.":
    "Ein Sattler zerlegt den Sattel, das heißt, er nimmt ihn auseinander, bis der Baum bloß liegt, und sieht den Baum an. Der Befund entscheidet, was als Nächstes kommt, und wir schreiben Ihnen, bevor mehr gemacht wird. Bitte sagen Sie uns jetzt, was Sie wünschen, falls der Baum nicht in Ordnung ist.",
  "The head is not altered before the tree has been seen bare.":
    "Der Kopf wird nicht geändert, bevor der bloße Baum angesehen wurde.",
  "When the tree has been seen bare.": "Wenn der bloße Baum angesehen wurde.",
  "The last change of the head is taken back: in small measured passes, or by the old plate. It is measured again after 24 hours, and ridden in front of the fitter before it is ridden at home.": `Die letzte Änderung des Kopfes wird zurückgenommen: in kleinen gemessenen Gängen oder mit dem alten Kopfeisen. ${RIDDEN_FIRST}`,
  "The saddle goes to the maker's people, with our readings and the template.":
    "Der Sattel geht mit unseren Ablesungen und der Schablone an die Leute des Herstellers.",
  "The head is not put to a press, and nobody but the maker's people warms it.":
    "Der Kopf kommt nicht an eine Presse, und nur die Leute des Herstellers erwärmen ihn.",
  "We hand our readings to a colleague who may do this work.":
    "Wir geben unsere Ablesungen einem Kollegen, der diese Arbeit machen darf.",
  "We ask the maker, with our readings and the template.":
    "Wir fragen den Hersteller, mit unseren Ablesungen und der Schablone.",
  "We keep the template and the drawings of HORSE's back, to look for another saddle with.":
    "Wir heben die Schablone und die Zeichnungen vom Rücken von HORSE auf, um damit einen anderen Sattel zu suchen.",
  "When there is another saddle to look at.": "Wenn ein anderer Sattel anzusehen ist.",
  "We keep the template and the drawings of HORSE's back, to look for another saddle or another tree with.":
    "Wir heben die Schablone und die Zeichnungen vom Rücken von HORSE auf, um damit einen anderen Sattel oder Baum zu suchen.",
  "We read what is missing, and then answer.": "Wir lesen ab, was fehlt, und antworten dann.",
  "Nothing is altered until what is missing has been read.":
    "Nichts wird geändert, bis abgelesen ist, was fehlt.",
  "To read what is missing.": "Um abzulesen, was fehlt.",
  "You tie a tag to the saddle, so that nobody rides in it, and its tree is looked at bare.":
    "Sie binden einen Anhänger an den Sattel, damit niemand darin reitet, und der bloße Baum wird angesehen.",
  "Nobody rides in this saddle before its tree has been seen bare and found sound.":
    "Niemand reitet in diesem Sattel, bevor der bloße Baum angesehen und in Ordnung gefunden wurde.",
  "You tie a tag to the saddle, so that nobody rides in it; it is repaired, and looked over again afterwards.":
    "Sie binden einen Anhänger an den Sattel, damit niemand darin reitet; er wird repariert und danach wieder durchgesehen.",
  "Nobody rides in this saddle before it has been repaired and looked over again.":
    "Niemand reitet in diesem Sattel, bevor er repariert und wieder durchgesehen wurde.",
  "The saddle is marked, so that nobody uses it by mistake.":
    "Der Sattel wird gekennzeichnet, damit ihn niemand aus Versehen benutzt.",
  "Nobody rides in this saddle again. It is not mended, lent or sold.":
    "In diesem Sattel reitet niemand mehr. Er wird nicht geflickt, verliehen oder verkauft.",
  "Besides, the panel is worked on.": "Außerdem wird am Kissen gearbeitet.",
  "Besides, it is placed, girthed or padded otherwise.":
    "Außerdem wird er anders aufgelegt, gegurtet oder unterlegt.",
  "Before that the saddle is stripped and its tree looked at.":
    "Vorher wird der Sattel zerlegt und der Baum angesehen.",
  "What is then to be done: the head is altered at the press, inside the saddle.":
    "Was dann zu tun ist: Der Kopf wird an der Presse geändert, im Sattel.",
  "If the tree is sound, its head is then altered at the press, in small measured passes.":
    "Ist der Baum in Ordnung, so wird der Kopf dann an der Presse geändert, in kleinen gemessenen Gängen.",
  "What is then to be done: the plate in the head is changed.":
    "Was dann zu tun ist: Das Kopfeisen wird gewechselt.",
  "What is then to be done: the inserts in the head are set otherwise.":
    "Was dann zu tun ist: Die Einsätze im Kopf werden anders gestellt.",
  "What is then to be done: the last change of the head is taken back.":
    "Was dann zu tun ist: Die letzte Änderung des Kopfes wird zurückgenommen.",
  "The work itself is for a colleague who is qualified and equipped for it.":
    "Die Arbeit selbst macht ein Kollege, der dafür qualifiziert und ausgerüstet ist.",
  "The maker is asked before anything is begun.": "Der Hersteller wird gefragt, bevor etwas begonnen wird.",
  "The head itself is for the maker's people.": "Der Kopf selbst ist Sache der Leute des Herstellers.",
  "Nothing is begun before you have agreed to it.": "Nichts wird begonnen, bevor Sie zugestimmt haben.",
  "The panel is re-flocked first, so that it is even.":
    "Das Kissen wird zuerst neu gepolstert, damit es gleichmäßig ist.",
  "It is filled on the near side (left) for now, looked at again between {from} and {to}, and made thinner each time.":
    "Vorläufig wird links aufgepolstert, zwischen {from} und {to} wieder angesehen und jedes Mal dünner gemacht.",
  "It is filled on the off side (right) for now, looked at again between {from} and {to}, and made thinner each time.":
    "Vorläufig wird rechts aufgepolstert, zwischen {from} und {to} wieder angesehen und jedes Mal dünner gemacht.",
  "It is filled on both sides for now, looked at again between {from} and {to}, and made thinner each time.":
    "Vorläufig wird auf beiden Seiten aufgepolstert, zwischen {from} und {to} wieder angesehen und jedes Mal dünner gemacht.",
  "It is filled alike on both sides and looked at again between {from} and {to}.":
    "Es wird auf beiden Seiten gleich aufgepolstert und zwischen {from} und {to} wieder angesehen.",
  "It is filled alike on both sides and looked at again between {from} and {to}; new wool beds down.":
    "Es wird auf beiden Seiten gleich aufgepolstert und zwischen {from} und {to} wieder angesehen; neue Wolle setzt sich.",
};

/** What follows from a change of the head. */
export const OWNER_FOLLOWS: Table = {
  "It is then about {mm} mm narrower than this back would want, which is within what is allowed.":
    "Er ist dann etwa {mm} mm enger, als dieser Rücken ihn wollte; das liegt im erlaubten Bereich.",
  "It is then about {mm} mm wider than this back would want, which is within what is allowed.":
    "Er ist dann etwa {mm} mm weiter, als dieser Rücken ihn wollte; das liegt im erlaubten Bereich.",
  "The head becomes about {mm} mm wider inside its tips.":
    "Der Kopf wird innen an den Ortspitzen etwa {mm} mm weiter.",
  "The head becomes about {mm} mm narrower inside its tips.":
    "Der Kopf wird innen an den Ortspitzen etwa {mm} mm enger.",
  "There will be about {mm} mm less room over the withers.":
    "Über dem Widerrist wird etwa {mm} mm weniger Platz sein.",
  "There will be about {mm} mm more room over the withers.":
    "Über dem Widerrist wird etwa {mm} mm mehr Platz sein.",
  "There will be about {mm} mm less room over the withers, give or take {u} mm.":
    "Über dem Widerrist wird etwa {mm} mm weniger Platz sein, auf {u} mm genau.",
  "There will be about {mm} mm more room over the withers, give or take {u} mm.":
    "Über dem Widerrist wird etwa {mm} mm mehr Platz sein, auf {u} mm genau.",
  "The seat tips forward by about {deg} degrees, so its balance is looked at again.":
    "Der Sitz kippt um etwa {deg} Grad nach vorn, darum wird das Gleichgewicht noch einmal angesehen.",
  "The seat tips back by about {deg} degrees, so its balance is looked at again.":
    "Der Sitz kippt um etwa {deg} Grad nach hinten, darum wird das Gleichgewicht noch einmal angesehen.",
  "The channel between the panels becomes about {mm} mm wider in front.":
    "Der Kanal zwischen den Kissen wird vorn etwa {mm} mm weiter.",
  "The channel between the panels becomes about {mm} mm narrower in front.":
    "Der Kanal zwischen den Kissen wird vorn etwa {mm} mm enger.",
};
