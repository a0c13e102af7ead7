import type { Table } from "../trade.ts";

/** Reasons as an owner is told them, and what is wrong on the horse. HORSE stands for the horse's name. */
export const REASONS_HORSE: Table = {
  "Trotted up in hand, HORSE was uneven.": "An der Hand vorgetrabt, ging HORSE ungleichmäßig.",
  "We were told of, or saw, stumbling, swaying or a dragged toe.":
    "Uns wurde von Stolpern, Schwanken oder einer schleifenden Zehe berichtet, oder wir haben es gesehen.",
  "There is a wound, a sore or a swelling under saddle or girth.":
    "Unter Sattel oder Gurt ist eine Wunde, eine wunde Stelle oder eine Schwellung.",
  "HORSE reacted strongly to the hand.": "HORSE hat stark auf die Hand reagiert.",
  "HORSE reacted to the hand, clearly or at more than one place.":
    "HORSE hat auf die Hand reagiert, deutlich oder an mehr als einer Stelle.",
  "HORSE reacted a little to the hand, at one place, and did so again.":
    "HORSE hat an einer Stelle ein wenig auf die Hand reagiert, und ein zweites Mal wieder.",
  "Something was told or seen (a sudden change, a fall, painkillers, heat, lost muscle or weight, a saddle that always slips the same way, or disease about) that a vet looks at first.":
    "Es wurde etwas berichtet oder gesehen (eine plötzliche Veränderung, ein Sturz, Schmerzmittel, Wärme, Verlust an Muskel oder Gewicht, ein Sattel, der immer zur selben Seite rutscht, oder Krankheit am Ort), das sich zuerst ein Tierarzt ansieht.",
  "HORSE has not yet been touched at every place, on both sides.":
    "HORSE wurde noch nicht an jeder Stelle und auf beiden Seiten abgetastet.",
  "HORSE has not yet been seen trotted up in hand, or stumbling has not been asked about.":
    "HORSE wurde noch nicht an der Hand vorgetrabt gesehen, oder nach Stolpern wurde nicht gefragt.",
  "We have not yet asked about HORSE's past, question by question, or looked at its skin.":
    "Wir haben nach der Vorgeschichte von HORSE noch nicht Frage für Frage gefragt oder die Haut nicht angesehen.",
  "HORSE was off work for more than four weeks; its back wants six to eight weeks of work before a head is made for it.":
    "HORSE war mehr als vier Wochen außer Arbeit; der Rücken braucht sechs bis acht Wochen Arbeit, bevor ein Kopf für ihn gemacht wird.",
  "We do not know yet whether HORSE has been in work.": "Wir wissen noch nicht, ob HORSE in Arbeit war.",
  "HORSE is growing, or has a hollow behind the shoulder: its back will change, so no head is made for it now.":
    "HORSE wächst oder hat eine Kuhle hinter der Schulter: Der Rücken wird sich ändern, darum wird jetzt kein Kopf für ihn gemacht.",
  "We do not know yet whether HORSE's back will stay as it is.":
    "Wir wissen noch nicht, ob der Rücken von HORSE so bleibt, wie er ist.",
  "Rider and tack together weigh between 15 and 20 per cent of what HORSE weighs: keep rides short at first, and look at the back after each.":
    "Reiter und Ausrüstung wiegen zusammen zwischen 15 und 20 Prozent dessen, was HORSE wiegt: zu Anfang nur kurz reiten und danach jedes Mal den Rücken ansehen.",
  "Rider and tack together weigh more than a fifth of what HORSE weighs: a lighter rider or lighter tack would help HORSE.":
    "Reiter und Ausrüstung wiegen zusammen mehr als ein Fünftel dessen, was HORSE wiegt: ein leichterer Reiter oder eine leichtere Ausrüstung würde HORSE helfen.",
  "HORSE is leaner or rounder than is usual; as that comes right, the back changes its shape, so we look again sooner.":
    "HORSE ist magerer oder runder als üblich; wenn sich das bessert, ändert der Rücken seine Form, darum sehen wir früher wieder nach.",
  "HORSE has changed too much since an earlier tracing of its back, so the back is traced again.":
    "HORSE hat sich seit einer früheren Rückenkurve zu sehr verändert, darum wird der Rücken neu abgenommen.",
  "{horse} reacted {how} {where}, on both sides{again}.":
    "{horse} hat {where} auf beiden Seiten {how} reagiert{again}.",
  "{horse} reacted {how} {where}, on the near side{again}.":
    "{horse} hat {where} auf der linken Seite {how} reagiert{again}.",
  "{horse} reacted {how} {where}, on the off side{again}.":
    "{horse} hat {where} auf der rechten Seite {how} reagiert{again}.",
  "It reacted at {n} more places.": "Es hat an {n} weiteren Stellen reagiert.",
  "a little": "ein wenig",
  clearly: "deutlich",
  strongly: "stark",
  "at the top of the withers": "oben am Widerrist",
  "at the side of the withers": "seitlich am Widerrist",
  "under the tree point": "unter dem Ort des Baums",
  "at the middle of the back": "in der Mitte des Rückens",
  "over the last ribs": "über den letzten Rippen",
  "at the loin": "an der Lende",
  "at the girth": "in der Gurtlage",
  "at the breastbone": "am Brustbein",
  "at the base of the neck": "am Halsansatz",
  ", and again when touched a second time": ", und beim zweiten Mal wieder",
  "This letter is about HORSE with the chip {chip}.": "In diesem Brief geht es um HORSE mit dem Chip {chip}.",
  "Its number for life is {ueln}.": "Seine Lebensnummer ist {ueln}.",
};

