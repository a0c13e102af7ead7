import type { Table } from "../trade.ts";

/** The three answers: heading, meaning, next step, who. */
export const ANSWERS_HORSE: Table = {
  "Not examined yet.": "Noch nicht untersucht.",
  "The horse has not been touched, trotted up and asked about as far as an answer needs, so nothing is said about riding it.":
    "Das Pferd wurde noch nicht so weit abgetastet, vorgetrabt und erfragt, wie eine Antwort es braucht; über das Reiten wird deshalb nichts gesagt.",
  "Go over the horse: hands on every zone and both sides, trotted up in hand, the questions asked one by one.":
    "Das Pferd durchgehen: jede Zone auf beiden Seiten abtasten, an der Hand vortraben, die Fragen einzeln stellen.",
  "The fitter, with the person who looks after the horse.":
    "Der Sattelanpasser, zusammen mit der Person, die das Pferd betreut.",
  "No reason seen not to ride.": "Kein Grund gesehen, nicht zu reiten.",
  "Hands, eyes and questions showed no reason today; that is not a vet's examination.":
    "Hände, Augen und Fragen zeigten heute keinen Grund; das ist keine tierärztliche Untersuchung.",
  "Look again before each ride, and at the next visit.":
    "Vor jedem Ritt und beim nächsten Besuch wieder nachsehen.",
  "Whoever rides; a vet when anything changes.": "Wer reitet; ein Tierarzt, sobald sich etwas ändert.",
  "See the vet before any saddle work.": "Vor jeder Arbeit am Sattel zum Tierarzt.",
  "Something was found that a vet must look at first; until then nothing is fitted, filled or altered for this horse.":
    "Es wurde etwas gefunden, das zuerst ein Tierarzt ansehen muss; bis dahin wird für dieses Pferd nichts angepasst, gepolstert oder geändert.",
  "Ring the vet, tell what was found and where, and ask whether the horse may be ridden meanwhile.":
    "Den Tierarzt anrufen, sagen, was wo gefunden wurde, und fragen, ob das Pferd inzwischen geritten werden darf.",
  "A vet.": "Ein Tierarzt.",
  "See the vet before riding.": "Vor dem Reiten zum Tierarzt.",
  "Something was found that may hurt horse or rider; the horse is not ridden until a vet has seen it.":
    "Es wurde etwas gefunden, das Pferd oder Reiter schaden kann; das Pferd wird nicht geritten, bis ein Tierarzt es gesehen hat.",
  "Ring the vet today and leave the saddle off.": "Heute den Tierarzt anrufen und den Sattel weglassen.",
  "Come back another day.": "An einem anderen Tag wiederkommen.",
  "The back is not one to alter a saddle for today.": "Für diesen Rücken ändert man heute keinen Sattel.",
  "Ride lightly if at all, watch any place that reacted, and have the horse looked at again in six to eight weeks, or sooner if it gets worse.":
    "Wenn überhaupt, nur leicht reiten, jede Stelle beobachten, die reagiert hat, und das Pferd in sechs bis acht Wochen wieder ansehen lassen, früher, wenn es schlechter wird.",
  "The fitter; a vet if it reacts again.": "Der Sattelanpasser; ein Tierarzt, wenn es wieder reagiert.",
  "Bring it back into work, and have horse and saddle looked at again six to eight weeks after that.":
    "Wieder in Arbeit nehmen, und Pferd und Sattel sechs bis acht Wochen danach wieder ansehen lassen.",
  "Have horse and saddle looked at again in six to eight weeks; ask a vet or physiotherapist about a hollow.":
    "Pferd und Sattel in sechs bis acht Wochen wieder ansehen lassen; wegen einer Kuhle Tierarzt oder Physiotherapeut fragen.",
  "No: not this horse, until a vet has seen it.":
    "Nein: dieses Pferd nicht, bis ein Tierarzt es gesehen hat.",
  "No: not in this saddle.": "Nein: nicht in diesem Sattel.",
  "Not answered: not everything has been looked at.":
    "Nicht beantwortet: Es wurde noch nicht alles angesehen.",
  "No: not in this saddle, which is kept as it was found.":
    "Nein: nicht in diesem Sattel; er bleibt, wie er gefunden wurde.",
  "Ask the vet first; no saddle work is done before.":
    "Zuerst den Tierarzt fragen; vorher wird am Sattel nichts gemacht.",
  "No reason was seen today not to ride in this saddle, as far as it was looked at.":
    "Heute wurde, soweit angesehen, kein Grund gefunden, nicht in diesem Sattel zu reiten.",
};

