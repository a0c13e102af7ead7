/** The stations of a visit in their order, in the words of the yard; each names the places of the case it fills. */
export interface Section {
  readonly title: string;
  /** Paths in the order in which they are asked; a group stands for everything in it. */
  readonly asks: readonly string[];
}

export const ORDER_OF_WORK: readonly Section[] = [
  {
    title: "Who and where",
    asks: [
      "visit",
      "practice",
      "worker",
      "horses[].name",
      "horses[].about",
      "horses[].age",
      "horses[].identity",
      "horses[].mass",
      "horses[].body",
      "saddle.name",
      "saddle.maker",
      "saddle.model",
      "saddle.standing",
    ],
  },
  { title: "What's been going on", asks: ["horses[].history", "saddle.past"] },
  { title: "Horse stood up", asks: ["horses[].standing", "horses[].trunkUnchanged"] },
  { title: "Hands on", asks: ["horses[].hands"] },
  { title: "Trotted up", asks: ["horses[].moving"] },
  { title: "Tracings", asks: ["horses[].traces", "horses[].profile"] },
  { title: "Saddle looked over", asks: ["saddle.build", "saddle.looked"] },
  {
    title: "Head and points",
    asks: [
      "saddle.head",
      "saddle.reinforcement",
      "saddle.mounting",
      "platesAtHand",
      "saddle.inserts",
      "saddle.forming",
    ],
  },
  { title: "Lines and square", asks: ["saddle.lines"] },
  { title: "Panel", asks: ["saddle.panel", "saddle.bearing", "saddle.girthing", "saddle.bars"] },
  { title: "On the back", asks: ["horses[].laidOn", "horses[].template"] },
  { title: "Girthed up", asks: ["horses[].girthed"] },
  { title: "Rider up", asks: ["rider", "horses[].riderUp", "horses[].halfSeat"] },
  { title: "After work", asks: ["horses[].moved", "horses[].onlyThisHorse"] },
];

/** Places that no question fills: the file's own marks, and marks of an invented example. */
export const NOT_ASKED = ["format", "version", "title", "invented"] as const;

/** Whether a path of the schema (`horses[].body.topline`) lies at or below a place that a section names. */
export const inPlace = (path: string, place: string): boolean =>
  path === place || path.startsWith(`${place}.`) || path.startsWith(`${place}[`);

/** The section in which a place is asked, `horses[0].girthed.clearanceTop` or `horses[].girthed.clearanceTop`; none for a file's own marks. */
export const sectionOf = (path: string): Section | undefined =>
  ORDER_OF_WORK.find(({ asks }) => asks.some((place) => inPlace(path.replace(/\[\d+\]/g, "[]"), place)));