export const REASONS_SADDLE: Table = {
  "It is part of a claim, an enquiry or a sale dispute, and so it stays as it was found.":
    "Er gehört zu einem Schadensfall, einer Untersuchung oder einem Streit über einen Verkauf und bleibt darum, wie er gefunden wurde.",
  "We do not know yet whether the saddle is part of a claim or dispute.":
    "Wir wissen noch nicht, ob der Sattel zu einem Schadensfall oder Streit gehört.",
  "Its legal owner has not agreed to any work.": "Sein Eigentümer hat keiner Arbeit zugestimmt.",
  "We have not yet asked the saddle's legal owner.":
    "Wir haben den Eigentümer des Sattels noch nicht gefragt.",
  "Other horses wear this saddle, and they have not been measured.":
    "Andere Pferde tragen diesen Sattel, und sie wurden nicht gemessen.",
  "A head made for HORSE would harm another horse that wears this saddle.":
    "Ein Kopf, der für HORSE gemacht wird, würde einem anderen Pferd schaden, das diesen Sattel trägt.",
  "The tree is cracked, or its layers have parted. Even a short crack grows.":
    "Der Baum ist gerissen, oder seine Schichten sind auseinandergegangen. Auch ein kurzer Riss wächst.",
  "A part that holds it together has failed or gives: a bar, a web, a strap, a rivet, a plate or the head.":
    "Ein Teil, das ihn zusammenhält, ist schadhaft oder gibt nach: Sturzfeder, Gurtband, Strupfe, Niet, Kopfeisen oder Kopf.",
  "There is doubt in a part that carries the rider, and only the bare tree can show.":
    "Ein Teil, das den Reiter trägt, ist zweifelhaft, und nur der bloße Baum kann es zeigen.",
  "It was in an accident (rolled on, fallen with, dropped, driven over or the like); what that did cannot be seen from outside.":
    "Er hatte einen Unfall (überrollt, damit gestürzt, fallen gelassen, überfahren oder dergleichen); was das bewirkt hat, ist von außen nicht zu sehen.",
  "It has been in an accident. Stripped, nothing was found; its head is not pressed any more.":
    "Er hatte einen Unfall. Zerlegt wurde nichts gefunden; sein Kopf kommt nicht mehr an die Presse.",
  "Some parts that can be seen or felt have not been looked at yet.":
    "Einige Teile, die zu sehen oder zu fühlen sind, wurden noch nicht angesehen.",
  "Rust, a dark ring, a musty smell or doubt at rivets, layers or plates was found.":
    "Rost, ein dunkler Ring, ein muffiger Geruch oder Zweifelhaftes an Nieten, Schichten oder Eisen wurde gefunden.",
  "Its tree has not been seen bare.": "Sein Baum wurde nicht bloß gesehen.",
  "Nobody can say that it was never fallen with, rolled on or driven over.":
    "Niemand kann sagen, dass nie damit gestürzt wurde und dass er nie überrollt oder überfahren wurde.",
  "Its head was altered before, more than once or by somebody unknown, or nobody knows.":
    "Sein Kopf wurde schon geändert, mehr als einmal oder von jemand Unbekanntem, oder niemand weiß es.",
  "Its head was repaired, replated or heated before; that makes it the maker's.":
    "Sein Kopf wurde schon repariert, neu beplattet oder erwärmt; damit ist er Sache des Herstellers.",
  "Its tree is over five years old, or its age is not known.":
    "Sein Baum ist über fünf Jahre alt, oder sein Alter ist nicht bekannt.",
  "Its two sides do not match: the tree may be twisted, and a press does not cure a twist.":
    "Seine beiden Seiten stimmen nicht überein: Der Baum kann verdreht sein, und eine Presse heilt keine Verdrehung.",
  "We have not yet measured whether its two sides match.":
    "Wir haben noch nicht gemessen, ob seine beiden Seiten übereinstimmen.",
  "Its number cannot be read or does not match, so nothing is known of its past.":
    "Seine Nummer ist nicht zu lesen oder passt nicht, darum ist von seiner Geschichte nichts bekannt.",
  "The maker's warranty may still run, so the maker is asked first.":
    "Die Gewährleistung des Herstellers kann noch laufen, darum wird zuerst der Hersteller gefragt.",
  "The maker does not permit this work by us.": "Der Hersteller erlaubt uns diese Arbeit nicht.",
  "Judging this fit is for a colleague who may.": "Diese Passform beurteilt ein Kollege, der es darf.",
  "Changing the plate is for a colleague who may.": "Das Kopfeisen wechselt ein Kollege, der es darf.",
  "We can prepare the work; the press itself is for a colleague who is qualified for it.":
    "Wir können die Arbeit vorbereiten; an die Presse geht ein Kollege, der dafür qualifiziert ist.",
  "Stripping the saddle is for a colleague who may.": "Den Sattel zerlegt ein Kollege, der es darf.",
  "It is not settled yet who may judge this fit.":
    "Es ist noch nicht geklärt, wer diese Passform beurteilen darf.",
  "It is not settled yet who may change the plate.":
    "Es ist noch nicht geklärt, wer das Kopfeisen wechseln darf.",
  "It is not settled yet who may put the head to the press.":
    "Es ist noch nicht geklärt, wer den Kopf an die Presse bringen darf.",
  "It is not settled yet who may strip the saddle.":
    "Es ist noch nicht geklärt, wer den Sattel zerlegen darf.",
};

