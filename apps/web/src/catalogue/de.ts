import { DE_ANSWERS, DE_BENCH, DE_PAPER } from "./de-answers.ts";
import { DE_HELP } from "./de-help.ts";
import { NOTE } from "./de-note.ts";
import type { Catalogue } from "./en.ts";

/** German. Not yet read by a German fitter. */
export const DE: Catalogue = {
  name: "Deutsch",
  note: NOTE,
  skip: "Zum Besuch",
  looks: { title: "Licht", "as the device": "wie das Gerät", light: "hell", dark: "dunkel", sun: "Sonne" },
  first: {
    title: "Besuche",
    begin: "Besuch beginnen",
    horse: "Pferd",
    yard: "Stall",
    goOn: "Weiter",
    open: "Öffnen",
    unfinished: "Nicht beendet",
    next: "Als Nächstes",
    before: "Frühere",
    lastTime: "Letztes Mal",
    nothingYet: "Noch kein Besuch. Hier steht die Zeichnung eines Rückens, sobald einer abgenommen ist.",
    horseName: "Name des Pferdes",
    minutes: (count) => `${count} min`,
    due: (weeks) => `nächste Nachschau in ${weeks} Wochen`,
    find: "Pferd, Sattel oder Stall suchen",
    found: (count) => (count === 1 ? "1 Besuch" : `${count} Besuche`),
    owner: "Die Frage des Besitzers",
    caseFile: "Eine Falldatei für sich bearbeiten",
    flagged: "Keine Arbeit am Sattel: zuerst zum Tierarzt",
    demo: "Diese Praxis ist erfunden: kein Pferd, kein Mensch und keine Ablesung darin ist echt. Eigene beginnen: npm start -- --fresh",
    invented: "erfundenes Beispiel",
    language: "Sprache, Language",
    saddle: "Sattel",
  },
  saved: {
    here: "Auf diesem Gerät gesichert.",
    copied: (words) => `Zuletzt anderswohin kopiert: ${words}.`,
    never: "Noch nie anderswohin kopiert.",
    notCopied: (count) =>
      count === 0
        ? "Alle Besuche sind kopiert."
        : count === 1
          ? "1 Besuch ist noch nicht kopiert."
          : `${count} Besuche sind noch nicht kopiert.`,
    full: "Auf diesem Gerät ist kein Platz mehr: Der letzte Eintrag wurde nicht gesichert. Kopieren Sie Ihre Daten, dann schaffen Sie Platz.",
    newer: "Ein neueres Treewright hat diese Aufzeichnungen geschrieben. Sie bleiben, wie sie sind.",
    closed: "Ein anderer Tab hat die Aufzeichnungen. Hier wird nichts mehr gesichert: dort weitermachen.",
    other: "Der letzte Eintrag konnte nicht gesichert werden. Von früher ist nichts verloren.",
    today: "heute",
    daysAgo: (days) => (days === 1 ? "gestern" : `vor ${days} Tagen`),
  },
  offline: {
    "not-here": "Diese Seite ist nicht sicher, deshalb ist ohne Netz nichts bereit.",
    "getting-ready": "Wird für die Arbeit ohne Netz bereit gemacht.",
    ready: "Ohne Netz bereit: Besuche, Antworten und Papier.",
    take: "Eine neue Version ist bereit: mit ihr neu beginnen",
  },
  visit: {
    zones: (horse) => `Was an ${horse} gefühlt wurde, von oben gesehen, der Kopf oben`,
    zone: (zone, side, grade) =>
      `${zone}, ${side}: ${grade === undefined ? "nicht abgetastet" : `Grad ${grade}`}`,
    readOnceMore: "; noch einmal",
    readAgain: (count, mean, least, most) => `${count} Ablesungen: Mittel ${mean}, von ${least} bis ${most}.`,
    drawAgain: "Noch einmal abnehmen",
    drawnAgain: (drawings, spread) =>
      `${drawings}-mal abgenommen; eine Abnahme streut um ${spread} (Standardabweichung). Benutzt wird das Mittel.`,
    drawnApart:
      "Diese Abnahmen lassen sich nicht zusammen benutzen: Eine kreuzt die Mittellinie nicht oder hat eine andere Größe. Löschen und neu abnehmen.",
    nextFigure: "Leerzeichen, zur nächsten Zahl",
    nextPoint: "zum nächsten Punkt",
    back: "Alle Besuche",
    steps: "Schritte des Besuchs",
    said: (said, all) => `${said} von ${all}`,
    undo: "Zurücknehmen",
    erased: "gelöscht",
    undone: "Zurückgenommen.",
    next: "Weiter",
    enter: "Eintragen",
    clear: "Leeren",
    open: "nicht gesagt",
    unfinished: "getippt, nicht eingetragen",
    back1: "Letztes Zeichen löschen",
    minus: "Minus",
    stop: "Dezimalpunkt",
    asked: "Die Ablesung in der Einheit eintippen, in der sie abgelesen wurde.",
    words: "Worte",
    pairs: "Quer und hoch in Paaren, getrennt durch „;“. Für Zoll mit in beginnen.",
    refused: (read, allowed) => `Gelesen: ${read}. Erlaubt: ${allowed}.`,
    differ: "Zwei haben hier Verschiedenes gesagt, ohne voneinander zu wissen. Sagen Sie, was gilt.",
    callOut: "Zurufen",
    callOutEnd: "Zurufen beenden",
    heard: (said, place) => `Gehört: ${said}, ${place}`,
    lastTime: "Letztes Mal",
    nextVisit: "Nächsten Besuch dieses Pferdes beginnen",
    whatToDo: "Was zu tun ist",
    agreed: "Vereinbart",
    handOver: "Übergabe",
    finish: "Besuch beenden",
    finished: "Dieser Besuch ist beendet. Was jetzt dazukommt, kommt zu einem beendeten Besuch.",
    done: "Was gemacht wurde, in einer Zeile",
    nextInWeeks: "Wochen bis zur nächsten Nachschau",
    work: "Was vereinbart wurde",
    risks: "Gefahren, die genannt wurden",
    worse: "Der schlechtere Fall, und was dann geschieht",
    limit: "Die Grenze, die nicht überschritten wird",
    notThere: "Unter dieser Adresse liegt auf diesem Gerät kein Besuch.",
    problems: "Der Besuch lässt sich noch nicht ausrechnen:",
    waiting: "Die Zeichnung wird vorbereitet.",
    yes: "ja",
    no: "nein",
  },
  photo: {
    title: "Fotos",
    add: "Foto",
    of: (shows) => `Foto: ${shows}`,
    nth: (count, shows) => `Foto ${count}: ${shows}`,
    view: "Was die Kamera sieht",
    noCamera:
      "In dieser Seite geht keine Kamera: eine Datei wählen oder das Foto mit der Kamera des Telefons aufnehmen.",
    noFaces: "Fotos bleiben, wie sie sind: keine Menschen mit aufnehmen.",
    kept: (count) => (count === 1 ? "1 Foto ist gespeichert." : `${count} Fotos sind gespeichert.`),
    take: "Aufnehmen",
    done: "Kamera schließen",
    fromFile: "Datei wählen",
    withdraw: "Dieses Foto zurückziehen",
    erase: "Dieses Foto löschen",
    eraseSure:
      "Dieses Foto für immer von diesem Gerät löschen? Dass es eines gab, bleibt aufgezeichnet; eine ältere Kopie bringt es nicht zurück.",
    missing: "Dieses Foto ist nicht auf diesem Gerät.",
    waiting: "Foto",
    photo: "Foto",
  },
  stepDrawing: {
    title: "Bisher abgelesen, an der vorderen Stelle, von hinten gesehen",
    bar: (mm) => `der Balken ist ${mm} mm`,
    back: "Volle Linie: der Rücken.",
    last: "Gestrichelte Linie: der Rücken beim letzten Mal.",
    headOver: (clearance) => `Gepunktete Linie: der Kopf innen, ${clearance} über dem Rücken, wie abgelesen.`,
    headAlone: "Gepunktete Linie: der Kopf innen, für sich.",
    noClearance: "Der Kopf ist nicht über den Rücken gezeichnet: Sein Freiraum wurde nicht abgelesen.",
  },
  sendOn: {
    key: (what) => `Weitergeben: ${what}`,
    sent: "An die andere App gegeben.",
    notSent:
      "Dieses Gerät hat es nicht weitergegeben. Die Datei bleibt, wo sie war; noch einmal versuchen oder von dort weitergeben.",
  },
  caseOut: {
    title: "Die Messungen als Falldatei",
    says: "Jede Messung dieses Besuchs, wie sie getippt wurde, für eine Kollegin oder zum Aufheben. Sie enthält Namen in Klartext. Wer sie bekommt, beginnt damit einen eigenen Besuch.",
    keep: "Falldatei",
    file: "Falldatei",
  },
  takenIn: {
    title: "Von einer anderen App übergeben",
    looking: "Es wird nachgesehen, was übergeben wurde.",
    waits: (count) =>
      count === 0
        ? "Hier wartet nichts."
        : count === 1
          ? "1 Datei wartet. Sie bleibt hier, bis gesagt ist, wohin sie gehört."
          : `${count} Dateien warten. Sie bleiben hier, bis gesagt ist, wohin sie gehören.`,
    notLaidBy:
      "Was übergeben wurde, konnte hier nicht aufgehoben werden. Es ist noch dort, wo es herkam: Platz machen und noch einmal übergeben.",
    letGo: "Nicht aufheben",
    caseSays: "Eine Falldatei beginnt einen eigenen Besuch. Was hier ist, bleibt, wie es ist.",
    caseFile: "Eine Falldatei wählen",
    begin: "Damit einen Besuch beginnen",
    preview: "Das Foto, das übergeben wurde",
    whichVisit: "Es gehört zum Besuch von",
    whatOf: "Es zeigt",
    choose: "Wählen, was es zeigt",
    keepPhoto: "Dieses Foto aufheben",
    go: (count) =>
      count === 1
        ? "1 Datei einer anderen App wartet: sagen, wohin sie gehört"
        : `${count} Dateien anderer Apps warten: sagen, wohin sie gehören`,
  },
  agreement: {
    title: "Der vereinbarte Text",
    mark: "Merkmal dieses Textes:",
    changed: "Die Vereinbarung hat sich seit der Unterschrift geändert: sie muss neu unterschrieben werden.",
    signedBy: (name, as) => `Dieser Text ist unterschrieben von ${name}, ${as}.`,
    by: "Name der Person, die unterschreibt",
    signsAs: "Unterschreibt als",
    as: {
      owner: "rechtmäßiger Eigentümer des Sattels",
      "for-owner": "jemand, der für den Eigentümer handelt",
    },
    field: "Unterschrift, mit Finger oder Stift gezeichnet",
    drawn: "Die Unterschrift",
    again: "Neu zeichnen",
    nameIsEnough: "Wer nicht zeichnen kann, unterschreibt mit dem Namen allein.",
    sign: "Diesen Text unterschreiben",
    print: "Vereinbarung als PDF",
    printed: "Die Vereinbarung wurde auf diesem Gerät erstellt.",
    notPrinted: (why) => `Die Vereinbarung wurde nicht erstellt: ${why}.`,
  },
  horse: {
    title: "Dieses Pferd",
    of: (name) => `${name} über die Besuche`,
    visits: (count) => (count === 1 ? "1 Besuch" : `${count} Besuche`),
    nothingNoted: "Beendet; in einer Zeile wurde nichts vermerkt.",
    unfinished: "Nicht beendet",
    answered: (day) => `Was am ${day} geantwortet wurde`,
    notAnswered: "noch nicht beantwortet",
    about: { horse: "Das Pferd", saddle: "Der Sattel", work: "Die Arbeit" },
    noTrace: "Noch keine kalte vordere Abnahme: hier stehen die Breiten des Rückens, sobald eine da ist.",
    widths: "Breite des Rückens an der vorderen Station, kalt",
    atDepth: (mm) => `${mm} mm unter dem höchsten Punkt`,
    width: (mm, u) => `${mm} mm ± ${u} mm`,
    changed: {
      wider: (mm) => `${mm} mm breiter als bei der Abnahme davor.`,
      narrower: (mm) => `${mm} mm schmaler als bei der Abnahme davor.`,
      "cannot-tell": (mm) => `${mm} mm auseinander, innerhalb der Unsicherheit beider: nicht zu sagen.`,
    },
    backs: "Vordere Abnahmen übereinander, von hinten gesehen",
    near: "near (links)",
    off: "off (rechts)",
    bar: (mm) => `der Balken ist ${mm} mm`,
    lineNow: (day) => `Volle Linie: ${day}`,
    lineBefore: (day) => `Gestrichelte Linie: ${day}`,
    alterations: "Frühere Änderungen am Kopf dieses Sattels",
    noAlterations: "Es wurde keine genannt.",
  },
  data: {
    title: "Ihre Daten",
    says: "Alles Aufgezeichnete liegt nur auf diesem Gerät. Ein Browser kann es löschen: Kopieren Sie es anderswohin.",
    counts: (entries, photos) => `${entries} Einträge, ${photos} Fotos.`,
    persisted: "Der Browser wurde gebeten, diese Daten zu behalten, und hat zugestimmt.",
    notPersisted:
      "Der Browser hat nicht zugesagt, diese Daten zu behalten: App installieren und oft kopieren.",
    people: "Personen",
    peopleSays:
      "Namen liegen getrennt von dem, was aufgezeichnet ist. Löschen nimmt den Namen für immer von diesem Gerät; frühere Kopien enthalten ihn noch, ebenso Worte, die anderswo frei getippt wurden.",
    findPerson: "Person suchen",
    morePeople: (shown, of) =>
      `${shown} von ${of} Namen stehen hier; für die anderen ein paar Buchstaben tippen.`,
    erase: (name) => `${name} löschen`,
    eraseSure: (name) => `${name} für immer von diesem Gerät löschen?`,
    eraseYes: "Für immer löschen",
    eraseNo: "Behalten",
    erasedNow: "Gelöscht. Das Aufgezeichnete bleibt, ohne den Namen.",
    keep: "Den Browser bitten, sie zu behalten",
    space: (usedMB, mostMB) => `${usedMB} MB von etwa ${mostMB} MB belegt.`,
  },
  units: {
    lengths: "Längen",
    masses: "Gewichte",
    pairs:
      "Paare, getrennt durch „;“, etwa -3.5 -2.4; -3.1 -2; … in Zoll; für mm oder cm mit mm oder cm beginnen",
  },
  scale: {
    title: "Auf diesem Bildschirm, 1 : 1",
    open: "Die Schablone an den Baum halten: auf diesem Bildschirm, 1 : 1",
    back: "Zu den Antworten",
    waiting: "Der gewünschte Kopf wird ausgerechnet.",
    none: "Hier gibt es keine Schablone. Sie braucht einen Kopf, eine vordere Abnahme und ein Pferd, an dem nichts gefunden wurde.",
    cannot:
      "Was ein Bildschirm nicht versprechen kann: Zwischen Linie und Baum liegt Glas, also gerade und mit einem Auge schauen; ein anderer Bildschirm hat einen anderen Maßstab. Danach wird geschaut und verglichen. Geschnitten wird nach der Schablone auf Papier, deren Balken geprüft sind.",
    why: "Ein Browser weiß nicht, wie groß seine Pixel sind. Eine Bankkarte sagt es ihm: 85,60 × 53,98 mm (ISO/IEC 7810, ID-1).",
    lost: {
      zoom: "Die Seite wurde gezoomt, der Maßstab gilt nicht mehr. Die Karte neu anlegen.",
      screen:
        "Dieser Bildschirm oder sein Zoom ist nicht der, auf dem die Karte angelegt war. Die Karte neu anlegen.",
    },
    zoomed:
      "Die Seite ist mit zwei Fingern gezoomt. Erst wieder ganz herauszoomen: Bis dahin lässt sich nichts anlegen.",
    steps: { long: "1 von 2: die lange Seite der Karte", short: "2 von 2: die kurze Seite der Karte" },
    layUp: {
      long: "Die Karte flach auf den Bildschirm legen, die lange Seite aufrecht. Eine Linie an ihre obere Kante schieben, eine an ihre untere, neben den runden Ecken.",
      short:
        "Die Karte liegen lassen. Eine Linie an ihre linke Kante schieben, eine an ihre rechte, neben den runden Ecken.",
    },
    layAcross: {
      long: "Die Karte flach auf den Bildschirm legen, die lange Seite waagrecht. Eine Linie an ihre linke Kante schieben, eine an ihre rechte, neben den runden Ecken.",
      short:
        "Die Karte liegen lassen. Eine Linie an ihre obere Kante schieben, eine an ihre untere, neben den runden Ecken.",
    },
    lines: { upper: "Obere Linie", lower: "Untere Linie", left: "Linke Linie", right: "Rechte Linie" },
    ways: { up: "hinauf", down: "hinunter", left: "nach links", right: "nach rechts" },
    between: "Zwischen den Linien, px",
    range: (least, most) => `${least} bis ${most} px`,
    lies: { long: "Lange Seite passt", short: "Kurze Seite passt" },
    sideRead: {
      long: (px, perMm) => `Lange Seite: ${px} px gelesen, ${perMm} px je mm.`,
      short: (px, perMm) => `Kurze Seite: ${px} px gelesen, ${perMm} px je mm.`,
    },
    apart: (apart, allowed) =>
      `Die beiden Seiten weichen um ${apart} % voneinander ab. Erlaubt: ${allowed} %, das sind vier Linien, die auf je 0,5 mm an ihrer Kante liegen. Mindestens eine liegt nicht an ihrer Kante: beide Seiten neu anlegen.`,
    noScreen:
      "Einen solchen Maßstab hat kein Bildschirm. Erlaubt: 1 bis 16 px je mm. Beide Seiten neu anlegen.",
    again: "Die Karte neu anlegen",
    moved:
      "Auf einem anderen Bildschirm, oder die Seite gezoomt? Die Karte neu anlegen: Nicht jeder Browser sagt es.",
    template: "Der gewünschte Kopf",
    faces: { inside: "Innenseite des Kopfs.", outside: "Außenseite des Kopfs." },
    spread: (figure) => `Weite an seinen Enden: ${figure}.`,
    doubt: (width, doubt) =>
      `Der Kopf ist über alles ${width} mm breit. Auf diese Breite kann der Maßstab dieses Bildschirms um ± ${doubt} mm falsch sein (95 von 100); das Anlegen nach Augenmaß kommt dazu.`,
    barSays: (mm) => `${mm} mm. Mit einem Stahlmaß prüfen.`,
    drawn: (what) => `${what}, in wahrer Größe, von hinten gesehen, die linke Seite links`,
    seen: "von hinten gesehen",
    ends: { near: "links", off: "rechts", middle: "zur Mitte" },
    halves: { whole: "Ganz", near: "Linke Hälfte", off: "Rechte Hälfte" },
    part: (at, of) => `Teil ${at} von ${of}`,
    down: (at, of) => `${at} von ${of} von oben`,
    across: (at, of) => `${at} von ${of} von links`,
    partBefore: "Teil davor",
    partNext: "Nächster Teil",
    tooSmall: "Dieses Fenster ist für jeden Teil in wahrer Größe zu klein.",
    series: {
      wanted: "gewünscht",
      headToday: "Kopf heute",
      traceToday: "Rücken heute",
      traceLast: "Rücken letztes Mal",
    },
    traces: "Rücken über Rücken vom letzten Mal, unter dem Kopf",
    tracesSay:
      "Beide Abnahmen sind am höchsten Punkt des Rückens aufeinandergelegt: Wo jede am Pferd lag, ist hier nicht zu sehen.",
    headAsRead: "Der Kopf steht mit dem Abstand, der abgelesen wurde.",
    headAsComputed:
      "Der Abstand des Kopfs wurde nicht abgelesen: Er steht dort, wo er nach der Rechnung aufliegt.",
    noLast: "Von einem früheren Besuch gibt es keine vordere Abnahme.",
    warm: "warm",
  },
  copy: {
    title: "Alles kopieren",
    says: "Eine ZIP-Datei mit allem Aufgezeichneten, Fotos, Briefen und Blättern, Tabellen für eine Tabellenrechnung und einer Seite, die sich ohne diese App öffnet. Sie enthält Namen im Klartext: Verwahren Sie sie wie das Buch, das sie ersetzt.",
    withPapers:
      "Mit dem, was unterschrieben wurde, und Brief und Blatt jedes beendeten Besuchs. Sie werden neu ausgerechnet, das kann Minuten dauern.",
    all: "Alles in eine Datei kopieren",
    goOn: "Ohne die übrigen Papiere weitermachen",
    making: (number, of, horse) => `Brief und Blatt zu Besuch ${number} von ${of} entstehen: ${horse}.`,
    packing: (visits, of) => `Die Datei entsteht: ${visits} von ${of} Besuchen.`,
    done: (kB, papers, without) =>
      `Die Datei wurde dem Browser übergeben: ${kB} kB, mit Papieren zu ${papers} Besuchen${without === 0 ? "" : `; ${without} haben keine, ihre Seite sagt warum`}. Sehen Sie nach, ob sie liegt, wo Sie sie verwahren.`,
    failed: (why) => `Es ging nicht, und hier wurde nichts geändert: ${why}.`,
    waits: (days) => `Etwas hier ist seit ${days} Tagen nicht kopiert.`,
    waitsWhy:
      "Dieses Gerät kann verloren gehen, und ein Browser kann löschen, was er verwahrt. Eine Woche ist unsere eigene Grenze: so viel, wie man noch einmal aufschreiben würde.",
    goCopy: "Jetzt kopieren",
    bringTitle: "Eine Kopie einlesen",
    bringSays:
      "Eine ZIP-Datei, die hier oder auf einem anderen Gerät kopiert wurde, oder die Aufzeichnungen daraus. Was hier ist, bleibt; was gleich ist, wird einmal gehalten.",
    bringFile: "Eine Kopie wählen",
    reading: "Die Kopie wird gelesen.",
    bringing: {
      "looked-at": (number, of) => `${number} von ${of} Einträgen durchgesehen; noch ist nichts behalten.`,
      kept: (number, of) => `${number} von ${of} Einträgen sind behalten.`,
      listed: (number, of) => `${number} von ${of} Besuchen stehen in der Liste.`,
    },
    brokenOff:
      "Eine Kopie wurde hereingeholt und kam nicht zu Ende. Holen Sie sie noch einmal herein: Was hier ist, bleibt, und Gleiches wird einmal behalten.",
    brought: (entries, photos, notBeside) =>
      `${entries} Einträge wurden eingelesen, und ${photos} Fotos.${notBeside === 0 ? "" : ` ${notBeside} Fotos sind genannt und kamen nicht mit der Datei.`}`,
    tableTitle: "Pferde und Besitzer aus einer Tabelle",
    tableSays:
      "Eine CSV-Datei in UTF-8, deren erste Zeile die Spalten nennt: Pferd, Besitzer, Stall, Reiter, Sattel, Tag, gefragt. Jede Zeile beginnt einen Besuch. Sie sehen zuerst, was aus jeder würde.",
    tableFile: "Eine Tabelle wählen",
    rowsWould: (taken, refused) =>
      `${taken} Zeilen würden je einen Besuch beginnen; ${refused} werden abgelehnt. Noch ist nichts geschrieben.`,
    notTaken: (names) => `Spalten, die nicht genommen werden: ${names}.`,
    row: (row) => `Zeile ${row}`,
    rowBecomes: (people) =>
      people ? "Ein Besuch; Namen von Menschen liegen getrennt und lassen sich löschen." : "Ein Besuch.",
    rowNot: "Nicht genommen.",
    rowsBegin: (count) => (count === 1 ? "Diesen Besuch beginnen" : `Diese ${count} Besuche beginnen`),
    rowsLeave: "Nichts schreiben",
    rowsBegun: (begun, of) =>
      begun === of
        ? `${begun} Besuche wurden begonnen.`
        : `${begun} von ${of} Besuchen wurden begonnen; die anderen wurden nicht gesichert.`,
    room: "Platz auf diesem Gerät",
    photosRefused:
      "Der Platz ist knapp: Kein neues Foto wird gesichert, damit Ablesungen es noch werden. Kopieren Sie Ihre Daten, dann schaffen Sie Platz.",
  },
  help: DE_HELP,
  answers: DE_ANSWERS,
  bench: DE_BENCH,
  paper: DE_PAPER,
};
