/** One script of a trainer: what is typed by hand at the screens, and what it has to lead to. */
export interface Script {
  /** The invented case it comes from. */
  readonly example: string;
  /** Which readings are left to the hand: all under these places. */
  readonly types: readonly string[];
  /** The answers it is for, by their ids. */
  readonly leadsTo: readonly string[];
}

/** One for each answer; between them every id of horse, saddle and work (checked). */
export const SCRIPTS: readonly Script[] = [
  {
    example: "01-sore-to-the-touch",
    types: ["horses[0].hands"],
    leadsTo: ["vet-before-altering", "not-now"],
  },
  {
    example: "02-bought-without-history",
    types: ["saddle.looked", "saddle.past.incidents"],
    leadsTo: ["strip-before-altering", "strip-first"],
  },
  { example: "03-wasted-back", types: ["horses[0].history"], leadsTo: ["come-back"] },
  { example: "04-changed-twice-in-a-year", types: ["saddle.past"], leadsTo: ["set-back"] },
  { example: "05-readings-in-inches", types: ["platesAtHand"], leadsTo: ["change-plate"] },
  { example: "06-panel-flat", types: ["saddle.panel", "horses[0].girthed"], leadsTo: ["panel"] },
  {
    example: "07-half-empty",
    types: ["saddle", "horses[0].traces"],
    leadsTo: ["not-examined", "not-looked", "measure-more"],
  },
  {
    example: "08-nothing-to-do",
    types: ["horses[0].girthed", "horses[0].moving"],
    leadsTo: ["no-reason-seen", "nothing"],
  },
  {
    example: "09-alter-in-the-saddle",
    types: ["saddle.standing", "saddle.looked"],
    leadsTo: ["sound-dressed", "alter-dressed"],
  },
  { example: "10-polymer-head", types: ["saddle.build"], leadsTo: ["heat-by-maker"] },
  { example: "11-flat-tree-sharp-back", types: ["horses[0].traces"], leadsTo: ["other-saddle"] },
  { example: "12-not-my-press", types: ["worker"], leadsTo: ["colleague"] },
  { example: "13-girth-groove-forward", types: ["horses[0].girthed"], leadsTo: ["set-up"] },
  { example: "14-in-dispute", types: ["saddle.standing"], leadsTo: ["leave-as-found"] },
  { example: "15-had-its-share", types: ["saddle.past"], leadsTo: ["spent"] },
  {
    example: "16-two-ponies-loose-bar",
    types: ["horses[0].moving", "saddle.looked.parts"],
    leadsTo: ["vet-before-riding", "out-till-repaired", "not-now"],
  },
  { example: "17-inserts-another-position", types: ["saddle.inserts"], leadsTo: ["change-insert"] },
  { example: "18-stripped-and-sound", types: ["saddle.looked"], leadsTo: ["sound-bare", "alter-stripped"] },
  { example: "19-spring-tree-in-warranty", types: ["saddle.standing"], leadsTo: ["maker"] },
  {
    example: "20-fell-off-its-rack",
    types: ["saddle.past.incidents"],
    leadsTo: ["strip-before-riding"],
  },
  { example: "21-white-line-in-the-arch", types: ["saddle.looked"], leadsTo: ["out-for-good"] },
];
