/** Every word of the visit's screens that is not of the trade's schema. The other languages have exactly these. */
export const EN = {
  name: "English",
  note: "",
  skip: "To the visit",
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
    heard: "Heard",
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
  data: {
    title: "Your data",
    says: "Everything that was recorded lies on this device alone. A browser may clear it: copy it elsewhere.",
    exportAll: "Copy everything to a file",
    importFile: "Bring in a file of records",
    brought: (entries: number) => `${entries} entries were brought in.`,
    counts: (entries: number, photos: number) => `${entries} entries, ${photos} photos.`,
    persisted: "The browser was asked to keep this data, and agreed.",
    notPersisted: "The browser has not agreed to keep this data: install the app, and copy your data often.",
    people: "People",
    peopleSays:
      "Names lie apart from what was recorded. Erasing takes the name from this device for good; copies that were made before still hold it, and so do words typed freely elsewhere.",
    erase: (name: string) => `Erase ${name}`,
    eraseSure: (name: string) => `Erase ${name} from this device for good?`,
    eraseYes: "Erase for good",
    eraseNo: "Keep",
    erasedNow: "Erased. What was recorded stays, without the name.",
    keep: "Ask the browser to keep it",
    space: (usedMB: number, mostMB: number) => `${usedMB} MB used of about ${mostMB} MB.`,
  },
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
