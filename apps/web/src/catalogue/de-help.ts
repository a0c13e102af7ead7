import type { Catalogue } from "./en.ts";

export const DE_HELP: Catalogue["help"] = {
  title: "Hilfe",
  problem: {
    title: "Etwas ging schief",
    says: "Eine Problemdatei hilft dem, der sich um Treewright kümmert, den Fehler zu finden. Sie nennt Versionen, die Art des Browsers, den Bildschirm, Anzahlen und die letzten 200 Handlungen nach Art und Ort, etwa „entered saddle.head.spreadTips“.",
    without:
      "Sie enthält keine Ablesung, keinen Namen, keine getippten Worte, keine Kennung eines Menschen und keine Zeit genauer als Minuten. Lesen Sie sie vor dem Sichern: Was Sie sehen, ist alles.",
    make: "Problemdatei anlegen",
    whole: "Die ganze Problemdatei",
    save: "Diese Datei sichern",
    saved: "Bei Ihren Downloads gesichert. Sie wurde niemandem geschickt: Das liegt bei Ihnen.",
    tell: "Um es jemandem zu sagen: Schicken Sie die Datei, und mit eigenen Worten, was Sie taten und was Sie erwartet hatten, an den Menschen, der Treewright für Sie eingerichtet hat. Das Programm kennt keine Adresse und schickt von selbst nichts.",
  },
  others: {
    title: "Was andere geschrieben haben",
    says: "Teile dieser App sind die Arbeit anderer, die sie nutzen lassen: Unter welcher Lizenz, steht in einer Liste. Sie ist auch ohne Netz da.",
    look: "Hinweise ansehen",
  },
  access: {
    title: "Können alle es bedienen?",
    aim: "Das Ziel ist Stufe AA der Richtlinien WCAG 2.2, einer Empfehlung des W3C. Dass es erreicht ist, wird nicht behauptet: Geprüft wurde nur, was hier steht, von Programmen und durch Ansehen von Bildern der Seiten.",
    testedTitle: "Was geprüft wurde, und wie",
    tested: {
      axe: "Jeder Schritt eines Besuchs, das Zurufen, die erste Seite, Ihre Daten und diese Seite, mit axe-core in Chromium: nichts, was dessen Regeln für WCAG 2.2 A und AA finden. Solche Regeln finden einen Teil der Hindernisse, nicht alle.",
      keys: "Ein Besuch, nur mit der Tastatur begonnen, über mehrere Schritte gefüllt und beendet, in Chromium bei drei Größen des Fensters. Wo immer nachgesehen wurde, hatte etwas den Fokus, war zu sehen und hatte eine Linie um sich.",
      reflow:
        "320 px breit, wie ein Bildschirm von 1280 px auf 400 % vergrößert: Auf den Seiten eines Besuchs, der noch gefüllt wird, muss nichts seitwärts bewegt werden außer der Reihe der Schritte, Zeichnungen und Tabellen.",
      forced:
        "Erzwungene Farben, wie eine Einstellung für hohen Kontrast sie macht: Jede Taste behält einen Rand oder Grund, der zu sehen ist, und was gewählt ist, zeigt mehr als Farbe.",
      names:
        "Namen, Rollen und Zustände, wie Chromium sie einem Vorleseprogramm gibt, für die Frage, die gerade gestellt ist, und die Zifferntasten.",
      motion: "Wo um weniger Bewegung gebeten ist, bewegt sich nichts.",
    },
    failsTitle: "Was bekanntlich nicht geht",
    fails: {
      drawings:
        "Zeichnungen sind zu sehen und nicht zu hören. Ihre Zahlen stehen daneben in Worten und Tabellen, aber nicht jede Linie.",
      german:
        "Auf Deutsch sind jede Seite, auch die für den Besitzer, der Brief und die Vereinbarung deutsch, außer der Werkbank für eine Datei; das Blatt und die Schablone, mit denen der Sattelanpasser arbeitet, sind noch englisch. Noch hat kein deutscher Sattelanpasser etwas davon gelesen.",
      bench:
        "„Eine Falldatei für sich bearbeiten“ ist für den Schreibtisch gemacht und wurde nicht mit erzwungenen Farben geprüft.",
      paper:
        "Die PDFs sind nur als Absätze ausgezeichnet: Überschriften und Tabellen sind nicht als solche gekennzeichnet, Zeichnungen nicht beschrieben.",
    },
    notTestedTitle: "Was nicht geprüft wurde",
    notTested: {
      readers: "Kein wirkliches Vorleseprogramm: weder NVDA, JAWS, VoiceOver, TalkBack noch Orca.",
      phones: "Kein iPhone oder iPad, kein Android-Telefon, kein Browser außer Chromium unter Linux.",
      people:
        "Kein Mensch mit einer Behinderung hat es ausprobiert. Kein Schalter, keine Sprachsteuerung, keine Lupe.",
    },
    tellTitle: "Wie Sie es uns sagen",
    tell: "Was sich nicht bedienen lässt, ist ein Fehler wie jeder andere. Legen Sie auf der Seite „Hilfe“ der App eine Problemdatei an und schicken Sie sie, mit dem, was nicht ging und was Sie benutzen, an den Menschen, der Treewright für Sie eingerichtet hat.",
  },
};
