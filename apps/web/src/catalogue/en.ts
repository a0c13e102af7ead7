import { EN_ANSWERS, EN_BENCH, EN_PAPER } from "./en-answers.ts";
import { EN_HELP } from "./en-help.ts";

/** Every word of the visit's screens that is not of the trade's schema. The other languages have exactly these. */
export const EN = {
  name: "English",
  note: "",
  skip: "To the visit",
  looks: { title: "Light", "as the device": "as the device", light: "light", dark: "dark", sun: "sun" },
  first: {
    title: "Visits",
    begin: "Begin a visit",
    horse: "Horse",
    yard: "Yard",
    goOn: "Go on",
    open: "Open",
    unfinished: "Unfinished",
    next: "Next",
    before: "Before",
    lastTime: "Last time",
    nothingYet: "No visit yet. The drawing of a back will stand here once one is traced.",
    horseName: "Name of the horse",
    minutes: (count: number) => `${count} min`,
    due: (weeks: number) => `next look in ${weeks} weeks`,
    find: "Find a horse, saddle or yard",
    found: (count: number) => (count === 1 ? "1 visit" : `${count} visits`),
    owner: "The owner’s question",
    caseFile: "Work on a case file by itself",
    flagged: "Not to be worked on: see the vet first",
    demo: "This is an invented practice: no horse, person or reading in it is real. To begin your own: npm start -- --fresh",
    invented: "invented example",
    language: "Language, Sprache",
    saddle: "saddle",
  },
  saved: {
    here: "Saved on this device.",
    copied: (words: string) => `Last copied elsewhere ${words}.`,
    never: "Never copied elsewhere.",
    notCopied: (count: number) =>
      count === 0
        ? "All visits are copied."
        : count === 1
          ? "1 visit is not yet copied."
          : `${count} visits are not yet copied.`,
    full: "This device has no room left: the last entry was not kept. Copy your data, then make room.",
    newer: "A newer Treewright wrote these records. They were left as they are.",
    closed: "Another tab has the records. Nothing more is kept here: go on there.",
    other: "The last entry could not be kept. Nothing that was kept before is lost.",
    today: "today",
    daysAgo: (days: number) => (days === 1 ? "yesterday" : `${days} days ago`),
  },
  offline: {
    "not-here": "This page is not secure, so nothing is ready without signal.",
    "getting-ready": "Being made ready to work without signal.",
    ready: "Ready without signal: visits, answers and paper.",
    take: "A new version is ready: begin anew with it",
  },
  visit: {
    zones: (horse: string) => `What was felt on ${horse}, seen from above, the head up`,
    zone: (zone: string, side: string, grade: number | undefined) =>
      `${zone}, ${side}: ${grade === undefined ? "not felt" : `grade ${grade}`}`,
    readOnceMore: "; once more",
    readAgain: (count: number, mean: string, least: string, most: string) =>
      `${count} readings: mean ${mean}, from ${least} to ${most}.`,
    drawAgain: "Draw it again",
    drawnAgain: (drawings: number, spread: string) =>
      `Drawn ${drawings} times; a drawing strays by ${spread} (standard deviation). Their mean is used.`,
    drawnApart:
      "These drawings cannot be used together: one does not cross the midline, or is of another size. Clear them and draw again.",
    nextFigure: "space, to the next figure",
    nextPoint: "to the next point",
    back: "All visits",
    steps: "Steps of the visit",
    said: (said: number, all: number) => `${said} of ${all}`,
    undo: "Undo",
    erased: "erased",
    undone: "Taken back.",
    next: "Next",
    enter: "Enter",
    clear: "Clear",
    open: "not said",
    unfinished: "typed, not entered",
    back1: "Delete the last sign",
    minus: "Minus",
    stop: "Point",
    asked: "Type the reading in the unit it was read in.",
    words: "Words",
    pairs: "Across and up in pairs, parted by “;”. For inches begin with in.",
    refused: (read: string, allowed: string) => `Read ${read}. Allowed: ${allowed}.`,
    differ: "Two people said different things here without having seen each other. Say which stands.",
    callOut: "Call-out",
    callOutEnd: "End the call-out",
    heard: (said: string, place: string) => `Heard: ${said}, ${place}`,
    lastTime: "Last time",
    nextVisit: "Begin the next visit of this horse",
    whatToDo: "What to do",
    agreed: "Agreed",
    handOver: "Hand-over",
    finish: "Finish the visit",
    finished: "This visit is finished. What is added now is added to a finished visit.",
    done: "What was done, in one line",
    nextInWeeks: "Weeks until the next look",
    work: "What was agreed",
    risks: "Risks that were told",
    worse: "The worse case, and what is done then",
    limit: "The limit that is not passed",
    notThere: "There is no visit at this address on this device.",
    problems: "The visit cannot be worked out yet:",
    waiting: "The drawing is being made ready.",
    yes: "yes",
    no: "no",
  },
  photo: {
    title: "Photos",
    add: "Photo",
    of: (shows: string) => `Photo: ${shows}`,
    nth: (count: number, shows: string) => `Photo ${count}: ${shows}`,
    view: "What the camera sees",
    noCamera:
      "No camera can be used in this page: choose a file, or take the photo with the phone’s own camera.",
    noFaces: "Photos are kept as they are: leave people out of them.",
    kept: (count: number) => (count === 1 ? "1 photo is kept." : `${count} photos are kept.`),
    take: "Take it",
    done: "Close the camera",
    fromFile: "Choose a file",
    withdraw: "Withdraw this photo",
    erase: "Erase this photo",
    eraseSure:
      "Erase this photo from this device for good? That there was one stays recorded; an older copy does not bring it back.",
    missing: "This photo is not on this device.",
    waiting: "Photo",
    photo: "Photo",
  },
  stepDrawing: {
    title: "As read so far, at the front station, seen from behind",
    bar: (mm: number) => `the bar is ${mm} mm`,
    back: "Full line: the back.",
    last: "Dashed line: the back last time.",
    headOver: (clearance: string) =>
      `Dotted line: the inside of the head, ${clearance} over the back as it was read.`,
    headAlone: "Dotted line: the inside of the head, by itself.",
    noClearance: "The head is not drawn over the back: its clearance was not read.",
  },
  sendOn: {
    key: (what: string) => `Send on: ${what}`,
    sent: "Handed to the other app.",
    notSent: "This device did not send it. The file is kept where it was; try again, or send it from there.",
  },
  caseOut: {
    title: "The readings as a case file",
    says: "Every reading of this visit as it was typed, for a colleague or for keeping. It holds names in plain text. Who gets it begins a visit of their own from it.",
    keep: "Case file",
    file: "case file",
  },
  takenIn: {
    title: "Handed over by another app",
    looking: "Looking for what was handed over.",
    waits: (count: number) =>
      count === 0
        ? "Nothing waits here."
        : count === 1
          ? "1 file waits. It is kept here until you say where it belongs."
          : `${count} files wait. They are kept here until you say where they belong.`,
    notLaidBy:
      "What was handed over could not be kept here. It is still where it came from: make room, then hand it over again.",
    letGo: "Do not keep it",
    caseSays: "A case file begins a visit of its own. What is here stays as it is.",
    caseFile: "Choose a case file",
    begin: "Begin a visit from it",
    preview: "The photo that was handed over",
    whichVisit: "It belongs to the visit of",
    whatOf: "It shows",
    choose: "Choose what it shows",
    keepPhoto: "Keep this photo",
    go: (count: number) =>
      count === 1
        ? "1 file of another app waits: say where it belongs"
        : `${count} files of other apps wait: say where they belong`,
  },
  agreement: {
    title: "The text that is agreed",
    mark: "Mark of this text:",
    changed: "What is agreed has changed since it was signed: it has to be signed anew.",
    signedBy: (name: string, as: string) => `Signed over this text by ${name}, ${as}.`,
    by: "Name of who signs",
    signsAs: "Signs as",
    as: { owner: "legal owner of the saddle", "for-owner": "somebody who acts for the owner" },
    field: "Signature, drawn by a finger or a pen",
    drawn: "The signature",
    again: "Draw it again",
    nameIsEnough: "Who cannot draw signs by the name alone.",
    sign: "Sign this text",
    print: "Agreement as PDF",
    printed: "The agreement was made on this device.",
    notPrinted: (why: string) => `The agreement was not made: ${why}.`,
  },
  horse: {
    title: "This horse",
    of: (name: string) => `${name} over the visits`,
    visits: (count: number) => (count === 1 ? "1 visit" : `${count} visits`),
    nothingNoted: "Finished; nothing was noted in one line.",
    unfinished: "Unfinished",
    answered: (day: string) => `What was answered on ${day}`,
    notAnswered: "not answered yet",
    about: { horse: "The horse", saddle: "The saddle", work: "The work" },
    noTrace: "No cold front trace yet: the widths of the back will stand here once one is drawn.",
    widths: "Width of the back at the front station, cold",
    atDepth: (mm: number) => `${mm} mm below the top`,
    width: (mm: number, u: number) => `${mm} mm ± ${u} mm`,
    changed: {
      wider: (mm: number) => `Wider by ${mm} mm since the trace before.`,
      narrower: (mm: number) => `Narrower by ${mm} mm since the trace before.`,
      "cannot-tell": (mm: number) => `${mm} mm apart, which is within the doubt of both: cannot tell.`,
    },
    backs: "Front traces over one another, seen from behind",
    near: "near (left)",
    off: "off (right)",
    bar: (mm: number) => `the bar is ${mm} mm`,
    lineNow: (day: string) => `Full line: ${day}`,
    lineBefore: (day: string) => `Dashed line: ${day}`,
    alterations: "Earlier alterations of this saddle’s head",
    noAlterations: "None was told.",
  },
  data: {
    title: "Your data",
    says: "Everything that was recorded lies on this device alone. A browser may clear it: copy it elsewhere.",
    counts: (entries: number, photos: number) => `${entries} entries, ${photos} photos.`,
    persisted: "The browser was asked to keep this data, and agreed.",
    notPersisted: "The browser has not agreed to keep this data: install the app, and copy your data often.",
    people: "People",
    peopleSays:
      "Names lie apart from what was recorded. Erasing takes the name from this device for good; copies that were made before still hold it, and so do words typed freely elsewhere.",
    findPerson: "Find a person",
    morePeople: (shown: number, of: number) =>
      `${shown} of ${of} names stand here; type a few letters for the others.`,
    erase: (name: string) => `Erase ${name}`,
    eraseSure: (name: string) => `Erase ${name} from this device for good?`,
    eraseYes: "Erase for good",
    eraseNo: "Keep",
    erasedNow: "Erased. What was recorded stays, without the name.",
    keep: "Ask the browser to keep it",
    space: (usedMB: number, mostMB: number) => `${usedMB} MB used of about ${mostMB} MB.`,
  },
  units: {
    lengths: "Lengths",
    masses: "Weights",
    pairs: "pairs parted by “;”, such as -3.5 -2.4; -3.1 -2; … in inches; for mm or cm begin with mm or cm",
  },
  scale: {
    title: "On this screen, 1 : 1",
    open: "Hold the template to the tree: on this screen, 1 : 1",
    back: "To the answers",
    waiting: "The wanted head is being worked out.",
    none: "There is no template here. It wants a head, a front trace, and a horse on which nothing was found.",
    cannot:
      "What a screen cannot promise: glass lies between line and tree, so look square on, with one eye; another screen has another scale. Look and compare by it. Cut by the template on paper, once its bars are proved.",
    why: "A browser does not know how large its pixels are. A bank card tells it: 85.60 × 53.98 mm (ISO/IEC 7810, ID-1).",
    lost: {
      zoom: "The page was zoomed, so the scale no longer holds. Match the card again.",
      screen: "This screen, or its zoom, is not the one that the card was matched on. Match the card again.",
    },
    zoomed: "The page is zoomed with two fingers. Zoom back out first: until then nothing can be matched.",
    steps: { long: "1 of 2: the card’s long side", short: "2 of 2: the card’s short side" },
    layUp: {
      long: "Lay the card flat on the screen, its long side upright. Move one line to its upper edge and one to its lower edge, beside the round corners.",
      short:
        "Leave the card as it lies. Move one line to its left edge and one to its right edge, beside the round corners.",
    },
    layAcross: {
      long: "Lay the card flat on the screen, its long side level. Move one line to its left edge and one to its right edge, beside the round corners.",
      short:
        "Leave the card as it lies. Move one line to its upper edge and one to its lower edge, beside the round corners.",
    },
    lines: { upper: "Upper line", lower: "Lower line", left: "Left line", right: "Right line" },
    ways: { up: "up", down: "down", left: "left", right: "right" },
    between: "Between the lines, px",
    range: (least: string, most: string) => `${least} to ${most} px`,
    lies: { long: "Long side fits", short: "Short side fits" },
    sideRead: {
      long: (px: string, perMm: string) => `Long side: ${px} px read, ${perMm} px per mm.`,
      short: (px: string, perMm: string) => `Short side: ${px} px read, ${perMm} px per mm.`,
    },
    apart: (apart: string, allowed: string) =>
      `The two sides differ by ${apart} %. Allowed: ${allowed} %, which is four lines put to their edges within 0.5 mm each. At least one of them is not on its edge: match both sides again.`,
    noScreen: "No screen has such a scale. Allowed: 1 to 16 px per mm. Match both sides again.",
    again: "Match the card again",
    moved: "Moved to another screen, or zoomed the page? Match the card again: not every browser tells.",
    template: "The wanted head",
    faces: { inside: "Inside face of the head.", outside: "Outside face of the head." },
    spread: (figure: string) => `Spread at its tips: ${figure}.`,
    doubt: (width: string, doubt: string) =>
      `The head is ${width} mm wide over all. Over that width this screen’s scale may be out by ± ${doubt} mm (95 in 100); laying tree to line by eye comes on top.`,
    barSays: (mm: string) => `${mm} mm. Prove it with a steel rule.`,
    drawn: (what: string) => `${what}, at true size, seen from behind, near side on the left`,
    seen: "seen from behind",
    ends: { near: "near (left)", off: "off (right)", middle: "to the middle" },
    halves: { whole: "Whole", near: "Near (left) half", off: "Off (right) half" },
    part: (at: string, of: string) => `part ${at} of ${of}`,
    down: (at: string, of: string) => `${at} of ${of} from above`,
    across: (at: string, of: string) => `${at} of ${of} from the left`,
    partBefore: "Part before",
    partNext: "Next part",
    tooSmall: "This window is too small for any part at true size.",
    series: {
      wanted: "wanted",
      headToday: "head today",
      traceToday: "back today",
      traceLast: "back last time",
    },
    traces: "Back over back last time, under the head",
    tracesSay:
      "Both traces are laid on one another by the top of the back: where each lay along the horse is not seen here.",
    headAsRead: "The head stands at its clearance as it was read.",
    headAsComputed: "The head’s clearance was not read: it stands where the calculation has it rest.",
    noLast: "There is no front trace of a visit before.",
    warm: "warm",
  },
  copy: {
    title: "Copy everything",
    says: "One ZIP file with all that was recorded, photos, letters and sheets, tables for a spreadsheet, and a page that opens without this app. It holds names in plain text: keep it as you keep the book it replaces.",
    withPapers:
      "With what was signed, and letter and sheet of each finished visit. They are worked out anew, which can take minutes.",
    all: "Copy everything to one file",
    goOn: "Go on without the other papers",
    making: (number: number, of: number, horse: string) =>
      `Letter and sheet of visit ${number} of ${of} are being made: ${horse}.`,
    packing: (visits: number, of: number) => `The file is being made: ${visits} of ${of} visits.`,
    done: (kB: number, papers: number, without: number) =>
      `The file was handed to the browser: ${kB} kB, with papers of ${papers} visits${without === 0 ? "" : `; ${without} have none, and its page says why`}. Look that it is where you keep it.`,
    failed: (why: string) => `It did not work, and nothing here was changed: ${why}.`,
    waits: (days: number) => `Something here has not been copied for ${days} days.`,
    waitsWhy:
      "This device may be lost, and a browser may clear what it keeps. A week is our own limit: as much as one would still write down again.",
    goCopy: "Copy it now",
    bringTitle: "Bring a copy in",
    bringSays:
      "A ZIP file that was copied here or on another device, or the records out of it. What is here stays; what is the same is kept once.",
    bringFile: "Choose a copy",
    reading: "The copy is being read.",
    bringing: {
      "looked-at": (number: number, of: number) =>
        `Looked at ${number} of ${of} entries; nothing is kept yet.`,
      kept: (number: number, of: number) => `${number} of ${of} entries are kept.`,
      listed: (number: number, of: number) => `${number} of ${of} visits are in the list.`,
    },
    brokenOff:
      "A copy was being brought in and did not come to its end. Bring it in once more: what is here stays, and what is the same is kept once.",
    brought: (entries: number, photos: number, notBeside: number) =>
      `${entries} entries were brought in, and ${photos} photos.${notBeside === 0 ? "" : ` ${notBeside} photos are named and did not come with the file.`}`,
    tableTitle: "Horses and owners from a table",
    tableSays:
      "A CSV file in UTF-8 whose first row names its columns: horse, owner, yard, rider, saddle, day, asked. Each row begins a visit. You see first what each would become.",
    tableFile: "Choose a table",
    rowsWould: (taken: number, refused: number) =>
      `${taken} rows would each begin a visit; ${refused} are refused. Nothing is written yet.`,
    notTaken: (names: string) => `Columns that are not taken: ${names}.`,
    row: (row: number) => `Row ${row}`,
    rowBecomes: (people: boolean) =>
      people ? "A visit; names of people are kept apart and can be erased." : "A visit.",
    rowNot: "Not taken.",
    rowsBegin: (count: number) => (count === 1 ? "Begin this visit" : `Begin these ${count} visits`),
    rowsLeave: "Write nothing",
    rowsBegun: (begun: number, of: number) =>
      begun === of
        ? `${begun} visits were begun.`
        : `${begun} of ${of} visits were begun; the others were not kept.`,
    room: "Room on this device",
    photosRefused:
      "Room is short: no new photo is kept, so that readings still are. Copy your data elsewhere, then make room.",
  },
  help: EN_HELP,
  answers: EN_ANSWERS,
  bench: EN_BENCH,
  paper: EN_PAPER,
} as const;

/** The same shape with any words in it. */
export type Catalogue = Widened<typeof EN>;
type Widened<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...given: infer Given) => string
      ? (...given: Given) => string
      : Widened<T[K]>;
};