export const ANSWERS_SADDLE: Table = {
  "Not looked over yet.": "Noch nicht durchgesehen.",
  "Parts that can be seen and felt today were not looked at, so nothing is said about this saddle.":
    "Teile, die heute zu sehen und zu fühlen sind, wurden nicht angesehen; über diesen Sattel wird deshalb nichts gesagt.",
  "Look over every part, squeeze, flex and twist it, and listen.":
    "Jedes Teil ansehen, drücken, biegen, verdrehen und hinhören.",
  "The fitter.": "Der Sattelanpasser.",
  "Nothing found, looked at dressed.": "Nichts gefunden, im Bezug angesehen.",
  "What can be seen and felt with the cover on showed nothing; what lies under the cover was not seen.":
    "Was mit Bezug zu sehen und zu fühlen ist, zeigte nichts; was unter dem Bezug liegt, wurde nicht gesehen.",
  "Look it over again at each visit and after any fall or knock.":
    "Bei jedem Besuch und nach jedem Sturz oder Stoß wieder durchsehen.",
  "The fitter or a saddler.": "Der Sattelanpasser oder ein Sattler.",
  "Nothing found, looked at bare.": "Nichts gefunden, am bloßen Baum angesehen.",
  "The stripped tree showed nothing to eye, hand and light.":
    "Der zerlegte Baum zeigte Auge, Hand und Licht nichts.",
  "Look at it again after each pass at the press, and when it is built up again.":
    "Nach jedem Gang an der Presse wieder ansehen, und wenn er wieder aufgebaut ist.",
  "The saddler who stripped it.": "Der Sattler, der ihn zerlegt hat.",
  "Strip it before its head is altered.": "Zerlegen, bevor der Kopf geändert wird.",
  "Something about the tree is in doubt, or its past is not known; under its cover it is not taken to the press.":
    "Etwas am Baum ist zweifelhaft, oder seine Geschichte ist nicht bekannt; im Bezug kommt er nicht an die Presse.",
  "Have it stripped and looked at bare; ask the owner now, since what is found can change the answer.":
    "Zerlegen und den bloßen Baum ansehen lassen; den Besitzer jetzt fragen, denn der Befund kann die Antwort ändern.",
  "A saddler who may strip.": "Ein Sattler, der zerlegen darf.",
  "Strip it before it is ridden.": "Zerlegen, bevor er geritten wird.",
  "There is doubt in a part that carries the rider, or the saddle was in an accident; it is not ridden until it has been seen bare.":
    "Ein Teil, das den Reiter trägt, ist zweifelhaft, oder der Sattel hatte einen Unfall; er wird nicht geritten, bis der bloße Baum angesehen wurde.",
  "Put a tag on it, do not ride in it, and have it stripped.":
    "Einen Anhänger daran befestigen, nicht darin reiten, zerlegen lassen.",
  "Out of use until it is repaired.": "Außer Gebrauch, bis er repariert ist.",
  "A part has failed, or the head clicks or gives; it is not ridden until that is found and put right.":
    "Ein Teil ist schadhaft, oder der Kopf knackt oder gibt nach; er wird nicht geritten, bis das gefunden und behoben ist.",
  "Put a tag on it, have it repaired, and have it looked over again afterwards.":
    "Einen Anhänger daran befestigen, reparieren und danach wieder durchsehen lassen.",
  "A saddler; the maker while the warranty runs.":
    "Ein Sattler; solange die Gewährleistung läuft, der Hersteller.",
  "Out of use for good.": "Für immer außer Gebrauch.",
  "The tree itself is cracked or parted; it is marked, not ridden, not mended and not sold.":
    "Der Baum selbst ist gerissen oder auseinandergegangen; er wird gekennzeichnet, nicht geritten, nicht geflickt und nicht verkauft.",
  "Mark it so that nobody can use it by mistake, and look for another saddle.":
    "So kennzeichnen, dass ihn niemand aus Versehen benutzt, und einen anderen Sattel suchen.",
  "Its owner, with the fitter's note.": "Sein Besitzer, mit dem Vermerk des Sattelanpassers.",
};