export const REASONS_FIT: Table = {
  "The seat is too small for its rider, or the stirrups hang unevenly; that is put right before any saddle is judged.":
    "Der Sitz ist für seinen Reiter zu klein, oder die Bügel hängen ungleich; das wird gerichtet, bevor ein Sattel beurteilt wird.",
  "Girthing, placing or padding it otherwise cures that.":
    "Anders gurten, auflegen oder unterlegen behebt das.",
  "The panel is flat, lumpy or crooked, and that is put right before the head is judged.":
    "Das Kissen ist platt, klumpig oder schief, und das wird gerichtet, bevor der Kopf beurteilt wird.",
  "The head is right; the panel can make up what is missing.":
    "Der Kopf stimmt; was fehlt, kann das Kissen ausgleichen.",
  "It stands too low over the withers, and nothing else is wrong with its head: its front is filled a little.":
    "Er steht zu tief über dem Widerrist, und sonst stimmt sein Kopf: Vorn wird ein wenig aufgepolstert.",
  "The template shows a fault on one side only, and the hand there feels none; it is held into the head again first.":
    "Die Schablone zeigt nur auf einer Seite einen Fehler, und die Hand fühlt dort keinen; sie wird zuerst noch einmal in den Kopf gehalten.",
  "HORSE has a hollow behind the shoulder. A head made narrow to fit it would stop the muscle from coming back, so it is filled for now.":
    "HORSE hat eine Kuhle hinter der Schulter. Ein Kopf, der dafür eng gemacht wird, ließe den Muskel nicht wiederkommen, darum wird vorläufig aufgepolstert.",
  "The hollow is deeper than a fill can carry: HORSE is built up first.":
    "Die Kuhle ist tiefer, als eine Füllung tragen kann: Zuerst wird HORSE aufgebaut.",
  "The head would fit best near as it was made, before the last change.":
    "Am besten würde der Kopf nahe dem Maß ab Werk passen, vor der letzten Änderung.",
  "A plate that is at hand, or another position of the inserts, makes the whole saddle fit.":
    "Mit einem vorrätigen Kopfeisen oder einer anderen Stellung der Einsätze passt der ganze Sattel.",
  "A plate that fits this head would do it, and none is at hand.":
    "Mit einem passenden Kopfeisen ginge es, und keines ist vorrätig.",
  "A head of this build would do it, and no position of its inserts makes it.":
    "Mit einem Kopf dieser Bauart ginge es, und keine Stellung seiner Einsätze ergibt ihn.",
  "A small change of the head would make the whole saddle fit; in a head of this build only heat makes it.":
    "Mit einer kleinen Änderung des Kopfes würde der ganze Sattel passen; bei einem Kopf dieser Bauart geht das nur mit Wärme.",
  "There is a gap under the middle of the panel. The tree has springs along its rails, so part of it is wanted; it is looked at again under the rider.":
    "Unter der Mitte des Kissens ist eine Lücke. Der Baum hat Federn längs der Trachten, darum ist ein Teil davon gewollt; unter dem Reiter wird noch einmal nachgesehen.",
  "The head has been moved to and fro twice, and is not set back again.":
    "Der Kopf wurde zweimal hin und her bewegt und wird nicht noch einmal zurückgesetzt.",
  "The plate that was in this head before was not kept.":
    "Das Kopfeisen, das früher in diesem Kopf war, wurde nicht aufgehoben.",
  "A small change at the press makes the whole saddle fit, and the hands under it agree.":
    "Mit einer kleinen Änderung an der Presse passt der ganze Sattel, und die Hände darunter stimmen zu.",
  "The template has to be held into the head first, with a measure at both tips.":
    "Zuerst muss die Schablone in den Kopf gehalten und an beiden Ortspitzen gemessen werden.",
  "The hands under the saddle have to feel the same fault first.":
    "Zuerst müssen die Hände unter dem Sattel denselben Fehler fühlen.",
  "The change is larger than a head may take inside its saddle.":
    "Die Änderung ist größer, als ein Kopf im Sattel vertragen darf.",
  "A head would fit that lies beyond what this tree may still be moved.":
    "Passen würde ein Kopf, der jenseits dessen liegt, was dieser Baum noch bewegt werden darf.",
  "Its rails and its curve stay as they are, whatever head it has, and they do not follow this back.":
    "Trachten und Schwung bleiben, wie sie sind, welchen Kopf er auch hat, und sie folgen diesem Rücken nicht.",
  "It lies on the shoulder blade or behind the last rib, and there is no room to move it.":
    "Er liegt auf dem Schulterblatt oder hinter der letzten Rippe, und zum Verlegen ist kein Platz.",
  "Rider and tack together weigh more than a fifth of what HORSE weighs. A lighter load comes first; no work on a saddle makes up for it.":
    "Reiter und Ausrüstung wiegen zusammen mehr als ein Fünftel dessen, was HORSE wiegt. Zuerst kommt eine leichtere Last; keine Arbeit an einem Sattel gleicht das aus.",
  "The hands under the saddle feel the contrary of what that plate would cure, so a template is held into the head first.":
    "Die Hände unter dem Sattel fühlen das Gegenteil dessen, was dieses Kopfeisen beheben würde, darum wird zuerst eine Schablone in den Kopf gehalten.",
  "The hands under the saddle and the template held into the head say different things, and both are taken again.":
    "Die Hände unter dem Sattel und die Schablone im Kopf sagen Verschiedenes, und beides wird noch einmal gemacht.",
  "The saddle has not yet been seen ridden.": "Der Sattel wurde noch nicht geritten gesehen.",
  "In our calculation the saddle does not come to rest on this back as we read it, so we read it again.":
    "In unserer Rechnung kommt der Sattel auf diesem Rücken, wie wir ihn abgelesen haben, nicht zur Ruhe, darum lesen wir noch einmal ab.",
  "Its head has no plate or inserts that could be changed.":
    "Sein Kopf hat kein Kopfeisen und keine Einsätze, die man wechseln könnte.",
  "Its head takes another plate; a plate is never bent to size.":
    "In seinen Kopf kann ein anderes Kopfeisen; ein Kopfeisen wird nie auf Maß gebogen.",
  "The metal bar in its head is not surely held, and that is for its maker.":
    "Es steht nicht fest, dass der Metallbügel in seinem Kopf hält, und das ist Sache des Herstellers.",
  "The inserts in its head do not stand alike on both sides. That is put right first, and then everything is read again.":
    "Die Einsätze in seinem Kopf stehen nicht auf beiden Seiten gleich. Das wird zuerst gerichtet, und dann wird alles neu abgelesen.",
  "How the inserts in its head stand was not read yet.":
    "Wie die Einsätze in seinem Kopf stehen, wurde noch nicht abgelesen.",
  "There is grit where the inserts slide; it is cleaned out first.":
    "Wo die Einsätze gleiten, ist Sand; er wird zuerst herausgereinigt.",
  "Its head is solid polymer. That is moved by heat and never by pressure, and only by the maker's people.":
    "Sein Kopf ist aus massivem Kunststoff. Der wird mit Wärme bewegt und nie mit Druck, und nur von den Leuten des Herstellers.",
  "A head of this build is the maker's to move.": "Einen Kopf dieser Bauart bewegt der Hersteller.",
  "We do not know yet how its head is built.": "Wir wissen noch nicht, wie sein Kopf gebaut ist.",
  "We do not know yet how far its head has been moved already.":
    "Wir wissen noch nicht, wie weit sein Kopf schon bewegt wurde.",
  "A polymer tree is brought to the warmth of a room first, for hours, and how warm this one is was not looked at or is too little.":
    "Ein Kunststoffbaum kommt zuerst für Stunden in einen warmen Raum, und wie warm dieser ist, wurde nicht angesehen oder ist zu wenig.",
  "How its head is built was told and not seen.": "Wie sein Kopf gebaut ist, wurde gesagt und nicht gesehen.",
  "Nobody has told yet how its head is built.": "Wie sein Kopf gebaut ist, hat noch niemand gesagt.",
};

/** A limit that is not kept. Figures stand between the words. */
export const FAULTS: Table = {
  "There is little room over the withers: about {mm}.": "Über dem Widerrist ist wenig Platz: etwa {mm}.",
  "There is no room over the withers.": "Über dem Widerrist ist kein Platz.",
  "There is little room over the withers with the rider up: about {mm}.":
    "Über dem Widerrist ist mit Reiter wenig Platz: etwa {mm}.",
  "There is no room over the withers with the rider up.": "Über dem Widerrist ist mit Reiter kein Platz.",
  "It stands high over the withers with the rider up.": "Mit Reiter steht er hoch über dem Widerrist.",
  "There is little room over the withers when the rider stands in the stirrups: about {mm}.":
    "Über dem Widerrist ist wenig Platz, wenn der Reiter in den Bügeln steht: etwa {mm}.",
  "There is no room over the withers when the rider stands in the stirrups.":
    "Über dem Widerrist ist kein Platz, wenn der Reiter in den Bügeln steht.",
  "There is little room beside the withers: about {mm}.": "Neben dem Widerrist ist wenig Platz: etwa {mm}.",
  "There is no room beside the withers.": "Neben dem Widerrist ist kein Platz.",
  "The channel between its panels leaves too little room for the spine.":
    "Der Kanal zwischen den Kissen lässt der Wirbelsäule zu wenig Platz.",
  "The channel between its panels is narrow.": "Der Kanal zwischen den Kissen ist eng.",
  "The girth wants to lie about {mm} further forward than its straps hang.":
    "Der Gurt will etwa {mm} weiter vorn liegen, als die Strupfen hängen.",
  "The girth wants to lie about {mm} further back than its straps hang.":
    "Der Gurt will etwa {mm} weiter hinten liegen, als die Strupfen hängen.",
  "The points of the tree lie close behind the shoulder blade.":
    "Die Orte des Baums liegen dicht hinter dem Schulterblatt.",
  "The panel reaches too far back, towards the last rib.":
    "Das Kissen reicht zu weit nach hinten, zur letzten Rippe hin.",
  "Ridden, it stays off to one side.": "Beim Reiten liegt er dauernd zu einer Seite hin.",
  "In front the tree is steeper than the horse's sides, so that its tips press first.":
    "Vorn ist der Baum steiler als die Seiten des Pferdes, sodass zuerst die Ortspitzen drücken.",
  "In front the tree is flatter than the horse's sides, so that it presses high up.":
    "Vorn ist der Baum flacher als die Seiten des Pferdes, sodass er oben drückt.",
  "Along its rails the tree is steeper than the back, so that it bears on its edges.":
    "Längs der Trachten ist der Baum steiler als der Rücken, sodass er auf seinen Kanten liegt.",
  "Along its rails the tree is flatter than the back, so that it bears on its edges.":
    "Längs der Trachten ist der Baum flacher als der Rücken, sodass er auf seinen Kanten liegt.",
  "The head is about {mm} too narrow at its tips.": "Der Kopf ist an den Ortspitzen etwa {mm} zu eng.",
  "The head is about {mm} too wide at its tips.": "Der Kopf ist an den Ortspitzen etwa {mm} zu weit.",
  "A template of the head that this back wants does not lie evenly in this head.":
    "Eine Schablone des Kopfes, den dieser Rücken braucht, liegt in diesem Kopf nicht gleichmäßig an.",
  "Behind the shoulder there is a hollow of about {mm}.": "Hinter der Schulter ist eine Kuhle von etwa {mm}.",
  "The horse's two sides are not alike in front.": "Die beiden Seiten des Pferdes sind vorn nicht gleich.",
  "There is a gap under the middle of the panel: it bears in front and behind.":
    "Unter der Mitte des Kissens ist eine Lücke: Er trägt vorn und hinten.",
  "It rocks on the back when it is pressed by hand.": "Von Hand gedrückt, kippelt er auf dem Rücken.",
  "With the rider up the seat tips forward, by about {deg} degrees.":
    "Mit Reiter kippt der Sitz nach vorn, um etwa {deg} Grad.",
  "With the rider up the seat tips back, by about {deg} degrees.":
    "Mit Reiter kippt der Sitz nach hinten, um etwa {deg} Grad.",
  "By our calculation far too much of the load comes under the head of the tree.":
    "Nach unserer Rechnung kommt viel zu viel der Last unter den Kopf des Baums.",
  "By our calculation its panels press on the spine.":
    "Nach unserer Rechnung drücken seine Kissen auf die Wirbelsäule.",
  "With this head a fill of about {mm} a side would be needed.":
    "Mit diesem Kopf wäre eine Füllung von etwa {mm} je Seite nötig.",
  "The saddle's two sides are not quite alike.": "Die beiden Seiten des Sattels sind nicht ganz gleich.",
  "The panel is thicker on one side than on the other.":
    "Das Kissen ist auf einer Seite dicker als auf der anderen.",
};