export const ANSWERS_WORK: Table = {
  "Nothing is done to the saddle for this horse now.":
    "Für dieses Pferd wird am Sattel jetzt nichts gemacht.",
  "The horse comes first: what was found on it shuts all saddle work.":
    "Das Pferd geht vor: Was an ihm gefunden wurde, schließt jede Arbeit am Sattel aus.",
  "Follow the horse's answer, then have the saddle looked at afresh.":
    "Der Antwort zum Pferd folgen, dann den Sattel neu ansehen lassen.",
  "The vet, then the fitter.": "Der Tierarzt, dann der Sattelanpasser.",
  "Leave the saddle as it was found.": "Den Sattel lassen, wie er gefunden wurde.",
  "It belongs to a claim or dispute, or its owner has not agreed; nothing on it is touched.":
    "Er gehört zu einem Schadensfall oder Streit, oder sein Eigentümer hat nicht zugestimmt; nichts daran wird angerührt.",
  "Keep it dry, unridden and unaltered until the claim is closed or the owner agrees in writing.":
    "Trocken, ungeritten und unverändert aufbewahren, bis der Fall abgeschlossen ist oder der Eigentümer schriftlich zustimmt.",
  "Its owner, and whoever handles the claim.": "Sein Eigentümer und wer den Fall bearbeitet.",
  "Nothing to do to this saddle for this horse today.":
    "An diesem Sattel ist heute für dieses Pferd nichts zu tun.",
  "Everything that was read lies inside and the hands agree, ridden check included.":
    "Alles Abgelesene liegt innerhalb, und die Hände stimmen zu, auch die Prüfung beim Reiten.",
  "Look again in six months, or at once when the horse's shape, work or mood changes.":
    "In sechs Monaten wieder nachsehen, oder sofort, wenn sich Form, Arbeit oder Laune des Pferdes ändern.",
  "Set it up otherwise first.": "Zuerst anders auflegen und einstellen.",
  "Place, girth, pads, stirrups or the rider's seat are what is wrong; the head stays as it is.":
    "Lage, Gurt, Unterlagen, Bügel oder der Sitz des Reiters stimmen nicht; der Kopf bleibt, wie er ist.",
  "Put that right, ride, and read the saddle again.":
    "Das richten, reiten und den Sattel noch einmal ablesen.",
  "The fitter with the rider.": "Der Sattelanpasser mit dem Reiter.",
  "Work on the panel; leave the head.": "Am Kissen arbeiten; den Kopf lassen.",
  "Flocking or a shim cures what was found, and a fill is dated and thinned at each visit.":
    "Polstern oder eine Einlage behebt, was gefunden wurde; eine Füllung wird datiert und bei jedem Besuch dünner gemacht.",
  "Have the panel done, ride, and look again in six to eight weeks.":
    "Das Kissen machen lassen, reiten und in sechs bis acht Wochen wieder nachsehen.",
  "A fitter or saddler who flocks.": "Ein Sattelanpasser oder Sattler, der polstert.",
  "Change the plate in the head.": "Das Kopfeisen wechseln.",
  "A plate at hand makes the whole fit; the old one stays with the saddle as the way back.":
    "Mit einem vorrätigen Kopfeisen passt das Ganze; das alte bleibt als Rückweg beim Sattel.",
  "Change it, both edges home and screws snug on both sides, measure it as fitted, and decide on the ridden check.":
    "Wechseln, beide Kanten ganz eingesetzt, Schrauben auf beiden Seiten satt angezogen, eingebaut messen und nach der Prüfung beim Reiten entscheiden.",
  "A fitter or saddler who may, where the maker allows it.":
    "Ein Sattelanpasser oder Sattler, der es darf, wo der Hersteller es erlaubt.",
  "Change the inserts in the head.": "Die Einsätze im Kopf wechseln.",
  "Another position would make the whole fit, the same on both sides.":
    "Mit einer anderen Stellung, auf beiden Seiten gleich, würde das Ganze passen.",
  "Set both sides alike and locked, measure it as fitted, and decide on the ridden check.":
    "Beide Seiten gleich stellen und einrasten, eingebaut messen und nach der Prüfung beim Reiten entscheiden.",
  "Alter the head at the press, inside the saddle.": "Den Kopf an der Presse ändern, im Sattel.",
  "The whole fits afterwards, the change is small, and the tree may be taken as sound under its cover.":
    "Danach passt das Ganze, die Änderung ist klein, und der Baum darf unter seinem Bezug als in Ordnung gelten.",
  "Agree it with the owner for the worse case at once, alter in small measured passes, measure again after 24 hours, and ride.":
    "Mit dem Besitzer gleich für den schlechteren Fall vereinbaren, in kleinen gemessenen Gängen ändern, nach 24 Stunden wieder messen, reiten.",
  "A qualified saddler with a press.": "Ein qualifizierter Sattler mit Presse.",
  "Alter the head at the press, on the bare tree.": "Den Kopf an der Presse ändern, am bloßen Baum.",
  "The whole fits afterwards, and the tree was seen bare and sound, or has to be.":
    "Danach passt das Ganze, und der bloße Baum wurde angesehen und war in Ordnung, oder muss noch angesehen werden.",
  "Alter in small measured passes, look at it after each, measure again after 24 hours, build it up, and ride.":
    "In kleinen gemessenen Gängen ändern, nach jedem ansehen, nach 24 Stunden wieder messen, aufbauen, reiten.",
  "Strip it, look, then decide.": "Zerlegen, ansehen, dann entscheiden.",
  "What lies under the cover decides, and stripping can change the answer.":
    "Was unter dem Bezug liegt, entscheidet, und das Zerlegen kann die Antwort ändern.",
  "Ask the owner for the worse case at once, strip it, and answer again with what is seen.":
    "Den Besitzer gleich für den schlechteren Fall fragen, zerlegen und mit dem Gesehenen neu antworten.",
  "Set back the earlier change of the head.": "Die frühere Änderung des Kopfes zurücknehmen.",
  "The head fits best near as it was made.": "Der Kopf passt am besten nahe dem Maß ab Werk.",
  "Set it back in small measured passes or by the old plate, measure it again after 24 hours, and ride.":
    "In kleinen gemessenen Gängen oder mit dem alten Kopfeisen zurücksetzen, nach 24 Stunden wieder messen, reiten.",
  "A qualified saddler.": "Ein qualifizierter Sattler.",
  "The head is moved by heat, by the maker's people only.":
    "Der Kopf wird mit Wärme bewegt, nur von den Leuten des Herstellers.",
  "A head of this build takes heat and no pressure, and only in the maker's form.":
    "Ein Kopf dieser Bauart verträgt Wärme und keinen Druck, und nur in der Form des Herstellers.",
  "Send it to the maker's people with the readings and the template.":
    "Mit den Ablesungen und der Schablone an die Leute des Herstellers schicken.",
  "The maker's own people.": "Die Leute des Herstellers.",
  "Refer it to a colleague who may do it.": "An einen Kollegen geben, der es darf.",
  "The work is prepared here and done by somebody qualified and equipped for it.":
    "Die Arbeit wird hier vorbereitet und von jemandem gemacht, der dafür qualifiziert und ausgerüstet ist.",
  "Hand over the readings, the template and this sheet.":
    "Die Ablesungen, die Schablone und dieses Blatt mitgeben.",
  "A qualified colleague.": "Ein qualifizierter Kollege.",
  "Refer it to the maker.": "An den Hersteller geben.",
  "The warranty, the build or the tree's past makes this the maker's to do or to allow.":
    "Wegen der Gewährleistung, der Bauart oder der Geschichte des Baums ist es am Hersteller, das zu tun oder zu erlauben.",
  "Ask the maker, with the readings and the template.":
    "Den Hersteller fragen, mit den Ablesungen und der Schablone.",
  "The maker, or who the maker names.": "Der Hersteller, oder wen er nennt.",
  "This horse wants another saddle.": "Dieses Pferd braucht einen anderen Sattel.",
  "No head that this saddle can have makes the whole fit; the saddle may suit another horse if it is sound.":
    "Mit keinem Kopf, den dieser Sattel haben kann, passt das Ganze; der Sattel kann zu einem anderen Pferd passen, wenn er in Ordnung ist.",
  "Keep the template and the traces to look for one with.":
    "Schablone und Rückenkurven aufheben, um damit einen zu suchen.",
  "The owner, with the fitter.": "Der Besitzer, mit dem Sattelanpasser.",
  "This tree has had its share of altering.": "Dieser Baum ist oft genug geändert worden.",
  "The head that would fit lies beyond what this tree may still be moved.":
    "Der Kopf, der passen würde, liegt jenseits dessen, was dieser Baum noch bewegt werden darf.",
  "Leave the head, and look for another saddle or another tree.":
    "Den Kopf lassen und einen anderen Sattel oder Baum suchen.",
  "The owner, with the fitter; the maker for another tree.":
    "Der Besitzer, mit dem Sattelanpasser; für einen anderen Baum der Hersteller.",
  "A reading is missing that decides.": "Eine Ablesung fehlt, die entscheidet.",
  "What is known leads to more than one answer.": "Was bekannt ist, führt zu mehr als einer Antwort.",
  "Take the reading named below and ask again.": "Die unten genannte Ablesung nehmen und neu fragen.",
  "Have horse and saddle looked at again in six to eight weeks, and ask a vet or physiotherapist about the hollow.":
    "Pferd und Sattel in sechs bis acht Wochen wieder ansehen lassen und wegen der Kuhle Tierarzt oder Physiotherapeut fragen.",
  "the {temper} trace at the {station}, horse {n}": "Kurve {station}, {temper}, Pferd {n}",
  "Read next: {place}.": "Als Nächstes ablesen: {place}.",
};
